import { writeQuantity, type Unit } from '../../engine/index.ts';
import { kindPartKeys, partKeys } from '../../substitution/keys.ts';
import { resistanceField } from '../../substitution/old-resistance.ts';
import { writeRated } from '../../substitution/rated-voltage.ts';
import { writeTolerance } from '../../substitution/typed-numbers.ts';
import type { Job } from '../model/job.ts';
import type { PartOfLine } from '../understanding/part-of-line.ts';
import { addressOfLine } from './line-request.ts';
import type { PlannedLine } from './planned.ts';
import { newTrimmerOf, withSetting } from './setting-of-line.ts';

/** Figures of a rating that people write. */
const FIGURES = 6;

const ofCapacitor = ({ capacitance, ratedVoltage, voltageKind }: PartOfLine) => ({
  [partKeys.capacitance]: capacitance && writeQuantity(capacitance, 'F'),
  [partKeys.ratedVoltage]: ratedVoltage && writeRated({ volts: ratedVoltage, kind: voltageKind }),
});

/** Ratings are spoken of in watts, whatever their size. */
const ofKind = ({ value, rating }: PartOfLine, unit: string | undefined) => ({
  [kindPartKeys.value]: value && unit && writeQuantity(value, unit as Unit),
  [kindPartKeys.rating]: rating && String(Number(rating.typ.toPrecision(FIGURES))),
});

/**
 * The address of the page about a line's stand-ins, behind its path: all that the plan goes by, what
 * was read from the marking included.
 * @param unit SI unit of the value of its kind; nothing for capacitors and devices
 */
export const pageQuery = (
  { line, part }: Pick<PlannedLine, 'line' | 'part'>,
  whole: Job['whole'],
  unit?: string,
): URLSearchParams => {
  const { family, tolerance } = part;
  const said: Readonly<Record<string, string | undefined>> = {
    ...(family === 'capacitor' ? ofCapacitor(part) : {}),
    ...(family === 'kind' ? ofKind(part, unit) : {}),
    [partKeys.tolerance]: tolerance && writeTolerance(tolerance),
    ...Object.fromEntries(addressOfLine(withSetting(line, part.designators), whole)),
    ...(family === 'kind' ? { [resistanceField.key]: line.found[resistanceField.reading] } : {}),
    ...newTrimmerOf(line, part.designators),
  };
  const query = new URLSearchParams();
  for (const [key, text = ''] of Object.entries(said)) if (text.trim() !== '') query.set(key, text);
  return query;
};
