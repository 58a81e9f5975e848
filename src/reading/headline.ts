import { formatQuantity, formatValue, type Habit, type Reading } from '../engine/index.ts';

const percent = (fraction: number, habit?: Habit): string =>
  formatValue(fraction, 'fraction', habit);

const toleranceText = ({ tolerance }: Reading, habit?: Habit): string => {
  if (tolerance === undefined) return '';
  const { minus, plus, unit } = tolerance;
  const print = (size: number): string =>
    unit === 'fraction' ? percent(size, habit) : formatValue(size, unit, habit);
  return minus === plus ? `±${print(plus)}` : `+${print(plus)}/−${print(minus)}`;
};

const voltageText = ({ ratedVoltage, voltageKind }: Reading, habit?: Habit): string =>
  ratedVoltage === undefined
    ? ''
    : formatQuantity(ratedVoltage, 'V', habit) + (voltageKind === 'ac' ? ' AC' : '');

/** The temperature characteristic of a ceramic in words. */
export const characteristicText = (
  { temperatureCharacteristic: own, temperatureCoefficient: drift }: Reading,
  habit?: Habit,
): string => {
  if (drift !== undefined) return formatQuantity(drift, '1/K', habit);
  if (own === undefined) return '';
  const { code, capacitanceChange: change, coefficient, tMin, tMax } = own;
  const span = `${formatValue(tMin, 'degC', habit)} to ${formatValue(tMax, 'degC', habit)}`;
  if (change !== undefined) {
    return `${code}, class ${own.class}: ${percent(change.min, habit)} to +${percent(change.max, habit)} over ${span}`;
  }
  return coefficient === undefined
    ? `${code}, class ${own.class}`
    : `${code}, class ${own.class}: ${formatQuantity(coefficient, '1/K', habit)} over ${span}`;
};

/** The value of a reading with what was marked beside it: `10 nF ±20 % 1 kV Z5U`. */
export const readingHeadline = (reading: Reading, habit?: Habit): string => {
  const {
    capacitance,
    resistance,
    sections,
    temperatureCharacteristic,
    safetyClass,
    date,
    taper,
    gangs,
    notRead,
  } = reading;
  const parts = [
    capacitance && formatValue(capacitance.typ, 'F', habit),
    sections?.map((section) => formatValue(section.capacitance.typ, 'F', habit)).join(' + '),
    resistance && formatValue(resistance.typ, 'ohm', habit),
    toleranceText(reading, habit),
    voltageText(reading, habit),
    temperatureCharacteristic?.code,
    safetyClass,
    taper && `${taper} pot`,
    gangs && `${String(gangs)} on one shaft`,
    capacitance || resistance || sections ? undefined : (notRead ?? date),
  ].filter((part) => part !== undefined && part !== '');
  return parts.join(' ');
};
