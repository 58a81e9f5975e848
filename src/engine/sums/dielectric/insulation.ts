import { leakageOfPart, type Insulator } from '../../equations/leakage.ts';
import { insulatorOf } from '../../insulator-of.ts';
import { knownRange } from '../../known-range.ts';
import { choice, quantity, withFacts } from '../sum.ts';

interface Kind {
  id: string;
  name: string;
  dielectric: Insulator;
}

/** Insulation and leakage of a dielectric over value, temperature and voltage. */
export const insulation = withFacts((catalogue): Kind[] =>
  Object.values(catalogue.types).flatMap(({ id, name }) => {
    const own = catalogue.knowledge[id];
    const dielectric = insulatorOf((property) => knownRange(own?.[property]), catalogue);
    return dielectric === undefined ? [] : [{ id, name, dielectric }];
  }),
)({
  id: 'insulation',
  title: 'Insulation and leakage over temperature',
  lead: 'Insulation resistance and leakage of a new part by its dielectric, value and temperature.',
  group: 'dielectric',
  inputs: {
    kind: choice<Kind[]>({ label: 'Type', usual: 'pp-metallized', options: (kinds) => kinds }),
    c: quantity({
      label: 'Capacitance',
      symbol: 'C',
      unit: 'F',
      usual: '100 nF',
      lowest: 1e-13,
      highest: 1,
    }),
    t: quantity({
      label: 'Temperature',
      symbol: 'T',
      unit: 'degC',
      usual: '40 °C',
      lowest: -55,
      highest: 200,
    }),
    v: quantity({
      label: 'Voltage across it',
      symbol: 'V',
      unit: 'V',
      usual: '100 V',
      lowest: 0,
      highest: 50_000,
    }),
  },
  outputs: {
    resistance: { label: 'Insulation, typically', symbol: 'R', unit: 'ohm', headline: true },
    least: { label: 'Insulation at the poor end', unit: 'ohm' },
    current: { label: 'Leakage, typically', symbol: 'I', unit: 'A' },
    most: { label: 'Leakage at the poor end', unit: 'A' },
    hold: { label: 'Time in which it would lose 63 % of its charge', symbol: 'tau', unit: 's' },
  },
  equations: ['R = tau/C', 'I = V/R'],
  at: ({ kind, c, t, v }, kinds) => {
    const own = kinds.find(({ id }) => id === kind);
    if (own === undefined) {
      return {
        resistance: undefined,
        least: undefined,
        current: undefined,
        most: undefined,
        hold: undefined,
      };
    }
    const { insulation: ohm, current: leak } = leakageOfPart(own.dielectric, c, v, t);
    return {
      resistance: ohm.typ,
      least: ohm.min,
      current: leak.typ,
      most: leak.max,
      hold: ohm.typ * c,
    };
  },
  notes: () => [
    {
      kind: 'limit',
      text: 'Of a sound new part by its makers’ figures. An old part, a dirty board or a finger mark can be a thousand times worse: measure at the working voltage.',
    },
  ],
  plots: [
    {
      title: 'Insulation against temperature',
      x: 't',
      scale: 'linear',
      span: () => [20, 100],
      y: ['resistance', 'least'],
      yScale: 'log',
    },
  ],
  cautions: ['valve-coupling-leak'],
  sources: ['trade'],
  checks: [
    {
      what: 'Printed for polypropylene: 1 µF has at least 30 000 MΩ',
      inputs: { kind: 'pp-metallized', c: '1 µF', t: '25' },
      expected: { least: 30e9 },
      within: 0.01,
      source: 'ppb-pp-data',
    },
  ],
});
