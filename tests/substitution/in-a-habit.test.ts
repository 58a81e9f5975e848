import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import {
  assess,
  assessKind,
  findKindStandIns,
  findStandIns,
  kindCircumstances,
  type Habit,
} from '../../src/engine/index.ts';
import type { Markup } from '../../src/markup/node.ts';
import { answerSentence } from '../../src/substitution/answer.ts';
import { comparisonMarkup } from '../../src/substitution/comparison-view.ts';
import { havingFields, readHaving } from '../../src/substitution/having.ts';
import { havingResult } from '../../src/substitution/having-view.ts';
import { kindHavingFields, readKindHaving } from '../../src/substitution/kind-having.ts';
import { kindPartRows, partRows } from '../../src/substitution/part-rows.ts';
import { resultsMarkup } from '../../src/substitution/results.ts';

/** Whatever a page about stand-ins draws for a reader writes numbers as that reader likes them. */

const catalogue = loadCatalogue();

const wordsOf = (piece: Markup): string[] =>
  typeof piece === 'string' ? [piece] : piece.children.flatMap(wordsOf);

const HABITS: readonly (readonly [string, Habit, RegExp])[] = [
  ['with a decimal comma', { decimal: 'comma' }, /\d\.\d/u],
  ['without nanofarads', { capacitance: 'pF-uF' }, /\d\u00A0nF/u],
  ['with letters for ohms', { ohm: 'letter' }, /\d\u00A0[kM]Ω/u],
];

/** All that a page of a capacitor says, with two parts compared and one that the visitor has. */
const wordsOfPair = (type: string, position: string, habit: Habit): string[] => {
  const request = { original: { type }, position };
  const assessments = findStandIns(catalogue, request);
  const [a, b] = assessments;
  if (a === undefined || b === undefined) throw new Error('no two stand-ins');
  const having = assess(catalogue, request, { type: 'paper-oil', capacitance: 3.3e-9 });
  const shown = { catalogue, position, assessments, having, isFull: () => true, habit };
  const rows = partRows(a.candidate, a, b, habit);
  const had = readHaving(catalogue, new URLSearchParams('have=paper-oil'));
  return [
    answerSentence(catalogue, request, assessments, { habit }),
    ...[
      ...resultsMarkup(shown),
      ...havingResult(shown),
      ...comparisonMarkup(shown, rows, [
        { letter: 'A', id: 'a', assessment: a },
        { letter: 'B', id: 'b', assessment: b },
      ]),
    ].flatMap(wordsOf),
    ...havingFields(had, having, habit).map(({ note }) => note),
  ];
};

/** The same of a part of another kind. */
const wordsOfKind = (type: string, position: string, habit: Habit): string[] => {
  const request = { original: { type }, position };
  const assessments = findKindStandIns(catalogue, request);
  const [a, b] = assessments;
  if (a === undefined || b === undefined) throw new Error('no two stand-ins');
  const { kind, original } = kindCircumstances(catalogue, request);
  const having = assessKind(catalogue, request, { type: a.candidate.type });
  const had = readKindHaving(catalogue, kind, new URLSearchParams(`have=${a.candidate.type}`));
  const shown = { catalogue, position, assessments, having, isFull: () => true, habit };
  return [
    answerSentence(catalogue, request, assessments, { habit }),
    ...[...resultsMarkup(shown), ...havingResult(shown)].flatMap(wordsOf),
    ...kindPartRows(kind, original, a, b, habit).flatMap((row) => [row.old, row.a, row.b]),
    ...kindHavingFields(kind, had, having, habit).map(({ note }) => note),
  ];
};

const PAGES: readonly (readonly [string, string, typeof wordsOfPair])[] = [
  ['ceramic-disc-unknown', 'interstage-coupling', wordsOfPair],
  ['al-electrolytic-wet', 'regulator-output', wordsOfPair],
  ['al-electrolytic-wet', 'bulk-rail', wordsOfPair],
  ['film-unknown', 'speaker-crossover', wordsOfPair],
  ['carbon-film', 'plate-load', wordsOfKind],
  ['carbon-composition', 'hv-dropper', wordsOfKind],
];

test.each(
  PAGES.flatMap(([type, position, words]) =>
    HABITS.map(([name, habit, other]) => ({ type, position, words, name, habit, other })),
  ),
)('$type in $position $name', ({ type, position, words, habit, other }) => {
  const unlike = words(type, position, habit).filter((text) => other.test(text));
  expect([...new Set(unlike)]).toEqual([]);
});
