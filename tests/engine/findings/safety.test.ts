import { describe, expect, test } from 'vitest';
import type { Knowledge } from '../../../src/engine/catalogue.ts';
import { findingModels } from '../../../src/engine/findings/index.ts';
import type { Range } from '../../../src/engine/quantities/range.ts';
import { circumstancesOf, given, known, notKnown } from '../assessment/setting.ts';
import { probeIn, type Spoiling } from './probe.ts';

/** Findings that keep people and equipment whole, for made-up parts, worked by hand. */

const base = circumstancesOf({
  original: { type: 'pet-metallized' },
  position: 'interstage-coupling',
});
const exempt: Knowledge = { status: 'not-applicable', sources: [] };
const range = (min: number, typ: number, max: number): Range => ({ min, typ, max });

const tryOut = (id: string, spoiling: Spoiling) => {
  const model = findingModels[id];
  if (model === undefined) throw new Error(`no finding ${id}`);
  const { part, circumstances } = probeIn(base, spoiling);
  const outcome = model.measure(part, circumstances);
  const value = outcome.status === 'known' ? outcome.value : range(NaN, NaN, NaN);
  const working = model.working(part, circumstances, value).replaceAll(/[\u00A0\u202F]/gu, ' ');
  return { outcome, working };
};

const polar = { type: { polarity: 'polar' } } as const;
const reverse = (volt: number, more: Spoiling = {}): Spoiling => ({
  part: { ratedVoltage: 50 },
  ...polar,
  conditions: given({ 'v-reverse': volt }),
  ...more,
});
const surge = (more: Spoiling): Spoiling => ({
  part: { ratedVoltage: 20 },
  conditions: given({ 'v-surge': 10, 'source-resistance': 1 }),
  ...more,
});
const alternating = (more: Spoiling): Spoiling => ({
  part: { ratedVoltage: 400 },
  conditions: given({ vac: 100 }),
  ...more,
});
const warm = (figures: NonNullable<Spoiling['figures']>): Spoiling => ({
  figures,
  conditions: given({ 't-min': 0, 't-max': 60 }),
});
const YEAR = 31_557_600;
const stored = (years: number, figures: NonNullable<Spoiling['figures']>): Spoiling => ({
  figures,
  conditions: given({ shelf: years * YEAR }),
});

