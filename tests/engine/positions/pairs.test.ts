import { kindPairing } from '../../../src/engine/kinds/pairs.ts';
import { describe, expect, test } from 'vitest';
import { rowNamed } from '../../../src/engine/assessment/original.ts';
import { allPairings, pairing, type Pairing } from '../../../src/engine/index.ts';
import { catalogue } from '../assessment/setting.ts';

const paired = (type: string, position: string): Pairing =>
  pairing(
    catalogue,
    rowNamed(catalogue.types, type, 'type'),
    rowNamed(catalogue.positions, position, 'position'),
  );

const whyNot = (type: string, position: string): string => {
  const result = paired(type, position);
  return result.met ? '' : result.why;
};

describe('a type and a position', () => {
  test.each([
    ['ceramic-z5u', 'interstage-coupling'],
    ['ceramic-disc-unknown', 'interstage-coupling'],
    ['paper-wax', 'interstage-coupling'],
    ['al-electrolytic-wet', 'reservoir'],
    ['ps-film-foil', 'vco-timing'],
    ['silvered-mica', 'rf-tuned-circuit'],
    ['paper-x-safety', 'mains-x'],
    ['al-electrolytic-bipolar', 'speaker-crossover'],
  ])('are met: %s in %s', (type, position) => {
    expect(paired(type, position)).toEqual({ met: true });
  });

  test('are not met where their values are apart, and both spans are said', () => {
    expect(whyNot('silvered-mica', 'reservoir')).toMatch(/^made from .+, while .+ takes .+F/u);
  });

  test('say their spans apart from each other, so that a page can tell them once', () => {
    const result = paired('silvered-mica', 'reservoir');
    const apart = result.met ? undefined : result.apart;
    expect(apart?.made).toMatch(/F to .+F$/u);
    expect(whyNot('silvered-mica', 'reservoir')).toContain(apart?.taken);
  });

  test('are not met where a polar part would see both signs', () => {
    const unlisted = { ...catalogue, unlikelyPairs: [] };
    const type = rowNamed(catalogue.types, 'al-electrolytic-wet', 'type');
    const position = rowNamed(catalogue.positions, 'sample-hold', 'position');
    expect(pairing(unlisted, type, position)).toMatchObject({
      met: false,
      why: expect.stringContaining('both signs') as string,
    });
  });

  test('are not met where the table of unlikely pairs says so, in its words', () => {
    expect(catalogue.unlikelyPairs.length).toBeGreaterThan(100);
    for (const { type, position, why } of catalogue.unlikelyPairs) {
      const kindType = catalogue.kindTypes[type];
      const kindPosition = catalogue.kindPositions[position];
      const found =
        kindType && kindPosition
          ? kindPairing(catalogue, kindType, kindPosition)
          : paired(type, position);
      expect(found).toEqual({ met: false, why });
    }
  });
});

describe('all pairs', () => {
  const all = allPairings(catalogue);

  test('are every type with every position, once', () => {
    const names = all.map(({ type, position }) => `${type} ${position}`);
    expect(new Set(names).size).toBe(names.length);
    expect(names.length).toBe(
      Object.keys(catalogue.types).length * Object.keys(catalogue.positions).length,
    );
  });

  test('leave no type and no position without a page', () => {
    const met = all.filter((one) => one.pairing.met);
    expect(new Set(met.map(({ type }) => type)).size).toBe(Object.keys(catalogue.types).length);
    expect(new Set(met.map(({ position }) => position)).size).toBe(
      Object.keys(catalogue.positions).length,
    );
  });

  test('say why where they are not met', () => {
    for (const one of all) {
      if (!one.pairing.met) expect(one.pairing.why).toMatch(/\w/u);
    }
  });

  test('never call a polar part met where the voltage takes both signs', () => {
    for (const { type, position, pairing: result } of all) {
      if (!result.met || catalogue.types[type]?.polarity !== 'polar') continue;
      expect(catalogue.positions[position]?.voltage_sense).toBe('one sign');
    }
  });
});
