import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { kindModels } from '../../../src/engine/kinds/findings/index.ts';
import type { KindCircumstances, KindPart } from '../../../src/engine/kinds/part.ts';
import type { Range } from '../../../src/engine/quantities/range.ts';

/**
 * What each finding comes to for a made-up type whose figures are round numbers, worked by hand by
 * the equations that stand in the comments.
 */

const real = loadCatalogue();

const range = (min: number, typ: number, max: number): Range => ({ min, typ, max });
const known = (min: number, typ = min, max = typ) => ({
  status: 'known' as const,
  range: range(min, typ, max),
  basis: 'published' as const,
  sources: [],
});

const figures = {
  'full-power-to': known(70),
  'no-power-from': known(170),
  'voltage-limit': known(200, 250, 300),
  'surge-weak': known(0, 0.5, 1),
  'resistance-tc': known(-1e-4, 5e-5, 1e-4),
  'voltage-change': known(-2e-5, -1e-5, 0),
  'full-load-change': known(0.01, 0.02, 0.05),
  'noise-index': known(-20, -10, 0),
  'winding-inductance': known(1e-6, 2e-6, 4e-6),
  turns: known(10),
  'adjust-rheostat': known(0.001, 0.002, 0.003),
  'adjust-divider': known(0.0005, 0.001, 0.002),
  'end-share': known(0.01, 0.02, 0.03),
  'end-ohm': known(1, 2, 3),
  'ratio-tc': known(-1e-5, 5e-6, 1e-5),
  'setting-stability': known(0.001, 0.002, 0.01),
  'contact-share': known(0.01, 0.02, 0.03),
  'contact-ohm': known(1, 2, 3),
  'rotation-life': known(1e4, 2e4, 5e4),
};

const [trimmerPlace] = Object.values(real.kindPositions).filter((row) => row.wiring === 'rheostat');
const [typeRow] = Object.values(real.kindTypes);
const [offer] = real.kindOffers;
const kind = real.kinds['resistor'];
if (!trimmerPlace || !typeRow || !offer || !kind) throw new Error('no rows to start from');

const made = { ...typeRow, id: 'made-up', market: 'common' as const, duties: ['flameproof'] };
const catalogue = {
  ...real,
  bands: {},
  knowledge: { 'made-up': figures },
  kindTypes: { 'made-up': made, old: { ...made, id: 'old', duties: [] } },
  kindOffers: [
    { ...offer, type: 'made-up', value_min: 10, value_max: 1e6, ratings: [0.25, 0.5] },
    { ...offer, type: 'old', value_min: 10, value_max: 1e6, ratings: [], pitch_mm: [5] },
  ].map((row, at) => ({ ...row, pitch_mm: at === 0 ? [2.5, 5] : row.pitch_mm })),
};

const CONDITIONS = {
  vdc: range(20, 30, 30),
  vac: range(0, 0, 40),
  't-min': range(0, 10, 10),
  't-max': range(40, 60, 120),
  'v-surge': range(100, 100, 100),
  sensitivity: range(0.1, 0.2, 0.5),
  frequency: range(20, 20, 20),
  'f-work': range(20e3, 20e3, 1e6),
  'old-setting': range(2000, 2000, 2000),
  'old-total': range(8000, 8000, 8000),
  'wiper-current': range(0, 0.001, 0.002),
  rotations: range(0, 1000, 2000),
};

const circumstances = (changed: Partial<KindCircumstances> = {}): KindCircumstances => ({
  catalogue,
  kind,
  position: { ...trimmerPlace, wiring: 'rheostat', duties: [] },
  conditions: CONDITIONS,
  original: {
    type: 'old',
    value: 8000,
    unit: 'ohm',
    rating: 0.25,
    ratingUnit: 'W',
    tolerance: { minus: 0.2, plus: 0.2 },
  },
  ...changed,
});
const divider = circumstances({ position: { ...trimmerPlace, wiring: 'divider', duties: [] } });

