import { describe, expect, it } from 'vitest';
import { atWiper, contactJump } from '../../../src/engine/equations/trimmer.ts';
import { kindModels } from '../../../src/engine/kinds/findings/index.ts';
import type { KindCircumstances, KindPart } from '../../../src/engine/kinds/part.ts';
import { catalogue, CONDITIONS, divider, part, range } from './made-up.ts';

/**
 * A divider of 10 kΩ set to a quarter of 50 V, with 20 kΩ and 0.1 mA at its wiper, worked by hand: it
 * looks like 1875 Ω, gives (12.5 V − 0.1875 V) × 20/21.875 = 11.257 V, and sends 0.563 + 0.1 mA through
 * the wiper and 4.503 + 0.663 mA through the upper part of its track.
 */
const OUT = 12.3125 * (20 / 21.875);

const exactly = { ...part, tolerance: { minus: 0, plus: 0 } };

const model = (id: string) => {
  const found = kindModels[id];
  if (found === undefined) throw new Error(`no model ${id}`);
  return found;
};
const measure = (id: string, of: KindPart = exactly, at: KindCircumstances = divider) => {
  const outcome = model(id).measure(of, at);
  return outcome.status === 'known' ? { ...outcome, ...outcome.value } : outcome;
};
const working = (id: string, at: KindCircumstances = divider) => {
  const outcome = model(id).measure(exactly, at);
  if (outcome.status !== 'known') throw new Error(`${id} is not known`);
  return model(id).working(exactly, at, outcome.value).replaceAll('\u00a0', ' ');
};
const near = (value: number): number => expect.closeTo(value, 7) as number;

const under = (conditions: Partial<KindCircumstances['conditions']>): KindCircumstances => ({
  ...divider,
  conditions: { ...CONDITIONS, ...conditions } as KindCircumstances['conditions'],
});

/** The same type with a limit on its contact (A). */
const limited = (ampere: number): KindCircumstances => ({
  ...divider,
  catalogue: {
    ...catalogue,
    knowledge: {
      'made-up': {
        ...catalogue.knowledge['made-up'],
        'wiper-limit': {
          status: 'known',
          range: range(ampere, ampere, ampere),
          basis: 'published',
          sources: [],
        },
      },
    },
  },
});

describe('a trimmer as a divider under its load', () => {
  it('gives what two resistors and a load give', () => {
    const hung = { total: 10e3, setting: 0.25, voltage: 50, load: 20e3, bias: 1e-4 };
    const at = atWiper(hung);
    expect(at).toMatchObject({
      ideal: near(12.5),
      source: near(1875),
      lost: near(1875 / 21875),
      out: near(OUT),
      shift: near(1 - OUT / 12.5),
    });
    expect(at.current).toBeCloseTo(OUT / 20e3 + 1e-4, 12);
    expect(at.track).toBeCloseTo((50 - OUT) / 7500, 12);
    // The same circuit with 300 Ω more in the wiper.
    const more = (12.5 - 1e-4 * 2175) * (20e3 / (20e3 + 2175));
    expect(contactJump(at, hung, 300)).toBeCloseTo(OUT - more, 12);
  });

  it.each([
    // setting, voltage at the wiper, current in the track
    [0, 0, 50 / 10e3],
    [1, 50, 50 / 10e3 + 50 / 20e3],
  ])('stands at the end %f', (setting, out, track) => {
    const at = atWiper({ total: 10e3, setting, voltage: 50, load: 20e3, bias: 0 });
    expect(at.out).toBeCloseTo(out, 9);
    expect(at.current).toBeCloseTo(out / 20e3, 12);
    // At the upper end the load hangs on the terminal itself: the track carries what it always does.
    expect(at.track).toBeCloseTo(setting === 1 ? 50 / 10e3 : track, 12);
  });

  it('counts the load alone where no voltage stands across it', () => {
    const at = atWiper({ total: 10e3, setting: 0.5, voltage: 0, load: 7500, bias: 0 });
    expect(at.shift).toBeCloseTo(0.25, 12);
  });
});

describe('findings about a divider', () => {
  it('holds the larger current to what the element carries when warm', () => {
    // 0.25 W in 10 kΩ: 5 mA.
    expect(measure('divider-current')).toMatchObject({ typ: near((50 - OUT) / 7500 / 5e-3) });
    expect(working('divider-current')).toBe(
      '50 V across 10 kΩ with 20 kΩ and 100 µA at the wiper: 5.17 mA in the track, 663 µA in the wiper; it carries 5 mA: 103 %',
    );
  });

  it('holds it to the limit of the contact where that is less', () => {
    expect(measure('divider-current', exactly, limited(2e-3))).toMatchObject({
      typ: near((50 - OUT) / 7500 / 2e-3),
    });
    expect(measure('divider-current', exactly, limited(1))).toMatchObject({
      typ: near((50 - OUT) / 7500 / 5e-3),
    });
  });

  it('says how far load and bias current pull the setting, over every total that it may have', () => {
    const shift = (total: number) => {
      const source = 0.1875 * total;
      return 1 - ((12.5 - 1e-4 * source) * (20e3 / (20e3 + source))) / 12.5;
    };
    expect(measure('setting-under-load', part)).toMatchObject({
      min: near(shift(9e3)),
      typ: near(shift(10e3)),
      max: near(shift(12e3)),
    });
    expect(working('setting-under-load')).toBe(
      'set to 25 % it looks like 1.88 kΩ; 20 kΩ and 100 µA at the wiper leave 11.3 V of 12.5 V: 9.94 %',
    );
    expect(working('setting-under-load', under({ 'other-leakage': range(0, 0, 0) }))).toMatch(
      /; 20 kΩ at the wiper leave/u,
    );
  });

  it('says how far it jumps as the contact varies', () => {
    const jump = ((OUT + 2) * 300) / 22175 / OUT;
    expect(measure('contact-jump')).toMatchObject({
      min: 0,
      typ: near(jump / 2),
      max: near(jump),
      properties: ['contact-share', 'contact-ohm'],
    });
    expect(working('contact-jump')).toBe(
      'the contact varies by up to 300 Ω in 1.88 kΩ + 20 kΩ: up to 179 mV of 11.3 V, 1.59 %',
    );
    const dead = under({ vdc: range(0, 0, 0), vac: range(0, 0, 0) });
    expect(measure('contact-jump', exactly, dead)).toMatchObject({ max: near(300 / 22175) });
  });
});
