import { deviceDemands } from '../../../src/catalogue/checks/device-demands.ts';
import { deviceFigures } from '../../../src/catalogue/checks/device-figures.ts';
import { devicesKnown } from '../../../src/catalogue/checks/devices-known.ts';
import { devicePins } from '../../../src/catalogue/checks/device-pins.ts';
import { deviceSums } from '../../../src/catalogue/checks/device-sums.ts';
import { testRule } from './made-tables.ts';

testRule('device-demand', deviceDemands, [
  {
    what: 'numbers that the use gives, the old device itself, and a finding that another rule misses',
    tables: {
      'devices/findings.csv': ['id,conditions', 'supply-high,rail', 'speed,'],
      'devices/conditions.csv': ['position,condition', 'follower,rail', 'driver,gain'],
      'devices/demands.csv': [
        'position,finding,limit_of',
        'follower,supply-high,rail',
        'follower,speed,',
        'driver,speed,old',
        'driver,speed,gain',
        'driver,unheard,unheard',
      ],
    },
    faults: [],
  },
  {
    what: 'a finding without a model, and numbers of another use',
    tables: {
      'devices/findings.csv': ['id,conditions', 'charm,rail', 'supply-high,rail;gain'],
      'devices/conditions.csv': ['position,condition', 'follower,rail', 'driver,gain'],
      'devices/demands.csv': [
        'position,finding,limit_of',
        'follower,charm,gain',
        'follower,supply-high,gain',
        'driver,supply-high,rail',
      ],
    },
    faults: [
      { at: 'devices/demands.csv:2:finding', says: ['no such finding', 'with a model'] },
      { at: 'devices/demands.csv:3:finding', says: ['gives no gain', 'a row in'] },
      { at: 'devices/demands.csv:3:limit_of', says: ['or old'] },
      { at: 'devices/demands.csv:4:finding', says: ['gives no rail'] },
      { at: 'devices/demands.csv:4:limit_of', says: ['no such condition'] },
    ],
  },
]);

const KNOWN = {
  'units.csv': ['unit,si,factor', 'V,V,1', 'mV,V,0.001', 'A,A,1'],
  'devices/properties.csv': [
    'id,unit,lowest,highest',
    'offset,mV,-50,50',
    'supply,V,1,40',
    'odd,furlong,1,2',
  ],
  'devices/devices.csv': ['id', 'follower', '!doubtful'],
  'devices/series.csv': ['id', 'family'],
};
const ROW = 'of,property,unit,min,typ,max';

testRule('device-figure', deviceFigures, [
  {
    what: 'of a device, of one with a fault, of a series; up to the very ends, in either unit',
    tables: {
      ...KNOWN,
      'devices/figures.csv': [
        ROW,
        'follower,offset,mV,-50,0,50',
        'doubtful,offset,V,-0.05,,0.05',
        'family,supply,mV,1000,1000,40000',
        'family,supply,V,,5,',
        'family,supply,V,3,,',
        'family,supply,V,,,30',
        // What a property is, is another rule.
        'family,unheard,V,,,',
        // A billionth of a bound is room for the rounding of units.
        'family,supply,V,0.9999999999,,40.00000001',
      ],
    },
    faults: [],
  },
  {
    what: 'of no device, in a unit of another kind, without a number',
    tables: {
      ...KNOWN,
      'devices/figures.csv': [
        ROW,
        'unheard,offset,mV,,1,',
        'follower,offset,A,,1,',
        'follower,offset,mV,,,',
      ],
    },
    faults: [
      { at: 'devices/figures.csv:2:of', says: ['names no device', 'a series'] },
      { at: 'devices/figures.csv:3:unit', says: ['another kind', 'such as mV'] },
      { at: 'devices/figures.csv:4:typ', says: ['no number', 'min, typ or max'] },
    ],
  },
  {
    what: 'numbers that cannot be, below and above, in either unit',
    tables: {
      ...KNOWN,
      'devices/figures.csv': [
        ROW,
        'follower,supply,V,0.9,5,',
        'follower,supply,V,,5,41',
        'follower,supply,mV,,900,',
        'follower,offset,V,,0.051,',
        'follower,supply,V,0.999999,,',
        'follower,supply,V,,,40.000001',
      ],
    },
    faults: [
      { at: 'devices/figures.csv:2:typ', says: ['supply cannot', '1 to 40 V'] },
      'devices/figures.csv:3:typ',
      'devices/figures.csv:4:typ',
      { at: 'devices/figures.csv:5:typ', says: ['offset cannot', '-50 to 50 mV'] },
      'devices/figures.csv:6:typ',
      'devices/figures.csv:7:typ',
    ],
  },
  {
    // A bound below zero: the room for rounding is outside it, not inside.
    what: 'just below a bound that is below zero',
    tables: { ...KNOWN, 'devices/figures.csv': [ROW, 'follower,offset,mV,-50.001,,'] },
    faults: ['devices/figures.csv:2:typ'],
  },
]);

