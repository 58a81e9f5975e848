import { describe, expect, it } from 'vitest';
import { kindModels } from '../../../src/engine/kinds/findings/index.ts';
import type { KindCircumstances, KindPart } from '../../../src/engine/kinds/part.ts';
import {
  anOffer,
  catalogue,
  circumstances,
  CONDITIONS,
  divider,
  made,
  part,
  place,
  range,
} from './made-up.ts';

/**
 * What each finding comes to for the made-up type, worked by hand by the equations that stand in the
 * comments.
 */

const measure = (id: string, of: KindPart = part, at: KindCircumstances = circumstances()) => {
  const model = kindModels[id];
  if (model === undefined) throw new Error(`no model ${id}`);
  const outcome = model.measure(of, at);
  return outcome.status === 'known' ? { ...outcome, ...outcome.value } : outcome;
};

// The power left at 120 °C of 70 to 170 °C is half of 0.5 W; 30 V and 40 V together heat as 50 V.
const WATT = 0.25;
const HEAT = 50 ** 2;

describe('findings about resistors', () => {
  it.each([
    ['marked-value', [1.25, 1.25, 1.25]],
    ['part-tolerance', [0.2, 0.2, 0.2]],
    // The worse sides of both are 20 %.
    ['tolerance-kept', [1, 1, 1]],
    ['rating-kept', [2, 2, 2]],
    // U²/R over what is left; most power in the least resistance.
    ['resistor-power', [HEAT / 12e3 / WATT, HEAT / 10e3 / WATT, HEAT / 9e3 / WATT]],
    // √(P·R) is 67 to 77 V, below every limit of the body.
    ['resistor-voltage', [50 / Math.sqrt(6000), 50 / Math.sqrt(5000), 50 / Math.sqrt(4500)]],
    // 2.5 times the rated voltage.
    ['overload-voltage', [40 / Math.sqrt(6000), 40 / Math.sqrt(5000), 40 / Math.sqrt(4500)]],
    ['surge-duty', [1, 1, 1]],
    // 100 V heats 9 to 12 kΩ of half a watt beyond it, so that it shows how its body burns.
    ['flammability', [0, 0.5, 1]],
    // 120 K.
    ['resistance-drift', [0, 0.006, 0.012]],
    ['voltage-shift', [-1e-3, -5e-4, 0]],
    ['life-drift', [0.01, 0.02, 0.05]],
    // Half of (25 % off the mark, less or more 20 % of tolerance, and the drift).
    ['gain-shift', [0.5 * 0.05, 0.5 * (0.25 + 0.1 + 0.006), 0.5 * (0.25 + 0.2 + 0.012)]],
    // 2πfL/R at 1 MHz.
    ['self-inductance', [(2 * Math.PI) / 12e3, (4 * Math.PI) / 10e3, (8 * Math.PI) / 9e3]],
  ] as const)('%s comes to %o', (id, [min, typ, max]) => {
    const found = measure(id);
    expect(found).toMatchObject({
      min: expect.closeTo(min, 9) as number,
      typ: expect.closeTo(typ, 9) as number,
      max: expect.closeTo(max, 9) as number,
    });
  });

  it.each([
    // The worse side of the part over the worse one of the old part, 20 %.
    [{ minus: 0.05, plus: 0.05 }, 0.25],
    [{ minus: 0.4, plus: 0.1 }, 2],
    [undefined, undefined],
  ])('of a tolerance of %o is kept %s', (tolerance, ratio) => {
    const bare: KindPart = { type: 'made-up', value: 10e3, unit: 'ohm' };
    const of = tolerance === undefined ? bare : { ...bare, tolerance };
    const found = measure('tolerance-kept', of);
    if (ratio === undefined) expect(found.status).toBe('unknown');
    else expect(found).toMatchObject({ typ: expect.closeTo(ratio, 9) as number });
  });

  it('takes the limit of the body where power alone would allow more', () => {
    const large = { ...part, value: 1e6, tolerance: { minus: 0, plus: 0 } };
    expect(measure('resistor-voltage', large)).toMatchObject({
      min: expect.closeTo(50 / 300, 9) as number,
      typ: expect.closeTo(50 / 250, 9) as number,
      max: expect.closeTo(50 / 200, 9) as number,
    });
  });

  it.each([
    // 100 V on 12, 10 and 9 kΩ are 0.83, 1 and 1.11 W.
    [2, [0, 0, 0]],
    [1.05, [0, 0, 1]],
    [0.9, [0, 0.5, 1]],
    [0.5, [0, 0.5, 1]],
  ] as const)('nothing burns within a rating of %f W', (rating, [min, typ, max]) => {
    expect(measure('flammability', { ...part, rating })).toMatchObject({ min, typ, max });
  });

  it('does not know the heat of a fault without a rating', () => {
    const bare: KindPart = { type: 'made-up', value: 10e3, unit: 'ohm' };
    expect(measure('flammability', bare)).toMatchObject({ min: 0, typ: 0.5, max: 1 });
  });

  it('adds what direct voltage makes to the thermal noise', () => {
    // √(4kTRΔf) at 120 °C in 20 kHz, and a microvolt for each volt and decade at 0 dB.
    const thermal = 4 * 1.380649e-23 * 393.15 * 10e3 * (20e3 - 20);
    const excess = (decibel: number) => (10 ** (decibel / 20) * 1e-6 * 30) ** 2 * 3;
    expect(measure('part-noise')).toMatchObject({
      min: expect.closeTo(Math.sqrt(thermal + excess(-20)), 12) as number,
      typ: expect.closeTo(Math.sqrt(thermal + excess(-10)), 12) as number,
      max: expect.closeTo(Math.sqrt(thermal + excess(0)), 12) as number,
    });
  });

  it('hears the same band whichever way round its ends are given', () => {
    const { frequency, 'f-work': highest, ...others } = CONDITIONS;
    const turned = { ...others, frequency: highest, 'f-work': frequency };
    expect(measure('part-noise', part, circumstances({ conditions: turned }))).toEqual(
      measure('part-noise'),
    );
  });

  it('knows no more than what is known of the type', () => {
    const unknown = { ...part, type: 'old' };
    expect(measure('surge-duty', unknown)).toEqual({ status: 'unknown', missing: ['surge-weak'] });
    expect(measure('flammability', unknown)).toEqual({ status: 'unknown', missing: ['flame'] });
    expect(measure('resistor-power', unknown)).toEqual({
      status: 'unknown',
      missing: ['full-power-to', 'no-power-from'],
    });
    const unmarked = { type: 'made-up', value: 10e3 };
    expect(measure('part-tolerance', unmarked)).toEqual({ status: 'unknown', missing: [] });
  });

  it('says which figures it rests on', () => {
    expect(measure('resistor-power')).toMatchObject({
      properties: ['full-power-to', 'no-power-from'],
    });
    expect(measure('surge-duty')).toMatchObject({ properties: ['surge-weak'] });
  });
});

