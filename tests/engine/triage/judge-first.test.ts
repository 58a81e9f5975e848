import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { judgeFirst, signsOf, type Advice, type Evidence } from '../../../src/engine/index.ts';

const catalogue = loadCatalogue();
const YEAR = 31_557_600;

const wet = { type: 'al-electrolytic-wet', capacitance: 1e-4, ratedVoltage: 25 };

const partOf = (type: string) => ({ type, capacitance: 1e-7, ratedVoltage: 25 });

interface Case {
  what: string;
  type: string;
  position: string;
  marked: number;
  volt?: number;
  evidence: Evidence;
  advice: Advice;
}

const cases: Case[] = [
  {
    what: 'wax paper is replaced, unmeasured',
    type: 'paper-wax',
    position: 'interstage-coupling',
    marked: 1e-7,
    evidence: {},
    advice: 'replace',
  },
  {
    what: 'wax paper is replaced although it measures well',
    type: 'paper-wax',
    position: 'interstage-coupling',
    marked: 1e-7,
    evidence: { capacitance: 1e-7, loss1khz: 0.005, insulation: 1e11 },
    advice: 'replace',
  },
  {
    what: 'oil paper is tested where it does not couple',
    type: 'paper-oil',
    position: 'bulk-rail',
    marked: 1e-6,
    evidence: {},
    advice: 'test',
  },
  {
    what: 'oil paper with 1000 MΩ at 1 µF stays',
    type: 'paper-oil',
    position: 'bulk-rail',
    marked: 1e-6,
    evidence: { insulation: 1e9 },
    advice: 'leave',
  },
  {
    what: 'film without a fault stays',
    type: 'pet-metallized',
    position: 'interstage-coupling',
    marked: 1e-7,
    evidence: { age: 45 * YEAR },
    advice: 'leave',
  },
  {
    what: 'polyester with 2 % loss goes',
    type: 'pet-metallized',
    position: 'interstage-coupling',
    marked: 1e-7,
    evidence: { loss1khz: 0.02 },
    advice: 'replace',
  },
  {
    what: 'an electrolytic is tested by default',
    type: 'al-electrolytic-wet',
    position: 'interstage-coupling',
    marked: 1e-5,
    evidence: {},
    advice: 'test',
  },
  {
    what: 'a reservoir of thirty years goes',
    type: 'al-electrolytic-wet',
    position: 'reservoir',
    marked: 1e-3,
    evidence: { age: 30 * YEAR },
    advice: 'replace',
  },
  {
    what: 'an electrolytic with 70 % of its value goes',
    type: 'al-electrolytic-wet',
    position: 'interstage-coupling',
    marked: 1e-5,
    evidence: { capacitance: 7e-6 },
    advice: 'replace',
  },
  {
    what: 'an electrolytic with little loss stays',
    type: 'al-electrolytic-wet',
    position: 'interstage-coupling',
    marked: 1e-5,
    evidence: { capacitance: 1e-5, loss120hz: 0.08 },
    advice: 'leave',
  },
  {
    what: 'a tantalum bead on an old rail goes',
    type: 'ta-mno2-solid',
    position: 'bulk-rail',
    marked: 1e-5,
    evidence: { age: 40 * YEAR },
    advice: 'replace',
  },
  {
    what: 'a tantalum bead in a timer stays',
    type: 'ta-mno2-solid',
    position: 'one-shot-timing',
    marked: 1e-6,
    evidence: { age: 40 * YEAR },
    advice: 'leave',
  },
  {
    what: 'a mains metallized-paper part goes',
    type: 'paper-x-safety',
    position: 'mains-x',
    marked: 1e-7,
    evidence: {},
    advice: 'replace',
  },
  {
    what: 'polystyrene 6 % off its value goes',
    type: 'ps-film-foil',
    position: 'vco-timing',
    marked: 1e-9,
    evidence: { capacitance: 1.06e-9 },
    advice: 'replace',
  },
  {
    // 100 nF * 0.8 * (1 - 0.07*log10(40 years in hours)) = 48.9 nF at the greatest rate of makers.
    what: 'a Z5U disc of forty years with 72 % of its mark has aged and no more',
    type: 'ceramic-z5u',
    position: 'local-decoupling',
    marked: 1e-7,
    evidence: { age: 40 * YEAR, capacitance: 72e-9 },
    advice: 'leave',
  },
  {
    what: 'one with 45 % of its mark is measured again',
    type: 'ceramic-z5u',
    position: 'local-decoupling',
    marked: 1e-7,
    evidence: { age: 40 * YEAR, capacitance: 45e-9 },
    advice: 'test',
  },
  {
    what: 'the same would be right at its age and grade',
    type: 'ceramic-y5v',
    position: 'local-decoupling',
    marked: 1e-7,
    evidence: { age: 40 * YEAR, capacitance: 45e-9 },
    advice: 'leave',
  },
  {
    what: 'one with 30 % of its mark is cracked',
    type: 'ceramic-z5u',
    position: 'local-decoupling',
    marked: 1e-7,
    evidence: { age: 40 * YEAR, capacitance: 30e-9 },
    advice: 'replace',
  },
  {
    // An hour old it has lost nothing, so 80 nF are the least.
    what: 'a new one with 72 % of its mark has not aged',
    type: 'ceramic-z5u',
    position: 'local-decoupling',
    marked: 1e-7,
    evidence: { age: 3600, capacitance: 72e-9 },
    advice: 'test',
  },
  {
    what: 'a disc in an easy job stays',
    type: 'ceramic-z5u',
    position: 'local-decoupling',
    marked: 1e-7,
    evidence: {},
    advice: 'leave',
  },
];

