import type { Catalogue } from '../../engine/index.ts';
import { meantMicrofarads } from '../../substitution/bare-capacitance.ts';
import type { Line } from '../model/job.ts';
import type { Ask } from './ask.ts';
import { kindWord } from './kinds.ts';
import type { PartOfLine } from './part-of-line.ts';

/**
 * A capacitor as it was understood, without its value where that is a bare number which no part of its
 * type can have in picofarads: `470` of an electrolytic. What it may be instead is asked.
 * @param said the line with the words of the list
 */
export const withoutBareValue = (
  catalogue: Catalogue,
  said: Line,
  part: PartOfLine,
): { part: PartOfLine; asks: Ask[] } => {
  const named = [said.kind, said.type].flatMap((word) => kindWord(catalogue, word)?.types ?? []);
  const isKnown = part.type !== undefined && Object.hasOwn(catalogue.types, part.type);
  const rows = (isKnown ? [part.type ?? ''] : named).flatMap((id) => catalogue.types[id] ?? []);
  if (meantMicrofarads(said.value, rows) === undefined) return { part, asks: [] };
  const text = said.value.trim();
  // Behind the first number, before a tolerance or the end of a range.
  const value = text.replace(/^[+\d.,]+/u, '$& µF');
  return {
    part: {
      ...part,
      capacitance: undefined,
      rejected: { ...part.rejected, value: 'no unit is given' },
    },
    asks: [
      {
        about: 'value',
        question: `“${text}” has no unit. Is it this?`,
        choices: [{ label: value, set: { value } }],
      },
    ],
  };
};
