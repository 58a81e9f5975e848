import type { Assessment, Candidate, Catalogue } from '../engine/index.ts';
import { fail, ok, type Result } from '../engine/result.ts';
import {
  PART_LIMITS,
  printTolerance,
  readRange,
  readToleranceText,
  type Read,
} from '../substitution/typed-numbers.ts';
import { printCapacitance, printVolts } from './print.ts';
import type { Choice } from './model.ts';

/** The stand-in that a visitor chose; what is left empty is taken from the market for its type. */
export const readCandidate = (catalogue: Catalogue, choice: Choice): Result<Candidate> => {
  if (!Object.hasOwn(catalogue.types, choice.type)) return fail('There is no such type.');
  const faults: string[] = [];
  const take = <T>(text: string, read: (text: string) => Read<T>): T | undefined => {
    if (text.trim() === '') return undefined;
    const result = read(text.trim());
    if ('value' in result) return result.value;
    faults.push(result.message);
    return undefined;
  };
  const candidate: Candidate = {
    type: choice.type,
    capacitance: take(choice.capacitance, (text) => readRange(text, PART_LIMITS.capacitance))?.typ,
    tolerance: take(choice.tolerance, readToleranceText),
    ratedVoltage: take(choice.ratedVoltage, (text) => readRange(text, PART_LIMITS.ratedVoltage))
      ?.typ,
  };
  const [first] = faults;
  return first === undefined ? ok(candidate) : fail(first);
};

/** A stand-in of a plan as the choice of a visitor, to be kept in the line. */
export const choiceOf = ({ candidate }: Assessment, reason: string, locked: boolean): Choice => ({
  type: candidate.type,
  capacitance: printCapacitance(candidate),
  tolerance: printTolerance(candidate.tolerance),
  ratedVoltage: printVolts(candidate),
  reason,
  locked,
});
