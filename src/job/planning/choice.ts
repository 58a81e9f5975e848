import type { Marked } from '../../substitution/tolerance-letters.ts';
import {
  formatValue,
  type Candidate,
  type Catalogue,
  type KindCandidate,
  type Tolerance,
} from '../../engine/index.ts';
import { fail, ok, type Result } from '../../engine/result.ts';
import { ratingMeasure, valueMeasure } from '../../substitution/kind-address.ts';
import { ratingPhrase } from '../../substitution/phrases.ts';
import {
  PART_LIMITS,
  printTolerance,
  readRange,
  readToleranceText,
  type Measure,
  type Read,
} from '../../substitution/typed-numbers.ts';
import type { Choice } from '../model/job.ts';
import { printCapacitance, printVolts } from './print.ts';
import { isCapacitor, isDevice, type StandIn } from './stand-in.ts';

interface Numbers {
  value: number | undefined;
  tolerance: Tolerance | undefined;
  rating: number | undefined;
}

/** The numbers of a choice, each in its measure, or the first fault; nothing where it says nothing. */
const readNumbers = (
  { value, tolerance, rating }: Choice,
  measures: { value: Measure | undefined; rating: Measure | undefined },
): Result<Numbers> => {
  const faults: string[] = [];
  const take = <T>(text: string, read: (text: string) => Read<T>): T | undefined => {
    if (text.trim() === '') return undefined;
    const result = read(text.trim());
    if ('value' in result) return result.value;
    faults.push(result.message);
    return undefined;
  };
  const number = (text: string, measure: Measure | undefined): number | undefined =>
    measure && take(text, (said) => readRange(said, measure))?.typ;
  const read = number(value, measures.value);
  const marked: Marked =
    measures.value?.unit === 'F' ? { of: 'capacitor', farad: read } : { of: 'resistor' };
  const numbers = {
    value: read,
    tolerance: take(tolerance, (text) => readToleranceText(text, marked)),
    rating: number(rating, measures.rating),
  };
  const [first] = faults;
  return first === undefined ? ok(numbers) : fail(first);
};

/** The capacitor that a visitor chose; what is left empty is taken from the market for its type. */
export const readCandidate = (catalogue: Catalogue, choice: Choice): Result<Candidate> => {
  if (!Object.hasOwn(catalogue.types, choice.type)) return fail('There is no such type.');
  const { capacitance, ratedVoltage } = PART_LIMITS;
  const read = readNumbers(choice, { value: capacitance, rating: ratedVoltage });
  if (!read.ok) return read;
  const { value, tolerance, rating } = read.value;
  return ok({ type: choice.type, capacitance: value, tolerance, ratedVoltage: rating });
};

/** How many in series each have a value: `2 × 510 kΩ`. */
const IN_SERIES = /^\s*([2-4])\s*×\s*/u;

/** A part of another kind that was chosen, and how many of it are in series where one does not do. */
export interface ChosenKind {
  candidate: KindCandidate;
  inSeries: number | undefined;
}

/** The same for a part of another kind. */
export const readKindCandidate = (catalogue: Catalogue, choice: Choice): Result<ChosenKind> => {
  const row = catalogue.kindTypes[choice.type];
  const kind = catalogue.kinds[row?.kind ?? ''];
  if (row === undefined || kind === undefined) return fail('There is no such type.');
  const [chain = '', count] = IN_SERIES.exec(choice.value) ?? [];
  const each = { ...choice, value: choice.value.slice(chain.length) };
  const read = readNumbers(each, {
    value: kind.unit === '' ? undefined : valueMeasure(kind),
    rating: kind.rating_unit === '' ? undefined : ratingMeasure(kind),
  });
  if (!read.ok) return read;
  const candidate = { type: choice.type, ...read.value };
  return ok({ candidate, inSeries: count === undefined ? undefined : Number(count) });
};

/** A stand-in of a plan as the choice of a visitor, to be kept in the line. */
export const choiceOf = (standIn: StandIn, reason: string, locked: boolean): Choice => {
  const kept = { type: standIn.candidate.type, reason, locked };
  if (isDevice(standIn)) return { ...kept, value: '', tolerance: '', rating: '' };
  if (isCapacitor(standIn)) {
    const { candidate } = standIn;
    const tolerance = printTolerance(candidate.tolerance);
    return {
      ...kept,
      value: printCapacitance(candidate),
      tolerance,
      rating: printVolts(candidate),
    };
  }
  const { candidate, inSeries } = standIn;
  const { value, unit, tolerance, rating, ratingUnit } = candidate;
  const many = inSeries === undefined ? '' : `${String(inSeries)} × `;
  return {
    ...kept,
    value: value === undefined || unit === undefined ? '' : many + formatValue(value, unit),
    tolerance: tolerance === undefined ? '' : printTolerance(tolerance),
    rating:
      rating === undefined || ratingUnit === undefined ? '' : ratingPhrase(rating, ratingUnit),
  };
};
