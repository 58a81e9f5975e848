import { typicalOf, visitEnds, type GivenValues } from './span.ts';
import type { InputValues, Sum, SumNote } from './sum.ts';

/**
 * What a sum says beside its numbers: for the typical values, and what is a caution or a limit
 * somewhere in the ranges that were given, since the part at hand may be the one at the end.
 */
export const notesOf = (sum: Sum, given: GivenValues, facts: unknown): readonly SumNote[] => {
  const at = (values: InputValues): readonly SumNote[] =>
    sum.notes?.(values, sum.at(values, facts), facts) ?? [];
  const typical = at(typicalOf(given));
  if (sum.laborious) return typical;
  const said = new Set(typical.map(({ text }) => text));
  const beyond: SumNote[] = [];
  visitEnds(sum, given, facts, (values) => {
    for (const note of at(values)) {
      if (note.kind === 'remark' || said.has(note.text)) continue;
      said.add(note.text);
      beyond.push({ ...note, atEnds: true });
    }
  });
  const isCaution = ({ kind }: SumNote): boolean => kind === 'caution';
  // Cautions stand first, wherever they come from.
  return [
    ...typical.filter(isCaution),
    ...beyond.filter(isCaution),
    ...beyond.filter((note) => !isCaution(note)),
    ...typical.filter((note) => !isCaution(note)),
  ];
};
