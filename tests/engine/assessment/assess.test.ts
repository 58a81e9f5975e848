import { describe, expect, test } from 'vitest';
import type { Assessment } from '../../../src/engine/assessment/assess.ts';
import type { Candidate, Request } from '../../../src/engine/assessment/parts.ts';
import { assess, findStandIns, verdictOrder } from '../../../src/engine/index.ts';
import { exactly, type Range } from '../../../src/engine/quantities/range.ts';
import { catalogue, given, known, knowing, notKnown } from './setting.ts';
import { findingOf } from './finding-of.ts';

const hold: Request = {
  original: {
    type: 'pet-metallized',
    capacitance: exactly(10e-9),
    ratedVoltage: exactly(100),
  },
  position: 'sample-hold',
};

describe('a candidate', () => {
  test('of which only the type is said is the part that the market offers', () => {
    const offered = findStandIns(catalogue, hold).find(
      ({ candidate }) => candidate.type === 'pp-metallized',
    );
    expect(assess(catalogue, hold, { type: 'pp-metallized' })).toEqual(offered);
    expect(offered?.buy?.series).toMatch(/^E\d+$/u);
  });

  test.each<Omit<Candidate, 'type'>>([
    { capacitance: 12e-9 },
    { tolerance: { minus: 0.2, plus: 0.2 } },
    { ratedVoltage: 47 },
    { voltageKind: 'ac' },
  ])('keeps what is said of it: %j', (said) => {
    const best = assess(catalogue, hold, { type: 'pp-metallized' });
    const other = assess(catalogue, hold, { type: 'pp-metallized', ...said });
    expect(other.candidate).toEqual({ ...best.candidate, ...said });
    expect(other.buy).toBeUndefined();
  });

  test('said as the market offers it can be ordered', () => {
    const best = assess(catalogue, hold, { type: 'pp-metallized' });
    expect(assess(catalogue, hold, best.candidate)).toEqual(best);
  });

  test('that nobody makes is kept out as not to be had', () => {
    const odd = assess(catalogue, hold, { type: 'pp-metallized', ratedVoltage: 47 });
    expect(odd.verdict).toBe('keep-out');
    expect(odd.worst).toBe('sample-hold-availability');
  });

  test('of a type out of production is assessed all the same', () => {
    const old = assess(catalogue, hold, { type: 'pc-metallized' });
    expect(findingOf(old, 'availability').verdict).toBe('keep-out');
    expect(findingOf(old, 'absorption').standIn).toBeDefined();
  });

  test.each(['unobtainium', 'toString', ''])('of type %j is refused', (type) => {
    expect(() => assess(catalogue, hold, { type })).toThrow(RangeError);
  });

  test('in no position is refused', () => {
    const nowhere = { ...hold, position: 'nowhere' };
    expect(() => findStandIns(catalogue, nowhere)).toThrow(RangeError);
    expect(() => assess(catalogue, nowhere, { type: 'pp-metallized' })).toThrow(RangeError);
  });
});

/** Whether a demand on the rating lets 275 V AC stand where there is so much steady voltage. */
test.each([
  [370, 'fits'],
  [400, 'keep-out'],
  [3000, 'keep-out'],
])('a part rated for 275 V AC at %d V of steady voltage: %s', (volts, verdict) => {
  const coupling = {
    original: { type: 'paper-wax', ratedVoltage: exactly(2 * volts) },
    position: 'interstage-coupling',
    conditions: given({ vdc: volts, vac: 0, 'v-surge': volts }),
  };
  const asked = assess(catalogue, coupling, { type: 'film-x2', ratedVoltage: 275 });
  expect(findingOf(asked, 'rated-voltage').verdict).toBe(verdict);
});

describe('a property without data', () => {
  const withoutFigure = knowing(catalogue, 'pp-metallized', { 'dielectric-absorption': notKnown });
  const unknown = assess(withoutFigure, hold, { type: 'pp-metallized' });

  test('makes the finding not known', () => {
    const finding = findingOf(unknown, 'absorption');
    expect(finding).toMatchObject({
      missing: ['dielectric-absorption'],
      margin: 0,
      verdict: 'fits-if',
      working: 'not known',
      sure: 'possible',
    });
    expect(finding.standIn).toBeUndefined();
  });

  test('leaves the part at best "fits if"', () => {
    expect(assess(catalogue, hold, { type: 'pp-metallized' }).verdict).toBe('fits');
    expect(unknown.verdict).toBe('fits-if');
    expect(unknown.worst).toBe('sample-hold-absorption');
  });

  test('is no excuse for what is known to be wrong', () => {
    const worse = knowing(catalogue, 'ta-mno2-solid', { 'dielectric-absorption': notKnown });
    expect(assess(worse, hold, { type: 'ta-mno2-solid' }).verdict).toBe('keep-out');
  });

  test.each(['hard', 'strong', 'mild'] as const)('for a %s demand is never "fits"', (weight) => {
    const demands = withoutFigure.demands.map((demand) =>
      demand.id === 'sample-hold-absorption' ? { ...demand, weight } : demand,
    );
    const assessment = assess({ ...withoutFigure, demands }, hold, { type: 'pp-metallized' });
    expect(findingOf(assessment, 'absorption').verdict).toBe('fits-if');
  });
});

