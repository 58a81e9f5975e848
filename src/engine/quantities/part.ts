import { fail, ok, type Result } from '../result.ts';
import { scanNumber, type ScannedNumber } from './scan-number.ts';
import { skipSpaces } from './text.ts';
import type { Scale, Unit } from './unit.ts';
import { UNIT_FACTS } from './unit-facts.ts';
import { findUnit, kindOf, pointLetters, scaleOf } from './unit-words.ts';

/** A number as written, with its unit where it has one. */
export interface Part {
  at: number;
  number: ScannedNumber;
  scale?: Scale;
  end: number;
}

/** What stands at an index where a unit, or nothing, was expected. */
export const strayText = (text: string, at: number, unit: Unit): Result<never> => {
  const { kind, prefixed, suggest } = UNIT_FACTS[unit];
  const rest = text.slice(at).trimEnd();
  if (/^[.,]\d/u.test(rest)) return fail('A number has only one decimal sign.', at);
  if (/^\d/u.test(rest))
    return fail('There are two numbers here; write one, or a range such as 10..20.', at);
  const word = /^[^\s\d+±…–—<>-]+/u.exec(rest)?.[0];
  if (word === undefined || !/[\p{L}°%‰℃"″×]/u.test(word))
    return fail(`“${rest}” cannot be understood here.`, at);
  if (scaleOf(word, unit) !== undefined) return fail('There are two units here; write one.', at);
  const other = kindOf(word);
  if (other !== undefined) return fail(`That is ${UNIT_FACTS[other].kind}; ${kind} is wanted.`, at);
  // A percentage, a level or a plain number is no quantity that one would say has units.
  const verdict =
    prefixed.length === 0
      ? `does not belong behind ${kind}`
      : `is not a unit of ${kind.replace(/^an? /u, '')}`;
  return fail(`“${word}” ${verdict}; write ${suggest}.`, at);
};

/** What is asked of `4,700` and `4.700`, which are 4.7 to the one and 4700 to the other. */
const eitherWay = (typed: string, digits: string, thousands: string, at: number): Result<never> =>
  fail(`“${typed}” may be ${Number(digits)} or ${thousands}; write it one of these ways.`, at);

/** The number with its unit that starts at an index or behind spaces. */
export const readPart = (text: string, from: number, unit: Unit): Result<Part> => {
  const at = skipSpaces(text, from);
  const number = scanNumber(text, at, pointLetters(unit));
  if (number === undefined)
    return text.slice(at).trim() === ''
      ? fail('A number is missing here.', at)
      : fail(`There is no number in “${text.slice(at).trim()}”.`, at);
  if (number.thousands !== undefined) {
    const typed = text.slice(at, number.end).replace(/^[+-]\s*/u, '');
    return eitherWay(typed, number.digits, number.thousands, at);
  }
  const unitAt = skipSpaces(text, number.end);
  const found = findUnit(text.slice(unitAt), unit);
  if (number.letter !== undefined) {
    // Every letter that may stand for the point is a unit.
    const scale = scaleOf(number.letter, unit) as Scale;
    if (found === undefined) return ok({ at, number, scale, end: number.end });
    // Behind `4n7` only the unit itself may follow, without a second prefix.
    if (found.scale.power !== 0 || found.scale.factor !== undefined)
      return fail('There are two units here; write one.', unitAt);
    return ok({ at, number, scale, end: unitAt + found.length });
  }
  return found === undefined
    ? ok({ at, number, end: number.end })
    : ok({ at, number, scale: found.scale, end: unitAt + found.length });
};
