import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { judgeFirst } from '../../../src/engine/index.ts';

const catalogue = loadCatalogue();

/** A reading as a share of the mark, of types that neither dry out nor age by decades. */
const cases = [
  ['film-unknown', 'vco-timing', 0.5, 'replace'],
  ['film-unknown', 'vco-timing', 0.833, 'test'],
  ['film-unknown', 'vco-timing', 0.95, 'leave'],
  ['film-unknown', 'vco-timing', 1.1, 'leave'],
  ['film-unknown', 'vco-timing', 1.5, 'test'],
  ['pet-metallized', 'rc-filter-audio', 2.96, 'test'],
  ['ps-film-foil', 'vco-timing', 0.9, 'replace'],
  ['silvered-mica', 'rf-tuned-circuit', 0.5, 'replace'],
  ['silvered-mica', 'rf-tuned-circuit', 1, 'leave'],
  ['ceramic-c0g', 'active-filter', 1.5, 'test'],
  ['ta-mno2-solid', 'interstage-coupling', 0.6, 'replace'],
  ['ta-mno2-solid', 'interstage-coupling', 0.9, 'leave'],
  ['ta-mno2-solid', 'interstage-coupling', 1.6, 'test'],
  ['al-electrolytic-wet', 'reservoir', 0.5, 'replace'],
  ['al-electrolytic-wet', 'reservoir', 2.96, 'test'],
] as const;

describe('a part that reads far from its mark is not left for its type', () => {
  it.each(cases)('%s in %s at %d of its mark: %s', (type, position, share, advice) => {
    const marked = { type, capacitance: 1e-6, ratedVoltage: 63 };
    const judgement = judgeFirst(catalogue, marked, position, { capacitance: share * 1e-6 });
    expect(judgement.advice).toBe(advice);
  });
});