/** Published or printed cases are named by their source; the others follow from the tables. */
const readings: Case[] = [
  {
    what: 'an ESR below the worst of new parts: 0.30 Ω at 100 µF 25 V, table of worst-case ESR',
    type: 'al-electrolytic-wet',
    position: 'bulk-rail',
    marked: 1e-4,
    evidence: { capacitance: 0.95e-4, esr: 0.3, leakage: 20e-6 },
    advice: 'leave',
  },
  {
    what: 'an ESR above twice the worst of new parts: 1.2 Ω at 100 µF 25 V, same table',
    type: 'al-electrolytic-wet',
    position: 'reservoir',
    marked: 1e-4,
    evidence: { esr: 1.2 },
    advice: 'replace',
  },
  {
    what: 'the same ESR is a plain part where little is asked of it',
    type: 'al-electrolytic-wet',
    position: 'interstage-coupling',
    marked: 1e-4,
    evidence: { esr: 1.2 },
    advice: 'test',
  },
  {
    what: 'an ESR above that of a plain new part: 1.4 Ω at 100 µF 25 V, 138 Ω·µF of the guide',
    type: 'al-electrolytic-wet',
    position: 'interstage-coupling',
    marked: 1e-4,
    evidence: { esr: 1.4 },
    advice: 'replace',
  },
  {
    what: 'leakage above 0.01 CV, but below what re-forming lets pass: 30 µA at 100 µF 25 V',
    type: 'al-electrolytic-wet',
    position: 'interstage-coupling',
    marked: 1e-4,
    evidence: { esr: 0.3, leakage: 30e-6 },
    advice: 'test',
  },
  {
    what: 'leakage of a valve supply below 0.02 CV + 25 µA: 200 µA at 32 µF 350 V',
    type: 'al-electrolytic-wet',
    position: 'meter-damping',
    marked: 32e-6,
    volt: 350,
    evidence: { leakage: 200e-6 },
    advice: 'leave',
  },
  {
    what: 'a loss of 30 % is usual at 10 V',
    type: 'al-electrolytic-wet',
    position: 'interstage-coupling',
    marked: 1e-4,
    volt: 10,
    evidence: { loss120hz: 0.3 },
    advice: 'test',
  },
  {
    what: 'a loss of 22 % is too much at 100 V',
    type: 'al-electrolytic-wet',
    position: 'interstage-coupling',
    marked: 1e-5,
    volt: 100,
    evidence: { loss120hz: 0.22 },
    advice: 'replace',
  },
  {
    what: 'a loss of 12 % clears no part of 100 V, of which a new one may have 8 %',
    type: 'al-electrolytic-wet',
    position: 'interstage-coupling',
    marked: 1e-5,
    volt: 100,
    evidence: { loss120hz: 0.12 },
    advice: 'test',
  },
  {
    what: 'a loss of 12 % clears one of 16 V, of which a new one may have 16 %',
    type: 'al-electrolytic-wet',
    position: 'interstage-coupling',
    marked: 1e-5,
    volt: 16,
    evidence: { loss120hz: 0.12 },
    advice: 'leave',
  },
  {
    what: 'a bulged vent condemns a part that reads well',
    type: 'al-electrolytic-wet',
    position: 'interstage-coupling',
    marked: 1e-4,
    evidence: { capacitance: 1e-4, esr: 0.2, leakage: 1e-6, signs: ['wet-signs'] },
    advice: 'replace',
  },
  {
    what: 'a sign of another type has no effect',
    type: 'pet-metallized',
    position: 'tone-stack',
    marked: 1e-7,
    evidence: { signs: ['wet-signs', 'no-such-rule'] },
    advice: 'leave',
  },
  {
    what: 'loss of 3 % at 120 Hz and 0.5 % at 1 kHz is leakage',
    type: 'pet-metallized',
    position: 'tone-stack',
    marked: 1e-7,
    evidence: { loss120hz: 0.03, loss1khz: 0.005 },
    advice: 'test',
  },
  {
    what: 'a bead that leaks ten times its limit goes, even in a timer',
    type: 'ta-mno2-solid',
    position: 'one-shot-timing',
    marked: 1e-6,
    evidence: { leakage: 5e-6 },
    advice: 'replace',
  },
];

