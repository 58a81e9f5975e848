import type { Basis, Catalogue } from '../../catalogue.ts';
import { changeByVoltage } from '../../equations/resistor.ts';
import { exactly, type Range } from '../../quantities/range.ts';
import { basisName } from '../../basis-name.ts';
import { noteIf, quantity, withFacts } from '../sum.ts';

const EACH_VOLT = 'voltage-change';

interface Construction {
  name: string;
  each: Range;
  basis: Basis;
}

/** Constructions of resistors by how little voltage changes them. */
const factsOf = ({ kindTypes, knowledge }: Catalogue) => ({
  constructions: Object.values(kindTypes)
    .flatMap(({ id, kind, short_name: name, only_asked }): Construction[] => {
      const known = kind === 'resistor' ? knowledge[id]?.[EACH_VOLT] : undefined;
      return known?.status === 'known' && !only_asked
        ? [{ name, each: known.range, basis: known.basis }]
        : [];
    })
    .toSorted((a, b) => a.each.typ - b.each.typ),
});

/** How far a resistance moves because voltage stands across it. */
export const resistorVoltage = withFacts(factsOf)({
  id: 'resistor-voltage',
  title: 'Voltage coefficient of a resistor',
  lead: 'How far a resistance moves with the voltage across it, with all constructions side by side.',
  group: 'resistor',
  inputs: {
    r: quantity({
      label: 'Resistance',
      symbol: 'R',
      unit: 'ohm',
      usual: '1 MΩ',
      lowest: 1e-3,
      highest: 1e13,
    }),
    each: quantity({
      label: 'Its change',
      symbol: 'c_V',
      unit: 'fraction',
      bare: '%',
      usual: '0.02 to 0.05 %',
      lowest: 0,
      highest: 0.01,
      hint: 'of the sheet, or from the table below',
    }),
    per: quantity({
      label: 'for each',
      symbol: 'V_1',
      unit: 'V',
      usual: '1 V',
      lowest: 0.01,
      highest: 10_000,
      hint: 'some sheets give it for more than one volt',
    }),
    v: quantity({
      label: 'Voltage across it, RMS',
      symbol: 'V',
      unit: 'V',
      usual: '250 V',
      lowest: 0,
      highest: 100_000,
    }),
  },
  outputs: {
    change: { label: 'Change by the voltage', symbol: 's', unit: 'fraction', headline: true },
    ohm: { label: 'The same in ohms', symbol: 'R_s', unit: 'ohm' },
  },
  equations: ['s = c_V*V/V_1', 'R_s = s*R'],
  at: ({ r, each, per, v }) => {
    const change = changeByVoltage(exactly(each / per), v).typ;
    return { change, ohm: change * r };
  },
  tables: ({ v }, { constructions }) => [
    {
      caption: 'Other constructions under the same voltage',
      head: ['Construction', 'Change for each volt', 'Change', 'Known from'],
      rows: constructions.map(({ name, each, basis }) => [
        name,
        { value: each, unit: 'fraction' as const },
        { value: changeByVoltage(each, v), unit: 'fraction' as const },
        basisName(basis),
      ]),
    },
  ],
  notes: (_, { change = 0 }) => [
    ...noteIf(
      change > 0.2,
      'limit',
      'So far the change does not go in proportion: its size is all that this says.',
    ),
    {
      kind: 'remark',
      text: 'Composition and carbon film fall as the voltage rises; metal film may go either way. A change that follows a signal is distortion, and in a divider for high voltage it is an error of the reading. What the part takes is a sum of its own.',
    },
  ],
  plots: [
    {
      title: 'Change against the voltage',
      x: 'v',
      scale: 'linear',
      y: ['change'],
      yScale: 'linear',
    },
  ],
  cautions: ['high-voltage'],
  sources: ['noise-voltage-paper', 'identity'],
  checks: [
    {
      what: 'Printed for most samples of metal film, 0.00003 % for each volt: at 100 V 30 millionths',
      inputs: { each: '0.00003 %', v: '100', r: '1M' },
      expected: { change: 30e-6, ohm: 30 },
      within: 1e-6,
      source: 'noise-voltage-paper',
    },
    {
      what: 'Worked by hand: 0.02 % for each volt make 2 % at 100 V, 20 kΩ of 1 MΩ',
      inputs: { each: '0.02 %', v: '100', r: '1M' },
      expected: { change: 0.02, ohm: 20_000 },
      within: 1e-6,
      source: 'identity',
    },
  ],
});
