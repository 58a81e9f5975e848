import { describe, expect, test } from 'vitest';
import { assess, judgeFirst, reformingInWords } from '../../../src/engine/index.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';
import { reformingPlan, type ReformingPlan } from '../../../src/engine/reforming/plan.ts';
import { catalogue, given } from '../assessment/setting.ts';

const YEAR = 31_557_600;

const planFor = (type: string, farad: number, volt: number, years: number): ReformingPlan => {
  const part = { type, capacitance: farad, ratedVoltage: volt };
  const plan = reformingPlan(catalogue, part, years * YEAR);
  if (plan === undefined) throw new Error('no plan');
  return plan;
};

const WET = [
  'al-electrolytic-wet',
  'al-electrolytic-low-esr',
  'al-low-leakage',
  'al-electrolytic-bipolar',
];

describe('a plan for re-forming', () => {
  test.each([
    // The maker's procedure of 1993 as copied: 10 kilohm up to 75 V, 100 kilohm above, 4 hours.
    ['10 kilohm up to 75 V', 'al-electrolytic-wet', 10e-6, 25, 5, 10e3],
    // 1 uF at 100 V: three times 1 uA and 25 uA more leave 50 uA, so 10 V stand across 186 kilohm.
    ['100 kilohm above', 'al-electrolytic-wet', 1e-6, 160, 5, 100e3],
    ['30 kilohm for old low-voltage cans', 'al-electrolytic-wet', 1e-6, 50, 30, 27e3],
    ['150 kilohm for old high-voltage ones', 'al-electrolytic-wet', 1e-6, 450, 30, 150e3],
    // 0.01*C*V = 6.3 mA, twice that is 12.6 mA: a tenth of 63 V stands across 500 ohm.
    ['less where the leakage allowed would take too much', 'al-electrolytic-wet', 1e-2, 63, 5, 470],
    // 0.01*C*V = 0.1 A would ask for 5 ohm; makers use no less than 100 ohm.
    ['never less than on new parts', 'al-electrolytic-wet', 1e-1, 100, 5, 100],
  ])('takes %s', (_what, type, farad, volt, years, ohm) => {
    expect(planFor(type, farad, volt, years).resistor).toBe(ohm);
  });

  test('goes up to the rated voltage, from half of it or, after ten years, from a quarter', () => {
    const volts = (years: number): number[] =>
      planFor('al-electrolytic-wet', 47e-6, 16, years).steps.map(({ voltage }) => voltage);
    expect(volts(4)).toEqual([8, 12, 16]);
    expect(volts(10)).toEqual([4, 8, 12, 16]);
  });

  test('waits at each step until the part is charged', () => {
    const { resistor, steps } = planFor('al-electrolytic-wet', 1e-2, 63, 5);
    expect(steps[0]?.time).toBe(600);
    expect(5 * resistor * 1e-2).toBeLessThan(600);
    const slow = planFor('al-electrolytic-wet', 4.7e-3, 16, 5);
    expect(slow.steps[0]?.time).toBe(Math.max(600, 5 * slow.resistor * 4.7e-3));
  });

  test('ends by its leakage, as current and as voltage across the resistor', () => {
    const { leakage, drop, resistor, scrapDrop } = planFor('al-electrolytic-wet', 47e-6, 16, 5);
    expect(leakage).toBeCloseTo(2 * 0.01 * 47 * 16 * 1e-6, 12);
    expect(drop).toBeCloseTo(leakage * resistor, 12);
    expect(scrapDrop).toBeCloseTo(1.6, 12);
  });

  // 470 ohm for 10 mF at 63 V, as above: five times 4.7 s is more than a step of a minute.
  test.each([
    ['a minute', 1, 60],
    ['a second', 1 / 60, 23.5],
  ])('charges the part fully at steps of at least %s', (_what, minutes, time) => {
    const reforming = catalogue.reforming.map((row) =>
      row.figure === 'step-time' ? { ...row, value: minutes, unit: 'min' } : row,
    );
    const part = { type: 'al-electrolytic-wet', capacitance: 1e-2, ratedVoltage: 63 };
    const plan = reformingPlan({ ...catalogue, reforming }, part, 5 * YEAR);
    expect(plan?.resistor).toBe(470);
    for (const step of plan?.steps ?? []) expect(step.time).toBeCloseTo(time, 9);
  });

  test.each([25, 75, 160])('does not hang on the order of the table at %d V', (ratedVoltage) => {
    const part = { type: 'al-electrolytic-wet', capacitance: 1e-6, ratedVoltage };
    const reforming = catalogue.reforming.toReversed();
    expect(reformingPlan({ ...catalogue, reforming }, part, 5 * YEAR)).toEqual(
      reformingPlan(catalogue, part, 5 * YEAR),
    );
  });

  test('needs every figure of the table', () => {
    const reforming = catalogue.reforming.filter(({ figure }) => figure !== 'hold');
    const part = { type: 'al-electrolytic-wet', capacitance: 1e-6, ratedVoltage: 25 };
    expect(() => reformingPlan({ ...catalogue, reforming }, part, 0)).toThrow(
      /no hold for al-electrolytic-wet/,
    );
  });

  test('is made once each way for a part that takes both signs', () => {
    expect(planFor('al-electrolytic-bipolar', 1e-5, 50, 5).bothWays).toBe(true);
    expect(planFor('al-electrolytic-wet', 1e-5, 50, 5).bothWays).toBe(false);
  });

  test.each(WET)('exists for %s of every value, rating and time, and is sound', (type) => {
    for (const farad of [1e-7, 4.7e-6, 1e-4, 1e-2, 1e-1]) {
      for (const volt of [4, 6.3, 75, 75.1, 100, 160, 450, 630]) {
        for (const years of [0, 2, 9.9, 10, 60]) {
          const plan = planFor(type, farad, volt, years);
          expect(plan.resistor).toBeGreaterThanOrEqual(volt > 100 ? 1000 : 100);
          expect(plan.resistor).toBeLessThanOrEqual(150e3);
          expect(plan.steps.at(-1)?.voltage).toBe(volt);
          const rising = plan.steps.every(
            ({ voltage }, index) => voltage > (plan.steps[index - 1]?.voltage ?? 0),
          );
          expect(rising).toBe(true);
          expect(plan.giveUp).toBeGreaterThanOrEqual(plan.hold);
          expect(plan.sources.length).toBeGreaterThan(2);
        }
      }
    }
  });

  test.each(['pp-metallized', 'ceramic-x7r', 'ta-mno2-solid', 'al-polymer', 'unobtainium'])(
    'is not made for %s',
    (type) => {
      const part = { type, capacitance: 1e-6, ratedVoltage: 25 };
      expect(reformingPlan(catalogue, part, 30 * YEAR)).toBeUndefined();
    },
  );

  test('can be read as a sentence', () => {
    const words = reformingInWords(planFor('al-electrolytic-bipolar', 1e-5, 50, 12));
    expect(words.replaceAll(/\s/gu, ' ')).toBe(
      're-form through 27 kΩ (92.6 mW at most) with 12.5 V, 25 V, 37.5 V and 50 V, 30 min at each ' +
        'or until the current settles, then 4 h at full voltage; good once the leakage stays ' +
        'below 30 µA, which is 810 mV across the resistor; scrap if 5 V are still there after ' +
        '24 h or if it warms; discharge through 50 Ω, do the same the other way round, rest for ' +
        '24 h, measure',
    );
  });
});