describe('a duty', () => {
  const asking = (duties: string[]) =>
    circumstances({ position: { ...place, duties } as KindCircumstances['position'] });
  it.each([
    [[], 'made-up', 0],
    [['flameproof'], 'made-up', 0],
    [['flameproof', 'fusible'], 'made-up', 1],
    [['flameproof'], 'old', 1],
    [['flameproof'], 'not-there', 1],
  ])('%o asked of %s: %d', (duties, type, typ) => {
    expect(measure('duty', { ...part, type }, asking(duties))).toMatchObject({ typ });
  });

  it.each([
    [[], 'no special duty here'],
    [['flameproof'], 'the place asks for a part that is flameproof; this type is flameproof'],
    [
      ['fusible', 'flameproof'],
      'the place asks for a part that is fusible and flameproof; this type is flameproof',
    ],
  ])('%o in words', (duties, words) => {
    const value = range(0, 0, 0);
    expect(kindModels['duty']?.working(part, asking(duties), value)).toBe(words);
  });

  it('says that a type is made for none', () => {
    const value = range(1, 1, 1);
    const old = { ...part, type: 'old' };
    expect(kindModels['duty']?.working(old, asking(['fusible']), value)).toBe(
      'the place asks for a part that is fusible; this type is not',
    );
  });
});

describe('whether it is made', () => {
  it.each([
    [10e3, 0.5, 0],
    [10, 0.25, 0],
    [1e6, 0.25, 0],
    [9.9, 0.25, 1],
    [1.01e6, 0.25, 1],
    [10e3, 1, 1],
    [10e3, undefined, 0],
    [undefined, 0.5, 0],
  ])('%s Ω of %s W: %d', (value, rating, typ) => {
    const one = {
      type: 'made-up',
      ...(value === undefined ? {} : { value }),
      ...(rating === undefined ? {} : { rating }),
    };
    expect(measure('availability', one)).toMatchObject({ typ });
  });

  it('takes any rating where an offer names none', () => {
    expect(measure('availability', { ...part, type: 'old', rating: 7 })).toMatchObject({ typ: 0 });
  });

  it('cites the offer', () => {
    expect(measure('availability')).toMatchObject({
      sources: [anOffer.source],
      bases: [anOffer.basis],
    });
  });

  it.each([
    ['common', 0, 'made and stocked everywhere'],
    ['current', 0, 'made and stocked'],
    ['niche', 0, 'made, but few stock it'],
    ['common', 1, 'not made in this value and rating'],
  ] as const)('%s, %d: %s', (market, typ, words) => {
    const at = circumstances({
      catalogue: { ...catalogue, kindTypes: { 'made-up': { ...made, market } } },
    });
    expect(kindModels['availability']?.working(part, at, range(typ, typ, typ))).toBe(words);
  });
});

