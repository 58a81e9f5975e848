import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { seriesCapacitance } from '../../../src/engine/equations/combinations.ts';
import { findStandIns, verdictOrder, type Made, type Request } from '../../../src/engine/index.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';
import { catalogue } from '../assessment/setting.ts';
import { findingOf } from '../assessment/finding-of.ts';

const request = (type: string, farad: number, volts: number, position: string): Request => ({
  original: { type, capacitance: exactly(farad), ratedVoltage: exactly(volts) },
  position,
});

describe('whatever is asked', () => {
  const whole = ({ kind, parts }: Made): number => {
    const farads = parts.map(({ capacitance }) => capacitance);
    return kind === 'series' || kind === 'back-to-back'
      ? seriesCapacitance(farads)
      : farads.reduce((sum, farad) => sum + farad, 0);
  };

  const asked = fc
    .record({
      type: fc.constantFrom(...Object.keys(catalogue.types)),
      position: fc.constantFrom(...Object.keys(catalogue.positions)),
      farad: fc.double({ min: -11, max: -3, noNaN: true }).map((power) => 10 ** power),
      volts: fc.double({ min: 0.5, max: 3.3, noNaN: true }).map((power) => 10 ** power),
    })
    .map(({ type, position, farad, volts }) => request(type, farad, volts, position));

  test('what is made of parts is what they come to, is to be had, and is worth the trouble', () => {
    let seen = 0;
    fc.assert(
      fc.property(asked, (one) => {
        const all = findStandIns(catalogue, one);
        for (const assessment of all) {
          const { made, capacitance, ratedVoltage, type } = assessment.candidate;
          if (made === undefined) continue;
          seen += 1;
          expect(Math.abs(whole(made) / capacitance - 1)).toBeLessThan(1e-9);
          expect(['fits', 'fits-if']).toContain(assessment.verdict);
          expect(made.parts).toHaveLength(made.kind === 'with-resistor' ? 1 : 2);
          expect(made.parts.every((part) => part.type === type)).toBe(true);
          expect(findingOf(assessment, 'availability').verdict).toBe('fits');
          const single = made.parts.reduce((sum, part) => sum + part.ratedVoltage, 0);
          expect(ratedVoltage).toBeLessThanOrEqual(single);
          expect(made.why).not.toMatch(/NaN|undefined|Infinity|\s\s/u);
        }
        const places = all.map(
          ({ verdict, candidate }) =>
            2 * verdictOrder.indexOf(verdict) + Number(candidate.made !== undefined),
        );
        expect(places).toEqual(places.toSorted((a, b) => a - b));
      }),
      { numRuns: 200 },
    );
    expect(seen).toBeGreaterThan(20);
  }, 60_000);
});
