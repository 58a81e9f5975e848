import { describe, expect, test } from 'vitest';
import type { Assessment } from '../../../src/engine/assessment/assess.ts';
import { assess, findStandIns, type Made, type Request } from '../../../src/engine/index.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';
import { partPhrase } from '../../../src/substitution/phrases.ts';
import { catalogue, given } from '../assessment/setting.ts';
import { findingOf } from '../assessment/finding-of.ts';

const request = (
  type: string,
  farad: number,
  volts: number,
  position: string,
  conditions: Record<string, number> = {},
): Request => ({
  original: { type, capacitance: exactly(farad), ratedVoltage: exactly(volts) },
  position,
  conditions: given(conditions),
});

const ofType = (all: readonly Assessment[], type: string): Assessment => {
  const found = all.find(({ candidate }) => candidate.type === type);
  if (found === undefined) throw new Error(`no ${type}`);
  return found;
};

const madeOf = ({ candidate }: Assessment): Made => {
  if (candidate.made === undefined) throw new Error(`${candidate.type} is a single part`);
  return candidate.made;
};

/** With plain spaces: a number and its unit are set with one that does not break. */
const plainly = (text: string): string => text.replaceAll('\u00a0', ' ');

describe('50 nF in an active filter, which no preferred value but 51 nF meets', () => {
  const asked = request('paper-wax', 50e-9, 100, 'active-filter');
  const all = () => findStandIns(catalogue, asked);
  const pair = () => ofType(all(), 'ceramic-c0g');

  test('is made up of two, 47 and 3.3 nF, in parallel', () => {
    const { kind, parts, why } = madeOf(pair());
    expect(kind).toBe('parallel');
    expect(parts.map(({ capacitance }) => capacitance)).toEqual([47e-9, 3.3e-9]);
    expect(pair().candidate.capacitance).toBeCloseTo(50.3e-9, 15);
    expect(pair().verdict).toBe('fits');
    expect(plainly(why)).toMatch(
      /^47 nF and 3\.3 nF in parallel make 50\.3 nF; ±\d % together where both are off the same way$/u,
    );
  });

  test('stands behind every single part that does as well', () => {
    const made = all()
      .filter(({ verdict }) => verdict === 'fits-if')
      .map(({ candidate }) => candidate.made !== undefined);
    expect(made).toEqual([...made].sort((a, b) => Number(a) - Number(b)));
    expect(made).toContain(false);
  });

  test('can be ordered, and says where pairs are from', () => {
    expect(pair().buy?.style).not.toBe('');
    expect(findingOf(pair(), 'availability').sources).toContain('identity');
  });

  test('is what one gets by asking for the type alone', () => {
    expect(assess(catalogue, asked, { type: 'ceramic-c0g' })).toEqual(pair());
  });

  test('is not thrust on him who names a value', () => {
    const named = assess(catalogue, asked, { type: 'ceramic-c0g', capacitance: 47e-9 });
    expect(named.candidate.made).toBeUndefined();
    expect(named.verdict).toBe('keep-out');
  });
});

describe('32 uF at 600 V after a rectifier, where electrolytics end at 500 V', () => {
  const pair = () =>
    ofType(
      findStandIns(catalogue, request('al-electrolytic-wet', 32e-6, 600, 'reservoir')),
      'al-electrolytic-wet',
    );

  test('is made up of two of twice the value in series', () => {
    const { kind, parts } = madeOf(pair());
    expect(kind).toBe('series');
    expect(parts.map(({ capacitance }) => capacitance)).toEqual([68e-6, 68e-6]);
    expect(pair().candidate.capacitance).toBeCloseTo(34e-6, 12);
  });

  test('stands what the worse off of the two allows: at ±20 % 0.6 of the voltage', () => {
    const rated = madeOf(pair()).parts[0]?.ratedVoltage ?? NaN;
    expect(pair().candidate.ratedVoltage).toBeCloseTo(rated / 0.6, 6);
    expect(rated).toBeLessThanOrEqual(500);
    expect(findingOf(pair(), 'rated-voltage').verdict).toBe('fits');
  });

  test('has a resistor across each, by its leakage limit', () => {
    const { bleeder, why } = madeOf(pair());
    expect(bleeder).toBe(120e3);
    expect(plainly(why)).toContain('120 kΩ across each');
    expect(plainly(why)).toContain('259 V and 0.56 W');
  });

  test('leaks through the resistors as well', () => {
    const leakage = findingOf(pair(), 'leakage-current');
    expect(leakage.standIn?.min).toBeGreaterThan(432 / 240e3);
    expect(plainly(leakage.working)).toContain('(2 × 120 kΩ)');
  });

  test('names the source that asks for the resistors', () => {
    expect(findingOf(pair(), 'availability').sources).toContain('chemicon-guide-voltage');
  });
});

