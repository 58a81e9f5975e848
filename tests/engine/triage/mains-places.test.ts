import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { judgeFirst } from '../../../src/engine/index.ts';

const catalogue = loadCatalogue();
const goodReadings = { capacitance: 4.7e-9, insulation: 1e12, loss1khz: 0.001 };
const adviceFor = (type: string, position: string) =>
  judgeFirst(catalogue, { type, capacitance: 4.7e-9, ratedVoltage: 1000 }, position, goodReadings)
    .advice;

/** What a meter says clears no part that was never approved for the mains. */
describe('a part across the mains or from the mains to the chassis that reads well', () => {
  test.each([
    ['ceramic-disc-unknown', 'mains-y', 'replace'],
    ['ceramic-z5u', 'mains-x', 'replace'],
    ['pet-metallized', 'mains-x', 'replace'],
    ['film-unknown', 'mains-y', 'replace'],
    ['paper-oil', 'mains-x', 'replace'],
    // Class X is none for a place where a short makes the chassis live.
    ['film-x2', 'mains-y', 'replace'],
    // Approved ones are judged by what they read.
    ['film-y2', 'mains-y', 'test'],
    ['ceramic-y-safety', 'mains-y', 'test'],
    // The same disc elsewhere is no worse for it.
    ['ceramic-disc-unknown', 'local-decoupling', 'leave'],
  ])('%s in %s: %s', (type, position, advice) => {
    expect(adviceFor(type, position)).toBe(advice);
  });
});