const part: KindPart = {
  type: 'made-up',
  value: 10e3,
  unit: 'ohm',
  rating: 0.5,
  ratingUnit: 'W',
  tolerance: { minus: 0.1, plus: 0.2 },
};

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
    ['rating-kept', [2, 2, 2]],
    // U²/R over what is left; most power in the least resistance.
    ['resistor-power', [HEAT / 12e3 / WATT, HEAT / 10e3 / WATT, HEAT / 9e3 / WATT]],
    // √(P·R) is 67 to 77 V, below every limit of the body.
    ['resistor-voltage', [50 / Math.sqrt(6000), 50 / Math.sqrt(5000), 50 / Math.sqrt(4500)]],
    // 2.5 times the rated voltage.
    ['overload-voltage', [40 / Math.sqrt(6000), 40 / Math.sqrt(5000), 40 / Math.sqrt(4500)]],
    ['surge-duty', [1, 1, 1]],
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

  it('takes the limit of the body where power alone would allow more', () => {
    const large = { ...part, value: 1e6, tolerance: { minus: 0, plus: 0 } };
    expect(measure('resistor-voltage', large)).toMatchObject({
      min: expect.closeTo(50 / 300, 9) as number,
      typ: expect.closeTo(50 / 250, 9) as number,
      max: expect.closeTo(50 / 200, 9) as number,
    });
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

  it('knows no more than what is known of the type', () => {
    const unknown = { ...part, type: 'old' };
    expect(measure('surge-duty', unknown)).toEqual({ status: 'unknown', missing: ['surge-weak'] });
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
    circumstances({ position: { ...trimmerPlace, duties } as KindCircumstances['position'] });
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
    [['flameproof'], 'made flameproof is wanted, and this type is flameproof'],
    [
      ['fusible', 'flameproof'],
      'made fusible and flameproof is wanted, and this type is flameproof',
    ],
  ])('%o in words', (duties, words) => {
    const value = range(0, 0, 0);
    expect(kindModels['duty']?.working(part, asking(duties), value)).toBe(words);
  });

  it('says that a type is made for none', () => {
    const value = range(1, 1, 1);
    const old = { ...part, type: 'old' };
    expect(kindModels['duty']?.working(old, asking(['fusible']), value)).toBe(
      'made fusible is wanted, and this type is neither',
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
      sources: [offer.source],
      bases: [offer.basis],
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
    const far = { ...offer, type: 'far', pitch_mm: [7.5] };
    const at = circumstances({
      catalogue: { ...catalogue, kindOffers: [...catalogue.kindOffers, far] },
    });
    expect(measure('pin-pattern', { ...part, type }, at)).toMatchObject({ typ });
    const said = kindModels['pin-pattern']?.working({ ...part, type }, at, range(typ, typ, typ));
    if (words === undefined) expect(said).toMatch(/^pins 7\.5 mm apart, those of the old one 5 mm/);
    else expect(said).toBe(words);
  });
});

describe('a working', () => {
  // The numbers in it are those of the part and the circuit above; each was worked out by hand.
  it.each([
    [
      'end-resistance',
      'rheostat',
      'at the stop up to 200 Ω are left (2 % or 2 Ω, whichever is greater); 2 kΩ are wanted',
    ],
    [
      'end-resistance',
      'divider',
      'at the stop up to 200 Ω are left (2 % or 2 Ω, whichever is greater); 2.5 kΩ are wanted',
    ],
    [
      'gain-shift',
      'rheostat',
      '50 % of (mark off by 25 %, tolerance 20 %, drift up to 1.2 %): up to 23.1 %',
    ],
    ['marked-value', 'rheostat', '10 kΩ / 8 kΩ = 1.25 ×'],
    [
      'overload-voltage',
      'rheostat',
      'for a few seconds 177 V, 2.5 times the rated voltage but at most twice the limit; 100 V is 56.6 % of that',
    ],
    [
      'part-noise',
      'rheostat',
      'thermal 2.08 µV; by 30 V at −20 to 0 dB 16.4 µV from 20 Hz to 20 kHz: together 16.6 µV',
    ],
    ['rating-kept', 'rheostat', '500 mW / 250 mW = 2 ×'],
    ['resistance-drift', 'rheostat', '−100 to 100 ppm/K over 120 K: 0–1.2 %'],
    ['resistor-power', 'rheostat', '50 V on 10 kΩ is 250 mW; 500 mW × 50 % at 120 °C: 100 % of it'],
    ['resistor-voltage', 'rheostat', 'its power alone allows 70.7 V; 50 V is 70.7 % of that'],
    ['rotation-share', 'rheostat', '2000 of 10 000–50 000 turns: 4–20 %'],
    ['self-inductance', 'rheostat', '1–4 µH at 1 MHz is 0.126 % of 10 kΩ'],
    [
      'setting-drift',
      'divider',
      'three terminals, so only the slope of the ratio counts: −10 to 10 ppm/K over 120 K, 0–0.12 %',
    ],
    [
      'setting-drift',
      'rheostat',
      'two terminals, so the whole slope counts: −100 to 100 ppm/K over 120 K, 0–1.2 %',
    ],
    ['setting-reach', 'rheostat', '2 kΩ of 9–12 kΩ: 16.7–22.2 %'],
    ['setting-reach', 'divider', '2.25–3 kΩ of 9–12 kΩ: 25 %'],
    [
      'setting-transfer',
      'rheostat',
      'old one reads 2 kΩ of 8 kΩ; set the same 2 kΩ between the same two terminals: 2 of 10 turns from that end, 1 kΩ a turn; it can be set to 0.2 % of its total, 1 % of the setting',
    ],
    [
      'setting-transfer',
      'divider',
      'old one reads 2 kΩ of 8 kΩ; set the same ratio, 25 % of its own total (2.25–3 kΩ): 2.5 of 10 turns from that end, 1 kΩ a turn; it can be set to 0.1 % of its total, 0.4 % of the setting',
    ],
    ['voltage-shift', 'rheostat', '−0.002 to 0 % for each volt, 50 V across it: −0.1 to 0 %'],
    [
      'wiper-load',
      'rheostat',
      '2 mA of 5 mA, which 500 mW in the whole 10 kΩ allow at any setting when warm: 40 %',
    ],
    ['wiper-noise', 'rheostat', 'up to 300 Ω at the wiper of 2 kΩ: up to 15 %'],
    ['wiper-noise', 'divider', 'up to 300 Ω at the wiper of 2.5 kΩ: up to 12 %'],
  ] as const)('%s of a %s is said with its numbers', (id, wiring, words) => {
    const at = wiring === 'divider' ? divider : circumstances();
    const model = kindModels[id];
    const outcome = model?.measure(part, at);
    if (outcome?.status !== 'known') throw new Error(`${id} is not known`);
    expect(model?.working(part, at, outcome.value).replaceAll('\u00a0', ' ')).toBe(words);
  });

  it.each([
    [0, 'the whole body or the wire takes the heat of a surge'],
    [0.5, 'takes moderate surges only: see the pulse curve of its sheet'],
    [1, 'the thin element burns open at a surge that a solid one takes'],
  ])('of a surge, %f: %s', (typ, words) => {
    const value = range(typ, typ, typ);
    expect(kindModels['surge-duty']?.working(part, circumstances(), value)).toBe(words);
  });

  it('says where the body decides over the power', () => {
    const large = { ...part, value: 1e6, tolerance: { minus: 0, plus: 0 } };
    const value = range(0.2, 0.2, 0.2);
    expect(
      kindModels['resistor-voltage']
        ?.working(large, circumstances(), value)
        .replaceAll('\u00a0', ' '),
    ).toBe('its body stands 250 V, whatever its power; 50 V is 20 % of that');
  });

  it('says that a number is none where the part has none', () => {
    const bare = { type: 'made-up', value: 10e3, unit: 'ohm' as const };
    const value = range(1, 1, 1);
    expect(
      kindModels['rating-kept']?.working(bare, circumstances(), value).replaceAll('\u00a0', ' '),
    ).toBe('none / 250 mW = 1 ×');
  });
});
