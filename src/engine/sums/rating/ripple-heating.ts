import { heatByCurrent, currentForHeat } from '../../equations/heat.ts';
import type { Catalogue } from '../../catalogue.ts';
import { COMPARED_RISE, heatForRise, riseByHeat } from '../../equations/ripple.ts';
import { cylinderSurface } from '../../equations/surface.ts';
import { formatValue } from '../../quantities/index.ts';
import { coolingBy } from '../../laws.ts';
import { ruleOf } from '../../rule-of-thumb.ts';
import { coreRiseOfCan } from '../../sizes/surface.ts';
import { noteIf, optionalQuantity, quantity, withFacts } from '../sum.ts';

/**
 * The rises of cores in cans of the type that they are listed for first, how cans cool, and the own heat
 * (K) above which an electrolytic is usually said to be worked too hard.
 */
const factsOf = (catalogue: Catalogue) => {
  const { coreRises } = catalogue;
  const can = coreRises[0]?.types[0] ?? '';
  return {
    can,
    coreRises: coreRises.filter(({ types }) => types.includes(can)),
    cooling: coolingBy(catalogue),
    warm: ruleOf(catalogue, 'ripple-rise'),
  };
};

/** How much ripple current warms a part by its series resistance. */
export const rippleHeating = withFacts(factsOf)({
  id: 'ripple-heating',
  title: 'Self-heating by ripple current',
  lead: 'How much warmer than the air a part gets by the ripple current through it, from its ESR and the size of its can.',
  group: 'rating',
  inputs: {
    i: quantity({
      label: 'Ripple current, RMS',
      symbol: 'I',
      unit: 'A',
      usual: '1 A',
      lowest: 0,
      highest: 1000,
    }),
    esr: quantity({
      label: 'ESR at its frequency',
      symbol: 'R',
      unit: 'ohm',
      usual: '50 to 150 mΩ',
      lowest: 1e-9,
      highest: 1e5,
    }),
    diameter: quantity({
      label: 'Diameter of the can',
      symbol: 'd',
      unit: 'm',
      bare: 'mm',
      usual: '12.5 mm',
      lowest: 1e-3,
      highest: 0.3,
    }),
    length: quantity({
      label: 'Length of the can',
      symbol: 'l',
      unit: 'm',
      bare: 'mm',
      usual: '25 mm',
      lowest: 1e-3,
      highest: 1,
    }),
    heat: optionalQuantity({
      label: 'Heat it gives off when 10 K warmer',
      symbol: 'P_g',
      unit: 'W',
      lowest: 1e-6,
      highest: 1e5,
      hint: 'may stay empty: then from the can',
    }),
    core: optionalQuantity({
      label: 'Rise of the core over that of the surface',
      symbol: 'k_g',
      unit: 'ratio',
      lowest: 1,
      highest: 5,
      hint: 'may stay empty: then by the diameter',
    }),
  },
  outputs: {
    rise: { label: 'Warmer inside by', symbol: 'dT', unit: 'K', headline: true },
    power: { label: 'Heat', symbol: 'P', unit: 'W' },
    heatForTen: { label: 'Heat that warms its surface by 10 K', symbol: 'P_10', unit: 'W' },
    ratio: { label: 'Core over surface', symbol: 'k_c', unit: 'ratio' },
    most: { label: 'Current for 10 K inside', symbol: 'I_10', unit: 'A' },
  },
  equations: [],
  equationsFor: ({ heat, core }) => [
    'P = I^2*R',
    heat === undefined ? 'P_10 = 0.023*(1e4*pi*(d*l + d^2/4))^0.8' : 'P_10 = P_g',
    ...(core === undefined ? [] : ['k_c = k_g']),
    'dT = k_c*10*P/P_10',
    'I_10 = sqrt(P_10/(k_c*R))',
  ],
  at: ({ i, esr, diameter, length, heat, core }, facts) => {
    const surface = cylinderSurface(diameter, length, 1);
    const heatForTen = heat ?? heatForRise(COMPARED_RISE, surface, facts.cooling);
    const ratio = core ?? coreRiseOfCan(facts, facts.can, diameter)?.ratio ?? 1;
    const power = heatByCurrent(i, esr);
    return {
      rise: ratio * riseByHeat(power, heatForTen),
      power,
      heatForTen,
      ratio,
      most: currentForHeat(heatForTen / ratio, esr),
    };
  },
  notes: (_, { rise = 0 }, { warm }) => [
    ...noteIf(
      rise > warm,
      'limit',
      `More than ${formatValue(warm, 'K')} of self-heating: a wet electrolytic lives much shorter, and few sheets allow it.`,
    ),
    {
      kind: 'remark',
      text: 'For a can that is free in still air; beside something hot, or packed in, it gets warmer. ESR of a wet electrolytic falls as it warms and rises in the cold.',
      source: 'alum-life-technote',
    },
  ],
  plots: [
    {
      title: 'Self-heating against the ripple current',
      x: 'i',
      scale: 'linear',
      y: ['rise'],
      yScale: 'linear',
      limits: (_, { warm }) => [{ label: formatValue(warm, 'K'), value: warm }],
    },
  ],
  cautions: ['electrolytic-vent'],
  sources: ['alum-life-technote'],
  checks: [
    {
      what: 'Printed in a table: 4700 µF for 6.3 V in a can of 13 mm × 20 mm is allowed 1.545 A at 100 Hz; with the resistance listed for it this warms the core by the ten kelvin that makers allow at 85 °C',
      inputs: { i: '1.545', esr: '49.1 mΩ', diameter: '13', length: '20' },
      expected: { rise: 10 },
      within: 0.05,
      source: 'vishay-038rsu-table',
      locator: 'table 2',
    },
    {
      what: 'Worked by hand: 2 A through 0.05 Ω make 0.2 W; a body that gives off 0.1 W at 10 K gets 20 K warmer, its core 1.2 times as much',
      inputs: { i: '2', esr: '0.05', heat: '0.1 W', core: '1.2' },
      expected: { power: 0.2, rise: 24 },
      within: 1e-6,
      source: 'identity',
    },
  ],
});
