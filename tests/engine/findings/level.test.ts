import { describe, expect, test } from 'vitest';
import { assess, findStandIns, type Assessment, type Finding } from '../../../src/engine/index.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';
import { catalogue, circumstancesOf, given } from '../assessment/setting.ts';

/** A tweeter of 8 Ω behind a part of 6.8 µF. */
const request = (type: string, conditions: Record<string, number> = {}) => ({
  original: { type, capacitance: exactly(6.8e-6), ratedVoltage: exactly(50) },
  position: 'speaker-crossover',
  conditions: given(conditions),
});

const levelOf = ({ findings }: Assessment): Finding => {
  const found = findings.find(({ finding }) => finding === 'level-shift');
  if (found === undefined) throw new Error('no level');
  return found;
};

/** The best of a type, as it is offered. */
const offered = (old: string, type: string, conditions?: Record<string, number>): Assessment => {
  const found = findStandIns(catalogue, request(old, conditions)).find(
    ({ candidate }) => candidate.type === type,
  );
  if (found === undefined) throw new Error(`${type} is not offered`);
  return found;
};

/** A single film part of the old value. */
const film = (old: string, conditions?: Record<string, number>): Assessment =>
  assess(catalogue, request(old, conditions), {
    type: 'pet-metallized',
    capacitance: 6.8e-6,
    ratedVoltage: 63,
    tolerance: { minus: 0.05, plus: 0.05 },
  });

const BIPOLAR = 'al-electrolytic-bipolar';

describe('the level at a driver', () => {
  test('rises where a film takes the place of an electrolytic with some resistance', () => {
    const { standIn, working, verdict } = levelOf(film(BIPOLAR, { 'esr-old': 1.5 }));
    expect(standIn?.typ).toBeGreaterThan(1);
    expect(working).toMatch(/louder$/);
    expect(verdict).toBe('fits-if');
  });

  test('stays where the old part was a film or the old resistance is small', () => {
    expect(levelOf(film('pet-metallized')).verdict).toBe('fits');
    expect(levelOf(film('paper-oil')).verdict).toBe('fits');
    expect(levelOf(film(BIPOLAR, { 'esr-old': 0.3 })).verdict).toBe('fits');
  });

  test('counts twice as much with half the load', () => {
    const [eight, four] = [8, 4].map(
      (load) => levelOf(film(BIPOLAR, { 'esr-old': 1.5, load })).standIn,
    );
    expect((four?.typ ?? 0) / (eight?.typ ?? 1)).toBeGreaterThan(1.7);
  });

  test('falls where the new part has more resistance than the old one, and says so', () => {
    const softer = levelOf(
      assess(catalogue, request('pet-metallized'), { type: BIPOLAR, capacitance: 6.8e-6 }),
    );
    expect(softer.working).toMatch(/softer$/);
  });

  test.each([
    ['the usual resistance', 6.8e-6, {}],
    ['more than a crossover part is taken to bring', 2.7e-6, {}],
    ['what the visitor measured', 6.8e-6, { 'esr-old': 0.4 }],
  ])('of a part like the old one is unchanged, with %s', (_what, capacitance, conditions) => {
    const asked = request(BIPOLAR, conditions);
    const original = { ...asked.original, capacitance: exactly(capacitance) };
    const like = assess(
      catalogue,
      { ...asked, original },
      { type: BIPOLAR, capacitance, ratedVoltage: 50 },
    );
    expect(levelOf(like).standIn?.typ).toBeCloseTo(0, 6);
    expect(levelOf(like).working).toMatch(/usually none$/);
  });
});

describe('the resistance of the old part', () => {
  test('is that of a new part of its type and value, unless the visitor measured it', () => {
    const of = (type: string): number =>
      circumstancesOf(request(type)).conditions['esr-old']?.typ ?? NaN;
    // No more than an ohm of a small one, whose loss below the crossover is in the oxide.
    const small = { ...request(BIPOLAR), original: { type: BIPOLAR, capacitance: exactly(1e-6) } };
    expect(of(BIPOLAR)).toBeGreaterThan(0.3);
    expect(of(BIPOLAR)).toBeLessThan(2);
    expect(of('pp-metallized')).toBeLessThan(0.05);
    expect(circumstancesOf(small).conditions['esr-old']?.typ).toBe(1);
    expect(circumstancesOf(request(BIPOLAR, { 'esr-old': 0.7 })).conditions['esr-old']).toEqual(
      exactly(0.7),
    );
  });
});

describe('a film with a resistor', () => {
  test('is offered for an old electrolytic, with the preferred value nearest to what is missing', () => {
    const { candidate, verdict } = offered(BIPOLAR, 'pet-metallized', { 'esr-old': 1.5 });
    expect(candidate.made?.kind).toBe('with-resistor');
    expect(candidate.made?.resistor).toBe(1.5);
    expect(verdict).toBe('fits');
  });

  test('names the power that the resistor must be rated for, with as much in hand again', () => {
    const { candidate } = offered(BIPOLAR, 'pet-metallized', {
      'esr-old': 1.5,
      signal: 8,
      load: 8,
    });
    expect(candidate.made?.power).toBe(3);
    expect(candidate.made?.why.replaceAll(/\s/gu, ' ')).toMatch(
      /; up to 1 A through it makes 1\.5 W, so one for 3 W$/,
    );
  });

  test('is offered for less than a better verdict, where the body keeps that of the film', () => {
    const { candidate, verdict, worst } = offered(BIPOLAR, 'pp-metallized', { 'esr-old': 1.5 });
    expect([verdict, worst]).toEqual(['fits-if', 'speaker-crossover-body']);
    expect(candidate.made?.kind).toBe('with-resistor');
  });

  test('is not offered where the old part was a film', () => {
    expect(offered('pet-metallized', 'pet-metallized').candidate.made).toBeUndefined();
  });
});
