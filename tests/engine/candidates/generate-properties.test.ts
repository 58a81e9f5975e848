import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { OfferedPart } from '../../../src/engine/assessment/parts.ts';
import { offeredParts, readTolerance } from '../../../src/engine/candidates/generate.ts';
import { madeValues } from '../../../src/engine/candidates/made-values.ts';
import { neededRating } from '../../../src/engine/findings/voltage.ts';
import { findStandIns, type Catalogue } from '../../../src/engine/index.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';
import { catalogue, circumstancesOf, given } from '../assessment/setting.ts';

describe('of every type the market offers', () => {
  const types = Object.keys(catalogue.types);
  const volts = fc.double({ min: 0.1, max: 2000, noNaN: true });
  const request = fc.record({
    type: fc.constantFrom(...types),
    position: fc.constantFrom(...Object.keys(catalogue.positions)),
    farad: fc.double({ min: -12, max: -2, noNaN: true }).map((power) => 10 ** power),
    rated: volts,
    direct: volts,
  });

  test('only parts that lie within an offer, whatever the value and the voltages', () => {
    fc.assert(
      fc.property(request, ({ type, position, farad, rated, direct }) => {
        const circumstances = circumstancesOf({
          original: { type, capacitance: exactly(farad), ratedVoltage: exactly(rated) },
          position,
          conditions: given({ vdc: direct }),
        });
        for (const wanted of types) {
          for (const part of offeredParts(catalogue, wanted, circumstances)) {
            const within = catalogue.offers.some(
              (row) =>
                row.type === part.type &&
                row.series === part.series &&
                row.c_min * 0.999999 <= part.capacitance &&
                row.c_max * 1.000001 >= part.capacitance &&
                row.voltages.includes(part.ratedVoltage) &&
                row.voltage_kind === part.voltageKind &&
                row.tolerances.some((cell) => readTolerance(cell).plus === part.tolerance.plus),
            );
            expect(within, `${JSON.stringify(part)} is offered`).toBe(true);
            const made = madeValues(
              catalogue,
              part.series,
              part.capacitance * (1 - 1e-9),
              part.capacitance * (1 + 1e-9),
            );
            expect(made, `${String(part.capacitance)} F in ${part.series}`).not.toEqual([]);
          }
        }
      }),
      { numRuns: 150 },
    );
  });

  test('the same parts whatever was asked before', () => {
    fc.assert(
      fc.property(request, ({ type, position, farad, rated, direct }) => {
        const asked = {
          original: { type, capacitance: exactly(farad), ratedVoltage: exactly(rated) },
          position,
          conditions: given({ vdc: direct }),
        };
        const fresh = { ...catalogue };
        for (const wanted of types) {
          const partsIn = (own: Catalogue): readonly OfferedPart[] =>
            offeredParts(own, wanted, circumstancesOf(asked, own));
          partsIn(catalogue);
          expect(partsIn(catalogue)).toEqual(partsIn(fresh));
        }
      }),
      { numRuns: 20 },
    );
  });

  test('a list of stand-ins, whatever the value and the voltages', () => {
    fc.assert(
      fc.property(request, ({ type, position, farad, rated, direct }) => {
        const all = findStandIns(catalogue, {
          original: { type, capacitance: exactly(farad), ratedVoltage: exactly(rated) },
          position,
          conditions: given({ vdc: direct }),
        });
        expect(all.length > 0 && all.every(({ findings }) => findings.length > 0)).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  test('no rating below the needed one where a higher is made, and no needless step above it', () => {
    for (const position of Object.keys(catalogue.positions)) {
      const circumstances = circumstancesOf({ original: { type: 'pet-metallized' }, position });
      for (const type of types) {
        for (const row of catalogue.offers.filter((each) => each.type === type)) {
          const only = { ...catalogue, offers: [row] };
          const needed = neededRating(
            { type, voltageKind: row.voltage_kind },
            { ...circumstances, catalogue: only },
          );
          const sufficient = row.voltages.filter((each) => each >= needed * 0.999999);
          const allowed = sufficient.length > 0 ? sufficient.slice(0, 2) : row.voltages.slice(-1);
          const rated = offeredParts(only, type, { ...circumstances, catalogue: only }).map(
            ({ ratedVoltage }) => ratedVoltage,
          );
          expect(allowed).toEqual(expect.arrayContaining([...new Set(rated)]));
        }
      }
    }
  });
});

describe('parts for the mains', () => {
  const approved = new Set(
    Object.values(catalogue.types)
      .filter(({ safety_classes: classes }) => classes.length > 0)
      .map(({ id }) => id),
  );

  test('are offered at the mains and across an alternating voltage alone', () => {
    expect(approved.size).toBeGreaterThan(2);
    for (const { id, safety, voltage_sense: sense } of Object.values(catalogue.positions)) {
      const offered = findStandIns(catalogue, {
        original: { type: 'pet-metallized' },
        position: id,
      })
        .map(({ candidate }) => candidate.type)
        .filter((type) => approved.has(type));
      expect(offered.length > 0, id).toBe(safety.length > 0 || sense === 'ac');
    }
  });
});