describe('in words', () => {
  const plan = planFor('al-electrolytic-wet', 1e-5, 50, 5);
  const wordsOf = (voltages: number[], minutes: number, more: Partial<ReformingPlan> = {}) =>
    reformingInWords({
      ...plan,
      steps: voltages.map((voltage) => ({ voltage, time: minutes * 60 })),
      ...more,
    }).replaceAll(/\s/gu, ' ');

  test.each<[string, number[], number, string]>([
    ['one voltage', [16], 10, 'with 16 V, 10 min at each'],
    ['two', [8, 16], 10, 'with 8 V and 16 V, 10 min at each'],
    ['three', [8, 12, 16], 10, 'with 8 V, 12 V and 16 V, 10 min at each'],
    ['less than a minute', [16], 0.5, 'with 16 V, 0.5 min at each'],
    ['just below an hour', [16], 59, 'with 16 V, 59 min at each'],
    ['an hour', [16], 60, 'with 16 V, 1 h at each'],
  ])('%s', (_what, voltages, minutes, words) => {
    expect(wordsOf(voltages, minutes)).toContain(words);
  });

  test('the other way round is only for parts that take both signs', () => {
    expect(wordsOf([16], 10, { bothWays: true })).toContain('the other way round');
    expect(wordsOf([16], 10)).toMatch(/discharge through 50 Ω, rest for 24 h, measure$/);
  });
});

