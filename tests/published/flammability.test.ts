import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { findKindStandIns } from '../../src/engine/index.ts';
import { knowledgeOf } from '../../src/engine/findings/model.ts';
import { exactly } from '../../src/engine/quantities/range.ts';

const catalogue = loadCatalogue();

/** How the body of a type burns: 0 not at all, 1 where it may catch fire. */
const flame = (type: string) => {
  const found = knowledgeOf({ catalogue }, { type }, 'flame');
  return found.status === 'known' ? found.range : undefined;
};

describe('what sheets say of bodies in an overload', () => {
  test.each([
    ['withstands overload without flame (ROX data sheet)', 'metal-oxide', 0, 0],
    ['does not burn under any temperature or overload (W30 data sheet)', 'wirewound', 0, 0],
    ['fuses without the risk of fire (NFR25 data sheet)', 'fusible-film', 0, 0],
    ['fuses without any flame (FRC data sheet)', 'fusible-wirewound', 0, 0],
    ['resistors in general may flame (cautions of a maker)', 'carbon-film', 1, 1],
    ['resistors in general may flame (cautions of a maker)', 'metal-film', 1, 1],
    ['resistors in general may flame (cautions of a maker)', 'carbon-composition', 1, 1],
    ['flameproof coat or epoxy, by size (RM specification)', 'high-voltage-glaze', 0, 1],
  ])('%s: %s', (_what, type, min, max) => {
    expect(flame(type)).toMatchObject({ min, max });
  });

  test('every type of resistor is judged, and none made flameproof may burn for certain', () => {
    for (const row of Object.values(catalogue.kindTypes)) {
      if (row.kind !== 'resistor') continue;
      expect(flame(row.id), row.id).toBeDefined();
      if (row.duties.includes('flameproof')) expect(flame(row.id)?.min, row.id).toBe(0);
    }
  });
});

describe('what burns counts where it matters', () => {
  const found = (position: string, type: string, fault: number) =>
    findKindStandIns(catalogue, {
      original: { type: 'carbon-composition', value: exactly(22), rating: exactly(1) },
      position,
      conditions: { 'v-fault': exactly(fault) },
    }).find(({ candidate }) => candidate.type === type);
  const finding = (position: string, type: string, fault: number) =>
    found(position, type, fault)?.findings.find((one) => one.finding === 'flammability');

  test.each([
    ['inrush-limiter', 'ceramic-composition', 230, 'fits'],
    ['inrush-limiter', 'wirewound', 230, 'fits'],
    ['inrush-limiter', 'metal-film', 230, 'fits-if'],
    // 1 V across 22 Ω is 45 mW.
    ['inrush-limiter', 'metal-film', 1, 'fits'],
    ['hot-power', 'metal-oxide', 100, 'fits'],
    ['hot-power', 'carbon-film', 100, 'stopgap'],
  ])('in %s a %s with %f V in a fault: %s', (position, type, volts, verdict) => {
    expect(finding(position, type, volts)?.verdict).toBe(verdict);
  });

  test('UL 1412 raises the voltage in whole steps: at five times 22 Ω of 1 W has 25 W in it', () => {
    // √(1 W × 22 Ω) is the rated voltage.
    const working = finding('inrush-limiter', 'wirewound', 5 * Math.sqrt(22))?.working ?? '';
    expect(working.replaceAll('\u00a0', ' ')).toMatch(/makes 25 W, \d+(\.\d+)? × its/u);
  });
});
