import type { Finding } from '../../src/engine/index.ts';

/** A finding with some of its columns changed, or taken away. */
export type Change = { [Key in keyof Finding]?: Finding[Key] | undefined };

const FINDING: Finding = {
  demand: 'reservoir-life',
  finding: 'life-used',
  name: 'Life used up',
  weight: 'mild',
  unit: 'fraction',
  original: { min: 0.3, typ: 0.8, max: 3 },
  standIn: { min: 0.2, typ: 0.7, max: 2.8 },
  limit: { high: 1 },
  margin: 0.36,
  verdict: 'fits',
  missing: [],
  working: '10 years of 15 years',
  why: 'A wet part dries out.',
  sources: [],
  basis: 'published',
  sure: 'likely',
  weakest: [],
};

/** A finding whose limit lies between the ends of its figure, unless it is changed. */
export const findingWith = (change: Change): Finding => ({ ...FINDING, ...change }) as Finding;