describe('judgeFirst', () => {
  it.each([...cases, ...readings])(
    '$what',
    ({ type, position, marked, volt = 25, evidence, advice }) => {
      const part = { type, capacitance: marked, ratedVoltage: volt };
      const judgement = judgeFirst(catalogue, part, position, evidence);
      expect(judgement.advice).toBe(advice);
      expect(judgement.reasons[0]?.advice).toBe(advice);
    },
  );

  it('has a standing rule for every type, in whatever position', () => {
    for (const type of Object.keys(catalogue.types)) {
      const { reasons } = judgeFirst(catalogue, partOf(type), 'meter-damping', {});
      expect(reasons.length, type).toBeGreaterThan(0);
    }
  });

  it('shows the reading against the limit', () => {
    const { reasons } = judgeFirst(catalogue, partOf('pet-metallized'), 'tone-stack', {
      loss1khz: 0.02,
    });
    expect(reasons[0]?.working).toMatch(/2.%.*1\.5.%/u);
  });

  // A new part of 100 µF 25 V: 0.32 Ω at the worst, 1.38 Ω by the standard, 0.01·C·V is 25 µA.
  it.each<[Evidence, string[]]>([
    [
      { esr: 3 },
      [
        '3 Ω, 9.38 × the 0.32 Ω of a new one; at least 2 ×',
        '3 Ω, 2.14 × the 1.4 Ω of a new one; at least 1 ×',
      ],
    ],
    [
      { leakage: 1e-3 },
      [2, 1].map((times) => `1 mA, 40 × the 25 µA of a new one; at least ${String(times)} ×`),
    ],
    [{ idle: 3 * YEAR }, ['3 years; at least 2 years']],
    [{ signs: ['wet-smell'] }, ['Seen: smell of fish or ammonia']],
  ])('sets readings of a wet part against a new one: %o', (evidence, workings) => {
    const { reasons } = judgeFirst(catalogue, wet, 'bulk-rail', evidence);
    const plain = reasons.map(({ working }) => working.replaceAll('\u00a0', ' '));
    expect(plain.slice(0, -1)).toEqual(workings);
    expect(plain.at(-1)).toBe('');
  });

  it.each<[string, Evidence, boolean]>([
    ['that lay for three years', { idle: 3 * YEAR }, true],
    ['that lay for three years, whose leakage was read', { idle: 3 * YEAR, leakage: 1e-6 }, false],
    ['that lay for a year', { idle: YEAR }, false],
    ['that was in use', {}, false],
  ])('has a wet part re-formed %s: %o', (_what, evidence, reformed) => {
    const { reforming } = judgeFirst(catalogue, wet, 'bulk-rail', evidence);
    expect(reforming !== undefined).toBe(reformed);
  });

  it('tests what no rule speaks of', () => {
    const without = { ...catalogue, triage: [] };
    expect(judgeFirst(without, wet, 'bulk-rail', {})).toEqual({ advice: 'test', reasons: [] });
  });

  it('names the signs to look for, of the type alone', () => {
    const ids = (type: string): string[] =>
      signsOf(catalogue, type, 'bulk-rail').map(({ id }) => id);
    expect(ids('al-electrolytic-wet')).toEqual(['wet-signs', 'wet-smell']);
    expect(signsOf(catalogue, 'paper-wax', 'bulk-rail')).toEqual([
      { id: 'paper-signs', sign: 'melted or dark wax, bubbles, a crack or a loose lead' },
    ]);
  });

  it('never takes a worse reading for a better part', () => {
    const gravity = { leave: 0, test: 1, replace: 2 };
    fc.assert(
      fc.property(
        fc.constantFrom(...Object.keys(catalogue.types)),
        fc.double({ min: 0.0001, max: 0.5, noNaN: true }),
        fc.double({ min: 1, max: 20, noNaN: true }),
        (type, loss, factor) => {
          const judged = (loss1khz: number): number =>
            gravity[judgeFirst(catalogue, partOf(type), 'tone-stack', { loss1khz }).advice];
          expect(judged(loss * factor) >= judged(loss)).toBe(true);
        },
      ),
    );
  });
});
