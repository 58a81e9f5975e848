import type { Assessment, Finding } from '../engine/index.ts';
import { isSameRange } from '../engine/quantities/range.ts';

/** Key of the address under which two parts stand side by side, as `pp-film-foil,have`. */
export const compareKey = 'compare';

/** What stands for the part that the visitor has, among the types that are stand-ins. */
export const HAVE = 'have';

/** Two parts to be put side by side, as an address names them; either may be open. */
export interface Chosen {
  a: string;
  b: string;
  /** What is wrong with either, in a sentence; the text of the address is kept. */
  faults: { a?: string; b?: string };
}

/** What stands in an address before and after its comma, and what of that is not to be had. */
export const readChosen = (text: string, choices: readonly string[]): Chosen => {
  const [a = '', b = ''] = text.split(',').map((name) => name.trim());
  const fault = (name: string): string | undefined => {
    if (name === '' || choices.includes(name)) return undefined;
    return name === HAVE
      ? 'Say above which part you have.'
      : 'That part is not among the stand-ins here; please choose another, or ask about it above.';
  };
  const faults = { a: fault(a), b: fault(b) };
  if (a !== '' && a === b) faults.b ??= 'Please choose two different parts.';
  return {
    a,
    b,
    faults: {
      ...(faults.a === undefined ? {} : { a: faults.a }),
      ...(faults.b === undefined ? {} : { b: faults.b }),
    },
  };
};

/** Two parts as an address names them; nothing while neither is chosen. */
export const writeChosen = (a: string, b: string): string => (a + b === '' ? '' : `${a},${b}`);

/** One demand for two parts: what tells them apart there, the gravest first. */
export interface BesideRow {
  a: Finding;
  b: Finding;
  apart: 'verdict' | 'figure' | 'nothing';
}

const apartIn = (a: Finding, b: Finding): BesideRow['apart'] => {
  if (a.verdict !== b.verdict) return 'verdict';
  return isSameRange(a.standIn, b.standIn) ? 'nothing' : 'figure';
};

const APART: readonly BesideRow['apart'][] = ['verdict', 'figure', 'nothing'];
const WEIGHTS: readonly Finding['weight'][] = ['hard', 'strong', 'mild'];

/** Every demand for two parts assessed alike, those first that tell them apart and weigh most. */
export const besideRows = (
  a: Pick<Assessment, 'findings'>,
  b: Pick<Assessment, 'findings'>,
): BesideRow[] =>
  a.findings
    .flatMap((own): BesideRow[] => {
      const other = b.findings.find(({ demand }) => demand === own.demand);
      return other === undefined ? [] : [{ a: own, b: other, apart: apartIn(own, other) }];
    })
    .toSorted(
      (one, other) =>
        APART.indexOf(one.apart) - APART.indexOf(other.apart) ||
        WEIGHTS.indexOf(one.a.weight) - WEIGHTS.indexOf(other.a.weight) ||
        (one.a.demand < other.a.demand ? -1 : 1),
    );