describe('a stand-in from old stock', () => {
  const onShelf = (type: string, years: number) => {
    const { findings } = assess(
      catalogue,
      {
        original: {
          type: 'al-electrolytic-wet',
          capacitance: exactly(47e-6),
          ratedVoltage: exactly(25),
        },
        position: 'bulk-rail',
        conditions: given({ shelf: years * YEAR }),
      },
      { type, capacitance: 47e-6, ratedVoltage: 25 },
    );
    const found = findings.find(({ finding }) => finding === 'shelf');
    if (found === undefined) throw new Error('no finding');
    return found;
  };

  test.each([
    ['al-electrolytic-wet', 0, 'fits'],
    ['al-electrolytic-wet', 2, 'fits'],
    ['al-electrolytic-wet', 5, 'fits-if'],
    ['al-electrolytic-wet', 40, 'stopgap'],
    ['al-polymer', 3, 'fits'],
    ['al-polymer', 5, 'fits-if'],
    ['ta-mno2-solid', 40, 'fits'],
    ['pet-metallized', 40, 'fits'],
    ['ta-wet', 0, 'fits'],
    ['ta-wet', 5, 'fits-if'],
  ])('%s after %d years: %s', (type, years, verdict) => {
    expect(onShelf(type, years).verdict).toBe(verdict);
  });

  test('says how it is re-formed, and rests on who says so', () => {
    const { working, sources } = onShelf('al-electrolytic-wet', 5);
    expect(working).toContain('re-form through');
    expect(sources).toEqual(expect.arrayContaining(['cde-reage-1993', 'eia-815']));
    expect(onShelf('al-electrolytic-wet', 2).working).not.toContain('re-form');
    expect(onShelf('al-polymer', 5).working).toContain('measure its leakage');
  });
});

describe('an old electrolytic that lay idle', () => {
  const can = { type: 'al-electrolytic-wet', capacitance: 32e-6, ratedVoltage: 450 };
  const judged = (evidence: Parameters<typeof judgeFirst>[3]) =>
    judgeFirst(catalogue, can, 'cathode-bypass', evidence);

  test('is re-formed before power after two years, and no sooner', () => {
    expect(judged({ idle: 1.9 * YEAR }).reforming).toBeUndefined();
    const { advice, reforming } = judged({ idle: 3 * YEAR });
    expect(advice).toBe('test');
    expect(reforming).toEqual(reformingPlan(catalogue, can, 3 * YEAR));
  });

  test('is not cleared by its loss, but by its leakage at rated voltage', () => {
    expect(judged({ idle: 3 * YEAR, loss120hz: 0.08 }).advice).toBe('test');
    const measured = judged({ idle: 3 * YEAR, leakage: 50e-6 });
    expect(measured.advice).toBe('leave');
    expect(measured.reforming).toBeUndefined();
  });

  test.each(
    WET.flatMap((type) =>
      [
        [1e-6, 50],
        [100e-6, 25],
        [32e-6, 450],
      ].map(([farad = 0, volt = 0]) => ({ type, farad, volt })),
    ),
  )('is not condemned by a leakage that re-forming lets pass: $type, $volt V', (part) => {
    const { type, farad: capacitance, volt: ratedVoltage } = part;
    const { leakage } = planFor(type, capacitance, ratedVoltage, 3);
    const adviceAt = (ampere: number): string =>
      judgeFirst(catalogue, { type, capacitance, ratedVoltage }, 'cathode-bypass', {
        leakage: ampere,
      }).advice;
    expect(adviceAt(0.99 * leakage)).toBe('test');
    expect(adviceAt(1.01 * leakage)).toBe('replace');
  });

  test('of another kind needs none', () => {
    const film = { type: 'pp-metallized', capacitance: 1e-6, ratedVoltage: 400 };
    const judgement = judgeFirst(catalogue, film, 'interstage-coupling', { idle: 30 * YEAR });
    expect(judgement).toMatchObject({ advice: 'leave' });
    expect(judgement.reforming).toBeUndefined();
  });
});