describe('22 uF at 160 V where the voltage takes both signs', () => {
  const asked = request('al-electrolytic-bipolar', 22e-6, 160, 'rc-filter-audio', {
    vac: 60,
    'v-surge': 120,
  });
  const pair = () => ofType(findStandIns(catalogue, asked), 'al-electrolytic-wet');

  test('is made up of two polar parts with like poles joined, no bipolar one being made', () => {
    expect(madeOf(pair()).kind).toBe('back-to-back');
    expect(madeOf(pair()).parts.map(({ capacitance }) => capacitance)).toEqual([47e-6, 47e-6]);
    expect(pair().candidate.capacitance).toBeCloseTo(23.5e-6, 12);
    expect(findingOf(pair(), 'polarity').working).toContain('non-polar pair');
  });

  test('stands no more voltage than one of them', () => {
    expect(pair().candidate.ratedVoltage).toBe(madeOf(pair()).parts[0]?.ratedVoltage);
  });

  test('is not offered where a bipolar part does', () => {
    const lower = request('al-electrolytic-bipolar', 10e-6, 50, 'rc-filter-audio');
    const all = findStandIns(catalogue, lower);
    expect(ofType(all, 'al-electrolytic-bipolar').verdict).toBe('fits-if');
    expect(ofType(all, 'al-electrolytic-wet').candidate.made).toBeUndefined();
  });

  test('is not offered where the voltage alternates all the time', () => {
    const across = findStandIns(
      catalogue,
      request('al-electrolytic-bipolar', 22e-6, 160, 'speaker-crossover', { vac: 60 }),
    );
    expect(ofType(across, 'al-electrolytic-wet').candidate.made?.kind).not.toBe('back-to-back');
  });
});

describe('a multilayer ceramic at a regulator that asks for series resistance', () => {
  const asked = request('ta-mno2-solid', 10e-6, 25, 'regulator-output');
  const found = () => ofType(findStandIns(catalogue, asked), 'ceramic-x7r');

  test('has a resistor in series that puts it into the window', () => {
    const { kind, parts, resistor = NaN } = madeOf(found());
    expect(kind).toBe('with-resistor');
    expect(parts).toHaveLength(1);
    expect(resistor).toBeGreaterThan(0.1);
    expect(resistor).toBeLessThan(5);
    const window = findingOf(found(), 'esr-window');
    expect(window.verdict).toBe('fits');
    expect(window.standIn?.min).toBeGreaterThan(resistor);
  });

  test('is a stopgap without it', () => {
    const { capacitance } = found().candidate;
    expect(assess(catalogue, asked, { type: 'ceramic-x7r', capacitance }).verdict).toBe('stopgap');
  });
});

describe('motor capacitors', () => {
  test.each([
    [4e-6, 4e-6],
    [2.5e-6, 2.5e-6],
    [16e-6, 16e-6],
  ])('of %d F are made as such, not in preferred values', (old, now) => {
    const found = ofType(
      findStandIns(catalogue, request('paper-oil', old, 450, 'motor-run')),
      'pp-motor-run',
    );
    expect(found.candidate.capacitance).toBe(now);
    expect([found.verdict, found.buy?.series, found.candidate.made]).toEqual([
      'fits',
      'motor-run',
      undefined,
    ]);
  });

  test('of 11 uF are two in parallel', () => {
    const found = ofType(
      findStandIns(catalogue, request('paper-oil', 11e-6, 450, 'motor-run')),
      'pp-motor-run',
    );
    expect(madeOf(found).kind).toBe('parallel');
    expect(found.candidate.capacitance).toBeCloseTo(11e-6, 12);
  });
});

test('two that are set by hand are not put in parallel: they would have to be turned as one', () => {
  const asked = request('air-variable', 500e-12, 250, 'rf-tuned-circuit');
  const { candidate } = ofType(findStandIns(catalogue, asked), 'air-variable');
  expect(candidate.made).toBeUndefined();
});

describe('what to order', () => {
  const phrase = (asked: Request, type: string): string =>
    plainly(partPhrase(ofType(findStandIns(catalogue, asked), type).candidate));

  test.each<[string, Request, string, RegExp]>([
    [
      'two that differ',
      request('paper-wax', 50e-9, 100, 'active-filter'),
      'ceramic-c0g',
      /^47 nF ±\d+ % \d+ V and 3\.3 nF ±\d+ % \d+ V in parallel$/u,
    ],
    [
      'two alike with their resistors',
      request('al-electrolytic-wet', 32e-6, 600, 'reservoir'),
      'al-electrolytic-wet',
      /^2 × 68 µF ±20 % \d+ V in series, 120 kΩ across each$/u,
    ],
    [
      'a part and a resistor',
      request('ta-mno2-solid', 10e-6, 25, 'regulator-output'),
      'ceramic-x7r',
      /^10 µF ±\d+ % \d+ V with 0\.\d+ Ω in series$/u,
    ],
    [
      'a single part as ever',
      request('paper-oil', 4e-6, 450, 'motor-run'),
      'pp-motor-run',
      /^4 µF ±5 % \d+ V AC$/u,
    ],
  ])('%s', (_what, asked, type, said) => {
    expect(phrase(asked, type)).toMatch(said);
  });
});