describe('an old part of unknown class', () => {
  const discOf = (type: string): Request => ({
    original: {
      type,
      capacitance: exactly(10e-9),
      tolerance: { minus: 0.2, plus: 0.2 },
      ratedVoltage: exactly(50),
    },
    position: 'interstage-coupling',
  });
  const request = discOf('ceramic-disc-unknown');
  const members = catalogue.types['ceramic-disc-unknown']?.union_of ?? [];

  test('is as wide as all that it can be', () => {
    expect(members.length).toBeGreaterThan(3);
    const cornerOf = (type: string): Range => {
      const assessment = assess(catalogue, discOf(type), { type: 'pp-metallized' });
      const { original } = findingOf(assessment, 'corner');
      if (original === undefined) throw new Error('corner not known');
      return original;
    };
    const whole = cornerOf('ceramic-disc-unknown');
    for (const type of members) {
      const one = cornerOf(type);
      expect(one.min, type).toBeGreaterThanOrEqual(whole.min * 0.999);
      expect(one.max, type).toBeLessThanOrEqual(whole.max * 1.001);
    }
    expect(whole.max).toBeGreaterThan(2 * whole.min);
  });

  test('is never offered', () => {
    const offered = findStandIns(catalogue, request).map(({ candidate }) => candidate.type);
    expect(offered).not.toContain('ceramic-disc-unknown');
    expect(offered).toContain('pp-metallized');
  });

  test('finds the same stand-ins as the discs that it can be', () => {
    const best = findStandIns(catalogue, request)
      .filter(({ verdict }) => verdict === 'fits')
      .map(({ candidate }) => candidate.type);
    expect(best).toEqual(expect.arrayContaining(['ceramic-c0g', 'pp-metallized']));
    expect(best).not.toContain('ceramic-z5u');
  });
});

describe('the list of stand-ins', () => {
  const all = findStandIns(catalogue, hold);

  test('is the same every time', () => {
    expect(findStandIns(catalogue, hold)).toEqual(all);
  });

  test('holds every type on the market once, and parts for the mains only at the mains', () => {
    const types = all.map(({ candidate }) => candidate.type);
    expect(new Set(types).size).toBe(types.length);
    const onMarket = Object.values(catalogue.types).filter(
      ({ market, safety_classes: classes }) =>
        ['common', 'current', 'niche'].includes(market) && classes.length === 0,
    );
    expect(types.toSorted()).toEqual(onMarket.map(({ id }) => id).toSorted());
    const atMains = findStandIns(catalogue, {
      original: { type: 'paper-x-safety' },
      position: 'mains-x',
    }).map(({ candidate }) => candidate.type);
    expect(atMains).toEqual(expect.arrayContaining(['film-x2', 'ceramic-y-safety']));
  });

  test('goes from the best verdict to the worst', () => {
    const places = all.map(({ verdict }) => verdictOrder.indexOf(verdict));
    expect(places).toEqual(places.toSorted((a, b) => a - b));
  });

  test('gives each part a finding for every demand, and the worst of their verdicts', () => {
    const demands = catalogue.demands.filter(({ position }) => position === hold.position);
    for (const { findings, verdict, worst } of all) {
      expect(findings.map(({ demand }) => demand).toSorted()).toEqual(
        demands.map(({ id }) => id).toSorted(),
      );
      const worstPlace = Math.max(...findings.map((one) => verdictOrder.indexOf(one.verdict)));
      expect(verdictOrder[worstPlace]).toBe(verdict);
      expect(findings.find(({ demand }) => demand === worst)?.verdict).toBe(verdict);
    }
  });

  test('leads each part with the finding of most concern', () => {
    for (const { findings, verdict } of all) expect(findings[0]?.verdict).toBe(verdict);
  });
});

describe('the chosen rating and tolerance', () => {
  test('are not the lowest and the usual where others fall less short', () => {
    const request: Request = {
      original: { type: 'al-electrolytic-bipolar', capacitance: exactly(6.8e-6) },
      position: 'speaker-crossover',
    };
    const lossy = knowing(catalogue, 'al-electrolytic-bipolar', {
      'dissipation-factor-1khz': known(0.5),
    });
    const { candidate, verdict } = assess(lossy, request, { type: 'al-electrolytic-bipolar' });
    expect(verdict).toBe('fits-if');
    expect(candidate.tolerance.plus).toBeCloseTo(0.1, 9);
  });

  test('do not go further than it takes', () => {
    const { candidate } = assess(catalogue, hold, { type: 'pp-metallized' });
    const ratings = catalogue.offers
      .filter(
        ({ type, c_min: low, c_max: high }) =>
          type === 'pp-metallized' && low <= 10e-9 && high >= 10e-9,
      )
      .flatMap(({ voltages }) => voltages);
    expect(candidate.ratedVoltage).toBe(Math.min(...ratings));
  });
});

describe('a derating guideline', () => {
  test('changes the margin of the voltage, not the rating itself', () => {
    const request: Request = {
      original: {
        type: 'ta-mno2-solid',
        capacitance: exactly(10e-6),
        ratedVoltage: exactly(25),
      },
      position: 'bulk-rail',
      conditions: given({ vdc: 15 }),
    };
    const part: Candidate = { type: 'ta-mno2-solid', capacitance: 10e-6, ratedVoltage: 25 };
    const usual = assess(catalogue, request, part);
    const strict = assess(catalogue, { ...request, guideline: 'solid-electrolyte-advice' }, part);
    const lax = assess(catalogue, { ...request, guideline: 'maker' }, part);
    const share = (assessment: Assessment): number =>
      findingOf(assessment, 'voltage-margin').standIn?.typ ?? NaN;
    expect(share(strict)).toBeCloseTo(15.5 / 12.5, 1);
    expect(share(lax)).toBeLessThan(share(usual));
    expect(findingOf(strict, 'rated-voltage')).toEqual(findingOf(lax, 'rated-voltage'));
  });
});