describe('a finding about what may come to harm', () => {
  test.each<[string, Spoiling, [number, number, number], string]>([
    // A fiftieth of 50 V, and never more than half a volt.
    [
      'reverse-voltage',
      reverse(0.5, { figures: { 'reverse-voltage': known(0.02) } }),
      [0.5, 0.5, 0.5],
      '500 mV the wrong way round / 1 V',
    ],
    [
      'reverse-voltage',
      reverse(0.5, {
        figures: {
          'reverse-voltage': known(0.02),
          'reverse-voltage-most': known(range(0.25, 0.5, 2)),
        },
      }),
      [0.5, 1, 2],
      'withstood',
    ],
    [
      'reverse-voltage',
      reverse(1, { figures: { 'reverse-voltage': notKnown, 'reverse-voltage-most': known(2) } }),
      [0.5, 0.5, 0.5],
      '2 V',
    ],
    [
      'reverse-voltage',
      reverse(1, { figures: { 'reverse-voltage': known(0) } }),
      [Number.MAX_VALUE, Number.MAX_VALUE, Number.MAX_VALUE],
      '1 V on a part that withstands none the wrong way round',
    ],
    ['reverse-voltage', reverse(1, { type: { polarity: 'non-polar' } }), [0, 0, 0], 'either way'],
    ['reverse-voltage', reverse(0), [0, 0, 0], 'no reverse voltage'],
    // 400 V of DC are 200 V of AC, or what its gaps bear.
    [
      'ac-voltage',
      alternating({ figures: { 'ac-share': known(0.5) } }),
      [0.5, 0.5, 0.5],
      '100 V / 200 V',
    ],
    [
      'ac-voltage',
      alternating({
        figures: { 'ac-share': known(0.5), 'corona-start': known(range(50, 100, 250)) },
      }),
      [0.5, 1, 2],
      '100 V',
    ],
    [
      'ac-voltage',
      alternating({ part: { ratedVoltage: 250, voltageKind: 'ac' } }),
      [0.4, 0.4, 0.4],
      '100 V / 250 V',
    ],
    ['ac-voltage', alternating({ figures: { 'ac-share': exempt } }), [0, 0, 0], 'the peak counts'],
    // Five amperes where each is proved with ten.
    [
      'own-surge',
      surge({ figures: { 'surge-resistance': known(1), 'esr-100khz': known(1) } }),
      [0.5, 0.5, 0.5],
      '10 V / (1 Ω + 1 Ω) against 20 V / (1 Ω + 1 Ω)',
    ],
    ['own-surge', surge({}), [0, 0, 0], 'no such limit'],
    [
      'temperature',
      warm({ 'temperature-min': known(-40), 'temperature-max': known(range(85, 95, 105)) }),
      [25, 35, 40],
      'rated −40 °C to 95 °C, used from 0 °C to 60 °C: 35 K',
    ],
    [
      'temperature',
      warm({ 'temperature-min': known(range(-20, -10, 5)), 'temperature-max': known(125) }),
      [-5, 10, 20],
      '10 K',
    ],
    [
      'shelf',
      stored(1, { 'shelf-life': known(range(YEAR, 2 * YEAR, 4 * YEAR)) }),
      [0.25, 0.5, 1],
      'on the shelf',
    ],
    ['shelf', stored(4, { 'shelf-life': known(2 * YEAR) }), [2, 2, 2], 'before you trust it'],
    ['shelf', stored(0, { 'shelf-life': known(YEAR) }), [0, 0, 0], 'bought new'],
    ['shelf', stored(9, { 'shelf-life': exempt }), [0, 0, 0], 'without limit'],
    ['shelf', { ...stored(9, {}), part: { age: YEAR } }, [0, 0, 0], ''],
    // A part that was not polar does not tell which end is positive.
    ['sign-known', polar, [1, 1, 1], 'measure which end'],
    ['sign-known', { type: { polarity: 'non-polar' } }, [0, 0, 0], 'either way'],
    // What was set by hand is tuned by no fixed part.
    ['settable', { original: { type: 'air-variable' } }, [1, 1, 1], 'no longer be tuned'],
    ['settable', { original: { type: 'film-unknown' } }, [0, 0, 0], 'was fixed'],
    [
      'settable',
      { type: { family: 'air' }, original: { type: 'air-variable' } },
      [0, 0, 0],
      'as the old part was',
    ],
    ['polarity', { ...polar, position: { voltage_sense: 'ac' } }, [1, 1, 1], 'both signs'],
    [
      'polarity',
      { ...polar, position: { voltage_sense: 'one sign' } },
      [0, 0, 0],
      'mind which way',
    ],
    [
      'polarity',
      { type: { polarity: 'non-polar' }, position: { voltage_sense: 'ac' } },
      [0, 0, 0],
      'non-polar part',
    ],
    [
      'safety-class',
      { type: { safety_classes: ['x2'] }, position: { safety: ['x1', 'x2'] } },
      [0, 0, 0],
      'x1 or x2',
    ],
    [
      'safety-class',
      { type: { safety_classes: ['y2'] }, position: { safety: ['x1', 'x2'] } },
      [1, 1, 1],
      'has y2',
    ],
    [
      'safety-class',
      { type: { safety_classes: [] }, position: { safety: ['x2'] } },
      [1, 1, 1],
      'has none',
    ],
    [
      'safety-class',
      { type: { safety_classes: [] }, position: { safety: [] } },
      [0, 0, 0],
      'no mains duty',
    ],
    ['availability', { offer: { voltages: [5] } }, [1, 1, 1], 'not made'],
    ['availability', { type: { market: 'niche' } }, [0, 0, 0], 'few stock it'],
    ['availability', { type: { market: 'common' } }, [0, 0, 0], 'everywhere'],
    ['availability', { type: { market: 'current' } }, [0, 0, 0], 'made and stocked'],
    ['microphony', { figures: { piezoelectric: known(0) } }, [0, 0, 0], 'no voltage'],
    ['microphony', { figures: { piezoelectric: known(1) } }, [1, 1, 1], 'makes a voltage'],
    ['microphony', { figures: { piezoelectric: known(range(0, 0, 1)) } }, [0, 0, 1], 'may make'],
  ])('%s, case %#: %o', (id, spoiling, [min, typ, max], words) => {
    const { outcome, working } = tryOut(id, spoiling);
    if (outcome.status === 'unknown') throw new Error(`unknown: ${outcome.missing.join()}`);
    expect(outcome.value.min).toBeCloseTo(min, 9);
    expect(outcome.value.typ).toBeCloseTo(typ, 9);
    expect(outcome.value.max).toBeCloseTo(max, 9);
    expect(working).toContain(words);
    expect(working).not.toMatch(/NaN|undefined/u);
  });

  test.each<[string, Spoiling, string[]]>([
    [
      'reverse-voltage',
      reverse(1, { figures: { 'reverse-voltage': notKnown } }),
      ['reverse-voltage'],
    ],
    ['ac-voltage', alternating({ figures: { 'ac-share': notKnown } }), ['ac-share']],
    ['temperature', warm({ 'temperature-min': notKnown }), ['temperature-min']],
    ['temperature', warm({ 'temperature-max': notKnown }), ['temperature-max']],
    ['shelf', stored(1, { 'shelf-life': notKnown }), ['shelf-life']],
    [
      'polarity',
      { type: { polarity: 'unknown' }, position: { voltage_sense: 'ac' } },
      ['polarity'],
    ],
    ['microphony', { figures: { piezoelectric: notKnown } }, ['piezoelectric']],
  ])('%s, case %#, is not known for want of %o', (id, spoiling, missing) => {
    expect(tryOut(id, spoiling).outcome).toEqual({ status: 'unknown', missing });
  });

  test('rests on the properties that it was worked out from', () => {
    const properties = (id: string, spoiling: Spoiling) => {
      const { outcome } = tryOut(id, spoiling);
      return outcome.status === 'known' ? outcome.properties : [];
    };
    const both = { 'reverse-voltage': known(0.02), 'reverse-voltage-most': known(2) };
    expect(properties('reverse-voltage', reverse(1, { figures: both }))).toEqual(Object.keys(both));
    expect(properties('reverse-voltage', reverse(1))).toEqual(['reverse-voltage']);
    expect(properties('temperature', warm({}))).toEqual(['temperature-min', 'temperature-max']);
    expect(properties('microphony', {})).toEqual(['piezoelectric']);
  });
});
