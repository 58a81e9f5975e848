import { storedEnergy, surgeCurrent } from '../../equations/inrush.ts';
import { rippleVoltage } from '../../equations/ripple.ts';
import type { Catalogue } from '../../catalogue.ts';
import { formatValue } from '../../quantities/index.ts';
import { exactly } from '../../quantities/range.ts';
import { FLOAT_ERROR } from '../../quantities/within.ts';
import { ruleOf } from '../../rule-of-thumb.ts';
import { noteIf, optionalQuantity, quantity, withFacts } from '../sum.ts';

const DIODE_FREE = 'diode-free';

/**
 * The least capacitance (F) behind a regulator that a position takes to need no diode, and the length (s)
 * of the half sine that rectifiers are rated by.
 */
const factsOf = (catalogue: Catalogue) => {
  const { conditions, conditionDefinitions, units } = catalogue;
  const factor = units[conditionDefinitions[DIODE_FREE]?.unit ?? '']?.factor ?? 1;
  const usual = conditions.flatMap(({ condition, typ }) =>
    condition === DIODE_FREE && typ !== undefined ? [typ * factor] : [],
  );
  return {
    diodeFree: usual.length === 0 ? null : Math.min(...usual),
    halfSine: ruleOf(catalogue, 'surge-half-sine'),
  };
};

/** What changes when a rail capacitor is replaced by a larger one. */
export const largerRail = withFacts(factsOf)({
  id: 'larger-rail-capacitor',
  title: 'A larger rail capacitor',
  lead: 'What changes when a rail capacitor is replaced by a larger one: ripple, voltage stress, time constant, charge and energy.',
  group: 'supply',
  inputs: {
    old: quantity({
      label: 'Old value',
      symbol: 'C_1',
      unit: 'F',
      usual: '47 µF',
      lowest: 1e-9,
      highest: 1,
    }),
    oldRating: quantity({
      label: 'Old rating',
      symbol: 'U_1',
      unit: 'V',
      usual: '16 V',
      lowest: 1,
      highest: 5000,
    }),
    next: quantity({
      label: 'New value',
      symbol: 'C_2',
      unit: 'F',
      usual: '220 µF',
      lowest: 1e-9,
      highest: 1,
    }),
    nextRating: quantity({
      label: 'New rating',
      symbol: 'U_2',
      unit: 'V',
      usual: '35 V',
      lowest: 1,
      highest: 5000,
    }),
    v: quantity({
      label: 'Rail',
      symbol: 'V',
      unit: 'V',
      usual: '15 V',
      lowest: 0.5,
      highest: 5000,
    }),
    i: quantity({
      label: 'Load current',
      symbol: 'I',
      unit: 'A',
      usual: '10 mA',
      lowest: 0,
      highest: 100,
    }),
    f: quantity({
      label: 'Frequency of the pulses',
      symbol: 'f',
      unit: 'Hz',
      usual: '100 Hz',
      lowest: 1,
      highest: 1e7,
    }),
    r: quantity({
      label: 'Source resistance',
      symbol: 'R',
      unit: 'ohm',
      usual: '10 Ω',
      lowest: 1e-3,
      highest: 1e7,
    }),
    surge: optionalQuantity({
      label: 'Surge rating of the rectifier',
      unit: 'A',
      lowest: 0.01,
      highest: 10_000,
      hint: 'where it is the first capacitor',
    }),
  },
  outputs: {
    ripple: { label: 'Ripple with the new one alone', symbol: 'V_r2', unit: 'V', headline: true },
    oldRipple: { label: 'Ripple with the old one alone', symbol: 'V_r1', unit: 'V' },
    stress: { label: 'Rail as a share of the new rating', symbol: 's_2', unit: 'fraction' },
    oldStress: { label: 'Rail as a share of the old rating', symbol: 's_1', unit: 'fraction' },
    constant: { label: 'Time constant now', symbol: 'tau_2', unit: 's' },
    oldConstant: { label: 'Time constant before', symbol: 'tau_1', unit: 's' },
    energy: { label: 'Energy now', symbol: 'W_2', unit: 'J' },
    oldEnergy: { label: 'Energy before', symbol: 'W_1', unit: 'J' },
    charge: { label: 'Charge at switch-on against before', symbol: 'n', unit: 'ratio' },
    inrush: { label: 'Surge as an equivalent half sine', symbol: 'I_S', unit: 'A' },
    halfSine: { label: 'Half sine of its rating', symbol: 't_S', unit: 's', step: true },
  },
  equations: [
    'V_r1 = I/(f*C_1), V_r2 = I/(f*C_2)',
    's_1 = V/U_1, s_2 = V/U_2',
    'tau_1 = R*C_1, tau_2 = R*C_2',
    'W_1 = C_1*V^2/2, W_2 = C_2*V^2/2',
    'n = C_2/C_1',
    'I_S = V/R*min(1, sqrt(R*C_2/t_S))',
  ],
  at: ({ old, oldRating, next, nextRating, v, i, f, r }, { halfSine }) => ({
    ripple: rippleVoltage(i, f, exactly(next)).typ,
    oldRipple: rippleVoltage(i, f, exactly(old)).typ,
    stress: v / nextRating,
    oldStress: v / oldRating,
    constant: r * next,
    oldConstant: r * old,
    energy: storedEnergy(next, v),
    oldEnergy: storedEnergy(old, v),
    charge: next / old,
    inrush: surgeCurrent(v, r, next, halfSine),
    halfSine,
  }),
  notes: ({ surge, v, nextRating, next }, { inrush = 0 }, { diodeFree }) => [
    ...noteIf(v > nextRating, 'caution', 'The rail is above the new rating.'),
    ...noteIf(
      surge !== undefined && inrush > surge,
      'limit',
      'The surge is above the rating of the rectifier: keep closer to the old value, or add series resistance.',
    ),
    ...(diodeFree === null
      ? []
      : noteIf(
          next > diodeFree * (1 + FLOAT_ERROR),
          'limit',
          `Behind an adjustable three-terminal regulator more than ${formatValue(diodeFree, 'F')} asks for a diode from output to input, so that it cannot discharge backwards through the regulator.`,
        )),
    {
      kind: 'remark',
      text: 'Behind a regulator or a resistor the larger charge does no harm; where it is the first capacitor behind a rectifier, see the surge. Check height and neighbours of the larger can.',
    },
  ],
  plots: [
    {
      title: 'Ripple against the new value',
      x: 'next',
      scale: 'log',
      y: ['ripple', 'oldRipple'],
      yScale: 'log',
    },
  ],
  cautions: ['regulator-dump', 'stored-charge'],
  sources: ['identity'],
  checks: [
    {
      what: 'Worked by hand: 47 µF 16 V against 220 µF 35 V on 15 V, 50 mA at 100 Hz, 10 Ω',
      inputs: { i: '50 mA' },
      expected: {
        oldRipple: 10.64,
        ripple: 2.273,
        oldStress: 0.9375,
        stress: 0.4286,
        oldConstant: 0.47e-3,
        constant: 2.2e-3,
        oldEnergy: 5.2875e-3,
        energy: 24.75e-3,
        charge: 4.681,
      },
      within: 0.001,
      source: 'identity',
    },
    {
      what: 'Worked by hand: 220 µF from 15 V through 10 Ω put V²·C/(2·R) = 2.475 mA²s into a rectifier, as does a half sine of 0.7723 A in 8.3 ms, behind one diode as behind four',
      inputs: { f: '50 Hz' },
      expected: { inrush: 0.7723 },
      within: 0.001,
      source: 'identity',
    },
  ],
});
