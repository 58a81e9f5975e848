import { describe, expect, test } from 'vitest';
import { surenessOf } from '../../../src/engine/assessment/sureness.ts';
import type { RuleOfThumb } from '../../../src/engine/rule-of-thumb.ts';
import { esrOf } from '../../../src/engine/sizes/esr-of.ts';
import { frequencyFactor } from '../../../src/engine/sizes/ripple-factors.ts';
import { tabulatedBody } from '../../../src/engine/sizes/body-table.ts';
import { prepareDemands } from '../../../src/engine/assessment/finding.ts';
import { catalogue, circumstancesOf, known, knowing, notKnown } from '../assessment/setting.ts';
import { madeBody, madeResistance, sized } from './setting.ts';

/** How far tables reach, and what leaves a finding less sure, is what the rules of thumb say. */

const provenance = { source: 'trade', locator: '', basis: 'common-practice', note: '' } as const;
const part = { type: 'glass', capacitance: 1e-6, ratedVoltage: 63 };

const table = sized({
  bodies: [madeBody({ c_min: 5e-6, c_max: 5e-6, voltage: 100 })],
  seriesResistance: [madeResistance({})],
  rippleByFrequency: [100, 1e5].map((hertz) => ({
    type: 'glass',
    v_min: 0,
    v_max: 1000,
    c_min: 0,
    c_max: 1,
    frequency_hz: hertz,
    factor: 1,
    ...provenance,
  })),
});
const bare = knowing(sized({}), 'glass', { 'esr-100khz': known(7) });
const untold = knowing(table, 'glass', { 'esr-100khz': notKnown });

const [row] = prepareDemands(
  circumstancesOf({ original: { type: 'glass' }, position: 'bulk-rail' }),
).filter(({ row: { id } }) => id === 'ripple-voltage');

const sure = (rules: typeof catalogue, min: number, max: number): string => {
  if (row === undefined) throw new Error('no such demand');
  const base = circumstancesOf({ original: { type: 'glass' }, position: 'bulk-rail' });
  return surenessOf(
    { status: 'known', value: { min, typ: min, max }, properties: [] },
    { high: 100 },
    row.row,
    base.original,
    { catalogue: rules },
  ).sure;
};

describe('a rule of thumb decides', () => {
  test.each<
    [RuleOfThumb, other: number, what: (rules: typeof catalogue) => unknown, unknown, unknown]
  >([
    [
      'body-rating-reach',
      1.5,
      (rules) => tabulatedBody({ ...rules, bodies: table.bodies }, part)?.row?.voltage,
      100,
      undefined,
    ],
    [
      'body-value-reach',
      4,
      (rules) => tabulatedBody({ ...rules, bodies: table.bodies }, part)?.row?.voltage,
      100,
      undefined,
    ],
    [
      'resistance-frequency-reach',
      2,
      (rules) => esrOf({ ...untold, rulesOfThumb: rules.rulesOfThumb }, part, 5e5)?.range.typ,
      1,
      undefined,
    ],
    [
      'frequency-reach-down',
      0.8,
      (rules) => esrOf({ ...untold, rulesOfThumb: rules.rulesOfThumb }, part, 5e4)?.range.typ,
      2,
      undefined,
    ],
    [
      'frequency-reach-down',
      0.8,
      (rules) =>
        frequencyFactor({ ...table, rulesOfThumb: rules.rulesOfThumb }, part, 100, 50)?.factor,
      Math.SQRT1_2,
      undefined,
    ],
    [
      'type-frequency-reach',
      5,
      (rules) => esrOf({ ...bare, rulesOfThumb: rules.rulesOfThumb }, part, 4e5)?.range.typ,
      undefined,
      7,
    ],
    ['apart-likely', 5, (rules) => sure(rules, 10, 60), 'sure', 'likely'],
    ['apart-possible', 50, (rules) => sure(rules, 10, 600), 'likely', 'possible'],
    ['as-good-as-nothing', 0.2, (rules) => sure(rules, 2, 21), 'likely', 'sure'],
  ])('%s of %s', (id, other, what, now, then) => {
    const spoilt = { ...catalogue, rulesOfThumb: { ...catalogue.rulesOfThumb, [id]: [other] } };
    expect(what(catalogue)).toEqual(now);
    expect(what(spoilt)).toEqual(then);
  });
});
