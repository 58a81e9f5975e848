import { centsOfVoltage } from '../equations/pitch.ts';
import { formatQuantity, formatValue } from '../quantities/index.ts';
import type { Range } from '../quantities/range.ts';
import type { Circumstances } from './model.ts';

/** An error of a held voltage as pitch, for a working; nothing at positions whose voltage is none. */
export const asPitch = ({ conditions }: Circumstances, volt: Range): string => {
  const octave = conditions['octave'];
  return octave === undefined
    ? ''
    : `; as a pitch at ${formatValue(octave.typ, 'V/octave')} ` +
        formatQuantity(centsOfVoltage(volt, octave.typ), 'cents');
};
