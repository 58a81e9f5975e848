import { formatValue, type Part } from '../../engine/index.ts';

/** Marked value of a part. */
export const printCapacitance = ({ capacitance }: Pick<Part, 'capacitance'>): string =>
  formatValue(capacitance, 'F');

/** Rated voltage of a part. */
export const printVolts = ({ ratedVoltage }: Pick<Part, 'ratedVoltage'>): string =>
  formatValue(ratedVoltage, 'V');