describe('findings about trimmers', () => {
  it.each([
    // Two terminals: 2 kΩ stay 2 kΩ, a sixth to two ninths of the total.
    ['setting-reach', 'rheostat', [2 / 12, 0.2, 2 / 9]],
    ['setting-reach', 'divider', [0.25, 0.25, 0.25]],
    ['setting-transfer', 'rheostat', [0.001 / (2 / 9), 0.002 / 0.2, 0.003 / (2 / 12)]],
    ['setting-transfer', 'divider', [0.0005 / 0.25, 0.001 / 0.25, 0.002 / 0.25]],
    // The greater of a share of the total and some ohms, over the setting.
    ['end-resistance', 'rheostat', [0, 200 / 2000, 360 / 2000]],
    ['end-resistance', 'divider', [0, 200 / 2500, 360 / 2250]],
    ['setting-drift', 'rheostat', [0, 0.006, 0.012]],
    ['setting-drift', 'divider', [0, 0.0006, 0.0012]],
    ['setting-shift', 'rheostat', [0.001, 0.002, 0.01]],
    // 2 mA of √(P/R).
    [
      'wiper-load',
      'rheostat',
      [
        0.002 / Math.sqrt(WATT / 9e3),
        0.002 / Math.sqrt(WATT / 10e3),
        0.002 / Math.sqrt(WATT / 12e3),
      ],
    ],
    ['wiper-noise', 'rheostat', [0, 150 / 2000, 300 / 2000]],
    ['rotation-share', 'rheostat', [2000 / 5e4, 0.1, 0.2]],
  ] as const)('%s of a %s comes to %o', (id, wiring, [min, typ, max]) => {
    expect(measure(id, part, wiring === 'divider' ? divider : circumstances())).toMatchObject({
      min: expect.closeTo(min, 9) as number,
      typ: expect.closeTo(typ, 9) as number,
      max: expect.closeTo(max, 9) as number,
    });
  });

  it('counts ohms where a share of the total is less', () => {
    const small = { ...part, value: 50, tolerance: { minus: 0, plus: 0 } };
    const at = circumstances({
      conditions: {
        ...CONDITIONS,
        'old-setting': range(10, 10, 10),
        'old-total': range(50, 50, 50),
      },
    });
    expect(measure('end-resistance', small, at)).toMatchObject({ typ: 0.2, max: 0.3 });
    expect(measure('wiper-noise', small, at)).toMatchObject({ max: 0.3 });
  });

  it.each([
    ['made-up', 0, 'pins 2.5 or 5 mm apart as those of the old one: check which pin is the wiper'],
    ['far', 1, undefined],
  ])('pins of %s: %d', (type, typ, words) => {
    const far = { ...anOffer, type: 'far', pitch_mm: [7.5] };
    const at = circumstances({
      catalogue: { ...catalogue, kindOffers: [...catalogue.kindOffers, far] },
    });
    expect(measure('pin-pattern', { ...part, type }, at)).toMatchObject({ typ });
    const said = kindModels['pin-pattern']?.working({ ...part, type }, at, range(typ, typ, typ));
    if (words === undefined)
      expect(said).toMatch(/^pins 7\.5 mm apart, those of the old one 5 mm apart: bend/);
    else expect(said).toBe(words);
  });

  it.each([
    ['of the new one', { ...part, type: 'bare' }, part],
    ['of the old one', part, { ...part, type: 'bare' }],
  ])('does not know pins that no offer tells, %s', (_, own, original) => {
    const bare = { ...anOffer, type: 'bare', pitch_mm: [] };
    const at = circumstances({
      catalogue: { ...catalogue, kindOffers: [...catalogue.kindOffers, bare] },
      original,
    });
    const outcome = kindModels['pin-pattern']?.measure(own, at);
    expect(outcome).toEqual({ status: 'unknown', missing: ['lead-pitch'] });
    const said = kindModels['pin-pattern']?.working(own, at, range(1, 1, 1));
    expect(said).toContain('at an unknown distance');
    expect(said).not.toContain('pins mm');
  });
});
