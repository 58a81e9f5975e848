import {
  readMarking,
  readToleranceLetter,
  type Hints,
  type Reading,
} from '../../../src/engine/markings/index.ts';
import type { PartToPrint, Way } from '../../../src/engine/printed/index.ts';
import { catalogue } from '../markings/tables.ts';

/** Reads a printed way back, with what would be known of the part beside its marking. */
export const readBack = (way: Way, body: string): Reading[] => {
  const [origin] = way.origins.includes('international') ? [] : way.origins;
  const kind = catalogue.markings.bodies.find((row) => row.id === body)?.kind ?? 'capacitor';
  const hints: Hints = { kind, body, ...(origin === undefined ? {} : { origin }) };
  return readMarking(catalogue, way.text, hints);
};

const near = (a: number | undefined, b: number | undefined): boolean =>
  a !== undefined &&
  b !== undefined &&
  Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b));

/** Whether the letter behind the value is one that first means what it was printed for. */
const isFirstMeaning = (way: Way, { tolerance, capacitance }: PartToPrint): boolean => {
  const at = way.text.indexOf(way.value) + way.value.length;
  const letter = /^ ?(\p{L})/u.exec(way.text.slice(at))?.[1] ?? '';
  if (capacitance === undefined) return true;
  const [first] = readToleranceLetter(catalogue.markings, letter, capacitance);
  if (first === undefined) return true;
  return (
    near(first.tolerance.plus, tolerance?.plus) && near(first.tolerance.minus, tolerance?.minus)
  );
};

const sameTolerance = (part: PartToPrint, { tolerance }: Reading): boolean =>
  tolerance !== undefined &&
  tolerance.unit === part.tolerance?.unit &&
  near(tolerance.minus, part.tolerance.minus) &&
  near(tolerance.plus, part.tolerance.plus);

const sameVoltage = ({ ratedVoltage: volts }: PartToPrint, { ratedVoltage }: Reading): boolean =>
  ratedVoltage !== undefined &&
  volts !== undefined &&
  volts >= ratedVoltage.min * (1 - 1e-9) &&
  volts <= ratedVoltage.max * (1 + 1e-9);

/** Whether a reading has the value, and the tolerance and voltage where they are printed. */
export const agrees = (way: Way, part: PartToPrint, reading: Reading | undefined): boolean => {
  if (reading === undefined) return false;
  const value =
    part.capacitance === undefined
      ? near(reading.resistance?.typ, part.resistance)
      : near(reading.capacitance?.typ, part.capacitance);
  const { shows } = way;
  return (
    value &&
    (!shows.includes('tolerance') || !isFirstMeaning(way, part) || sameTolerance(part, reading)) &&
    (!shows.includes('taper') || reading.taper === part.taper) &&
    (!shows.includes('voltage') || sameVoltage(part, reading))
  );
};
