import { describe, expect, it } from 'vitest';
import { kindModels } from '../../../src/engine/kinds/findings/index.ts';
import { catalogue, circumstances, divider, made, part, place, range } from './made-up.ts';

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
      'for a few seconds 177 V, 2.5 times the rated voltage but at most 2 times the limit; 100 V is 56.6 % of that',
    ],
    [
      'part-noise',
      'rheostat',
      'thermal 2.08 µV; by 30 V at −20 to 0 dB 16.4 µV from 20 Hz to 20 kHz: together 16.6 µV',
    ],
    ['rating-kept', 'rheostat', '0.5 W / 0.25 W = 2 ×'],
    ['resistance-drift', 'rheostat', '−100 to 100 ppm/K over 120 K: 0–1.2 %'],
    ['resistor-power', 'rheostat', '50 V on 10 kΩ is 0.25 W; 0.5 W × 50 % at 120 °C: 100 % of it'],
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
      '2 mA of 5 mA, which 0.5 W in the whole 10 kΩ allow at any setting when warm: 40 %',
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
    [0.05, 0.05, '±5 % as bought'],
    [0.05, 0.1, '+10 % / −5 % as bought'],
  ])('of a tolerance of %f below and %f above: %s', (minus, plus, words) => {
    const bought = { ...part, tolerance: { minus, plus } };
    const worse = range(plus, plus, plus);
    const said = kindModels['part-tolerance']?.working(bought, circumstances(), worse);
    expect(said?.replaceAll('\u00a0', ' ')).toBe(words);
  });

  it.each([
    [0, 'the whole body or the wire takes the heat of a surge'],
    [0.5, 'takes moderate surges only: see the pulse curve of its sheet'],
    [1, 'the thin element burns open at a surge that a solid one takes'],
  ])('of a surge, %f: %s', (typ, words) => {
    const value = range(typ, typ, typ);
    const said = kindModels['surge-duty']?.working(part, circumstances(), value);
    // 100 µF × (100 V)² / 2, and (100 V)² / 10 kΩ.
    expect(said?.replaceAll('\u00a0', ' ')).toBe(
      `charging 100 µF to 100 V puts 500 mJ into it, 1 W at first, 2 × its 0.5 W: ${words}`,
    );
  });

  it.each([
    [0, 0.5, 'does not burn and lights nothing, though it may glow'],
    [0.5, 0.5, 'may flame for some seconds, then goes out by itself'],
    [1, 0.5, 'the coat or the body may catch fire'],
  ])('of a fault, %f at %f W: %s', (grade, rating, words) => {
    const value = range(grade, grade, grade);
    const said = kindModels['flammability']?.working({ ...part, rating }, circumstances(), value);
    expect(said?.replaceAll('\u00a0', ' ')).toBe(
      `a fault with 100 V across 10 kΩ makes 1 W, 2 × its 0.5 W: ${words}`,
    );
  });

  it('says that a part within its rating does not overheat in a fault', () => {
    const value = range(0, 0, 0);
    const said = kindModels['flammability']?.working(
      { ...part, rating: 2, tolerance: { minus: 0, plus: 0 } },
      circumstances(),
      value,
    );
    expect(said?.replaceAll('\u00a0', ' ')).toBe(
      'a fault with 100 V across 10 kΩ makes 1 W, 0.5 × its 2 W: not enough to burn it',
    );
  });

  it('says where the body decides over the power', () => {
    const large = { ...part, value: 1e6, tolerance: { minus: 0, plus: 0 } };
    const value = range(0.2, 0.2, 0.2);
    expect(
      kindModels['resistor-voltage']
        ?.working(large, circumstances(), value)
        .replaceAll('\u00a0', ' '),
    ).toBe('its body takes 250 V, whatever its power; 50 V is 20 % of that');
  });

  it('says that a number is none where the part has none', () => {
    const bare = { type: 'made-up', value: 10e3, unit: 'ohm' as const };
    const value = range(1, 1, 1);
    expect(
      kindModels['rating-kept']?.working(bare, circumstances(), value).replaceAll('\u00a0', ' '),
    ).toBe('none / 0.25 W = 1 ×');
  });

  it.each<[string, string[], string[], boolean, string]>([
    ['nothing is wanted', [], ['fusible'], true, 'no special duty here'],
    ['it has it', ['fusible'], ['fusible'], true, 'is fusible'],
    ['it has one of two', ['fusible', 'flameproof'], ['fusible'], false, 'is fusible'],
    ['it has none', ['fusible'], [], false, 'is not'],
    ['it has none of two', ['fusible', 'flameproof'], [], false, 'is neither'],
    ['it is sold with either taper', ['linear'], ['linear', 'logarithmic'], true, 'is sold so'],
    ['or with the other', ['logarithmic'], ['linear', 'logarithmic'], true, 'is sold so'],
    ['it has another taper', ['logarithmic'], ['linear'], false, 'is linear'],
    ['it has one taper of two', ['linear', 'logarithmic'], ['linear'], false, 'is linear'],
    [
      'more than a taper is wanted',
      ['linear', 'fusible'],
      ['linear', 'fusible'],
      true,
      'is linear and fusible',
    ],
  ])('of a duty where %s', (_what, duties, has, suits, words) => {
    const at = circumstances({
      catalogue: { ...catalogue, kindTypes: { 'made-up': { ...made, duties: has } } },
      position: { ...place, duties },
    });
    const outcome = kindModels['duty']?.measure(part, at);
    if (outcome?.status !== 'known') throw new Error('a duty is always known');
    expect(outcome.value.typ === 0).toBe(suits);
    const said = kindModels['duty']?.working(part, at, outcome.value) ?? '';
    expect(said.endsWith(words)).toBe(true);
    for (const one of duties) expect(said).toContain(one);
  });

  it('rests on practice where nobody makes such a part', () => {
    const outcome = kindModels['availability']?.measure({ ...part, value: 10e6 }, circumstances());
    expect(outcome).toMatchObject({ value: range(1, 1, 1), bases: ['common-practice'] });
  });
});
