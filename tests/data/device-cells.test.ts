import { describe } from 'vitest';
import { testBrokenCells, type BrokenCell } from './broken-cells.ts';
import type { Pick } from './broken-copy.ts';

const where =
  (cells: Readonly<Record<string, string>>): Pick =>
  (row) =>
    Object.entries(cells).every(([column, cell]) => row[column] === cell);

const FIGURES = 'devices/figures.csv';
const bias = where({ of: '741', property: 'bias-current' });

const figures: BrokenCell[] = [
  {
    what: 'of no device',
    file: FIGURES,
    pick: bias,
    column: 'of',
    to: '742',
    rule: 'device-figure',
  },
  {
    what: 'of an unknown property',
    file: FIGURES,
    pick: bias,
    column: 'property',
    to: 'bias',
    rule: 'reference',
  },
  {
    what: 'in volts where it is a current',
    file: FIGURES,
    pick: bias,
    column: 'unit',
    to: 'V',
    rule: 'device-figure',
  },
  {
    what: 'typical above its greatest',
    file: FIGURES,
    pick: bias,
    column: 'typ',
    to: '600',
    rule: 'number-order',
    at: 'max',
  },
  {
    what: 'that no input can have',
    file: FIGURES,
    pick: bias,
    column: 'max',
    to: '500000000',
    rule: 'device-figure',
    at: 'typ',
  },
  {
    what: 'published in a source that nobody saw',
    file: FIGURES,
    pick: bias,
    column: 'source',
    to: 'opamp-data-sheets',
    rule: 'basis',
    at: 'basis',
  },
  {
    what: 'published, but not where',
    file: FIGURES,
    pick: bias,
    column: 'locator',
    to: '',
    rule: 'locator',
  },
];

const DEVICES = 'devices/devices.csv';
const devices: BrokenCell[] = [
  {
    what: 'of an unknown family',
    file: DEVICES,
    pick: where({ id: '741' }),
    column: 'family',
    to: 'amp',
    rule: 'reference',
  },
  {
    what: 'with an unknown order of pins',
    file: DEVICES,
    pick: where({ id: '741' }),
    column: 'pinouts',
    to: 'amp-742',
    rule: 'reference',
  },
  {
    what: 'with a function that there is not',
    file: DEVICES,
    pick: where({ id: '741' }),
    column: 'function',
    to: 'half-amp',
    rule: 'reference',
  },
  {
    what: 'of no known market',
    file: DEVICES,
    pick: where({ id: '741' }),
    column: 'market',
    to: 'rare',
    rule: 'cell',
  },
];

const PINS = 'devices/pins.csv';
const pins: BrokenCell[] = [
  {
    what: 'that does what no pin does',
    file: PINS,
    pick: where({ pinout: 'amp-741', pin: '3' }),
    column: 'function',
    to: 'plus',
    rule: 'reference',
  },
  {
    what: 'of which there are more than that',
    file: 'devices/pinouts.csv',
    pick: where({ id: 'amp-741' }),
    column: 'pins',
    to: '7',
    rule: 'pinout',
  },
];

const DEMANDS = 'devices/demands.csv';
const demands: BrokenCell[] = [
  {
    what: 'on a finding that there is not',
    file: DEMANDS,
    pick: where({ id: 'amp-mic-supply-high' }),
    column: 'finding',
    to: 'colour',
    rule: 'reference',
  },
  {
    what: 'for which the use gives no number',
    file: DEMANDS,
    pick: where({ id: 'amp-mic-supply-high' }),
    column: 'finding',
    to: 'sinks',
    rule: 'device-demand',
  },
  {
    what: 'limited by what the use does not have',
    file: DEMANDS,
    pick: where({ id: 'amp-mic-swing' }),
    column: 'limit_of',
    to: 'hold-time',
    rule: 'device-demand',
  },
];

const SUMS = 'devices/sum-inputs.csv';
const step = where({ sum: 'hold-step', input: 'c' });
const sums: BrokenCell[] = [
  {
    what: 'that nothing fills in',
    file: 'devices/findings.csv',
    pick: where({ id: 'noise-with-source' }),
    column: 'sum',
    to: 'resistor-noise',
    rule: 'device-sum',
  },
  {
    what: 'that there is not',
    file: SUMS,
    pick: step,
    column: 'sum',
    to: 'hold',
    rule: 'device-sum',
  },
  {
    what: 'that no finding leads to',
    file: SUMS,
    pick: step,
    column: 'sum',
    to: 'divider',
    rule: 'device-sum',
  },
  {
    what: 'with a field that it does not have',
    file: SUMS,
    pick: step,
    column: 'input',
    to: 'farads',
    rule: 'device-sum',
  },
  {
    what: 'filled with an unknown condition',
    file: SUMS,
    pick: step,
    column: 'of',
    to: 'capacitor',
    rule: 'device-sum',
  },
];

const SYSTEMS = 'devices/number-systems.csv';
const systems: BrokenCell[] = [
  {
    what: 'with half a digit',
    file: SYSTEMS,
    pick: where({ starts: '1N' }),
    column: 'fewest',
    to: '1.5',
    rule: 'cell',
  },
  {
    what: 'given twice',
    file: SYSTEMS,
    pick: where({ starts: '2N' }),
    column: 'starts',
    to: '1N',
    rule: 'duplicate-key',
  },
];

const BESIDE = 'devices/beside-words.csv';
const beside: BrokenCell[] = [
  {
    what: 'in a form of small letters',
    file: BESIDE,
    pick: where({ form: '9999' }),
    column: 'form',
    to: 'a9',
    rule: 'cell',
  },
  {
    what: 'given twice',
    file: BESIDE,
    pick: where({ form: '999' }),
    column: 'form',
    to: '9999',
    rule: 'duplicate-key',
  },
];

const KNOWN = 'devices/known-numbers.csv';
const known: BrokenCell[] = [
  {
    what: 'in small letters',
    file: KNOWN,
    pick: where({ number: 'BC237' }),
    column: 'number',
    to: 'bc237',
    rule: 'cell',
  },
  {
    what: 'near a device that is not there',
    file: KNOWN,
    pick: where({ number: 'BC237' }),
    column: 'near',
    to: 'bc1',
    rule: 'reference',
  },
  {
    what: 'given twice',
    file: KNOWN,
    pick: where({ number: 'BC307' }),
    column: 'number',
    to: 'BC237',
    rule: 'duplicate-key',
  },
];

describe('a figure of a device', () => {
  testBrokenCells(figures);
});
describe('a device', () => {
  testBrokenCells(devices);
});
describe('a pin', () => {
  testBrokenCells(pins);
});
describe('a demand on a device', () => {
  testBrokenCells(demands);
});
describe('a sum that a finding about a device leads to', () => {
  testBrokenCells(sums);
});
describe('a form of type numbers', () => {
  testBrokenCells(systems);
});
describe('a number without a page', () => {
  testBrokenCells(known);
});
describe('a word beside a type number', () => {
  testBrokenCells(beside);
});