testRule('missing-figure-of-device', devicesKnown, [
  {
    what: 'a figure of its own, of one of its series, and a device that has another fault',
    tables: {
      'devices/devices.csv': ['id,series', 'follower,', 'gate,wide;fast', '!odd,'],
      'devices/figures.csv': ['of,use', 'follower,shown', 'follower,used', 'fast,used'],
    },
    faults: [],
  },
  {
    what: 'no figure, one that is only shown, and those of another device',
    tables: {
      'devices/devices.csv': ['id,series', 'follower,', 'gate,wide', 'other,'],
      'devices/figures.csv': ['of,use', 'follower,shown', 'other,used'],
    },
    faults: [
      { at: 'devices/devices.csv:2:id', says: ['nothing is known', 'rows of follower'] },
      'devices/devices.csv:3:id',
    ],
  },
]);

testRule('pinout', devicePins, [
  {
    what: 'all pins once, in any order',
    tables: {
      'devices/pinouts.csv': ['id,pins', 'three,3', 'two,2'],
      'devices/pins.csv': ['pinout,pin', 'three,2', 'two,1', 'three,3', 'three,1', 'two,2'],
    },
    faults: [],
  },
  {
    what: 'one left out, one twice, one too many',
    tables: {
      'devices/pinouts.csv': ['id,pins', 'lacks,4', 'twice,2', 'more,1', 'instead,2'],
      'devices/pins.csv': [
        'pinout,pin',
        'lacks,2',
        'lacks,4',
        'twice,1',
        'twice,2',
        'twice,2',
        'more,1',
        'more,2',
        'instead,1',
        'instead,3',
      ],
    },
    faults: [
      { at: 'devices/pinouts.csv:2:pins', says: ['lacks pin 1, 3', 'pins 1 to 4'] },
      { at: 'devices/pinouts.csv:3:pins', says: ['more pins', 'pins 1 to 2'] },
      { at: 'devices/pinouts.csv:4:pins', says: ['more pins'] },
      { at: 'devices/pinouts.csv:5:pins', says: ['lacks pin 2'] },
    ],
  },
]);

testRule('device-sum', deviceSums, [
  {
    what: 'a sum with fields of its own, filled with what there is',
    tables: {
      'devices/findings.csv': ['id,sum', 'edge,pulse-edge', 'none,'],
      'devices/condition-definitions.csv': ['id', '!swing'],
      'devices/properties.csv': ['id', 'slew'],
      'devices/sum-inputs.csv': [
        'sum,input,takes,of',
        'pulse-edge,swing,condition,swing',
        'pulse-edge,edge,property,slew',
        'pulse-edge,rating,words,1000',
      ],
    },
    faults: [],
  },
  {
    what: 'a finding that leads to a sum without fields',
    tables: { 'devices/findings.csv': ['id,sum', 'edge,pulse-edge'] },
    faults: [{ at: 'devices/findings.csv:2:sum', says: ['rows in devices/sum-inputs.csv'] }],
  },
  {
    what: 'a sum that there is not, one that nothing leads to, a field that it has not',
    tables: {
      'devices/findings.csv': ['sum', 'pulse-edge', 'guesswork'],
      'devices/sum-inputs.csv': [
        'input,sum,takes',
        'swing,guesswork,words',
        'esr,ripple-heating,words',
        'temper,pulse-edge,words',
      ],
    },
    faults: [
      { at: 'devices/sum-inputs.csv:2:sum', says: ['there is no such sum'] },
      { at: 'devices/sum-inputs.csv:3:sum', says: ['no finding leads to it'] },
      { at: 'devices/sum-inputs.csv:4:input', says: ['no such field', 'edge, swing, time'] },
    ],
  },
  {
    what: 'words for a field that asks for a number',
    tables: {
      'devices/findings.csv': ['sum', 'pulse-edge'],
      'devices/sum-inputs.csv': ['sum,input,takes,of', 'pulse-edge,rating,words,anything'],
    },
    faults: [{ at: 'devices/sum-inputs.csv:2:of', says: ['asks for a number'] }],
  },
  ...(
    [
      ['condition', 'devices/condition-definitions.csv', 'there'],
      ['property', 'devices/properties.csv', 'here'],
      ['property-if-known', 'devices/properties.csv', 'here'],
      ['warm-leakage', 'devices/properties.csv', 'here'],
      ['bias', 'devices/properties.csv', 'here'],
      ['old-bias', 'devices/properties.csv', 'here'],
    ] as const
  ).map(([takes, table, other]) => ({
    what: `what is taken as ${takes} is a name of ${table}`,
    tables: {
      'devices/findings.csv': ['sum', 'pulse-edge'],
      'devices/condition-definitions.csv': ['id', 'known', 'here'],
      'devices/properties.csv': ['id', 'known', 'there'],
      'devices/sum-inputs.csv': [
        'sum,input,takes,of',
        `pulse-edge,swing,${takes},known`,
        `pulse-edge,swing,${takes},${other}`,
      ],
    },
    faults: [{ at: 'devices/sum-inputs.csv:3:of', says: [`not found in ${table}`] }],
  })),
]);
