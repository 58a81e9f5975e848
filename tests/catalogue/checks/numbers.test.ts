import { describe, expect, test } from 'vitest';
import {
  capacitanceBounds,
  capacitances,
} from '../../../src/catalogue/checks/capacitance-bounds.ts';
import { conditionBounds } from '../../../src/catalogue/checks/condition-bounds.ts';
import { conditionNumber } from '../../../src/catalogue/checks/condition-number.ts';
import { figureBounds } from '../../../src/catalogue/checks/figure-bounds.ts';
import { limitUnit } from '../../../src/catalogue/checks/limit-unit.ts';
import { numberOrder, orders } from '../../../src/catalogue/checks/number-order.ts';
import { unitKind } from '../../../src/catalogue/checks/unit-kind.ts';
import type { TableName } from '../../../src/catalogue/read-folder.ts';
import { tables as registry } from '../../../src/schemas/tables.ts';
import type { Table } from '../../../src/schemas/table.ts';
import { madeTables, testRule } from './made-tables.ts';

testRule('number-order', numberOrder, [
  {
    what: 'rising, equal, alone, or none',
    tables: { 'figures.csv': ['min,typ,max', '1,2,3', '2,2,2', ',5,', ',,', '-3,,-2', '1,,1'] },
    faults: [],
  },
  {
    what: 'a middle below its least, a greatest below its middle, and one below what stands before',
    tables: { 'figures.csv': ['min,typ,max', '10,2,3', '1,3,2', '-2,,-3'] },
    faults: [
      { at: 'figures.csv:2:typ', says: ['typ against min', 'a number not below 10'] },
      { at: 'figures.csv:3:max', says: ['max against typ', 'not below 3'] },
      { at: 'figures.csv:4:max', says: ['max against min', 'not below -2'] },
    ],
  },
  {
    what: 'a span from a number to the same one, which holds nothing',
    tables: { 'derating.csv': ['from_c,to_c', '85,125', '85,85', '85,70'] },
    faults: [
      { at: 'derating.csv:3:to_c', says: ['a number above 85'] },
      { at: 'derating.csv:4:to_c', says: ['a number above 85'] },
    ],
  },
  {
    what: 'a row with another fault is left until that is mended',
    tables: { 'figures.csv': ['min,typ,max', '!3,2,1'] },
    faults: [],
  },
]);

describe('columns whose numbers rise', () => {
  test.each(orders.map(({ file, columns }) => [file, columns] as const))(
    '%s: %j: there are such columns, and they hold numbers',
    (file, columns) => {
      expect(columns.length).toBeGreaterThan(1);
      const { row }: Table = registry[file];
      for (const column of columns)
        expect(row.shape[column]?.safeParse('1')).toMatchObject({ data: 1 });
    },
  );

  /** Words for the two ends of a span, as columns have them. */
  const ENDS = [
    ['min', 'max'],
    ['low', 'high'],
    ['lowest', 'highest'],
    ['from', 'to'],
    ['from', 'below'],
    ['above', 'up_to'],
    ['fewest', 'most'],
    ['limit', 'limit_high'],
  ] as const;

  const isNumber = ({ row }: Table, column: string): boolean =>
    row.shape[column]?.safeParse('1').data === 1;

  test('are the ends of every span of numbers that a table has', () => {
    const spans = Object.entries(registry).flatMap(([file, table]) =>
      Object.keys(table.row.shape).flatMap((low) =>
        ENDS.flatMap(([from, to]) => {
          const high = low.replace(new RegExp(`(?<![a-z])${from}(?![a-z])`), to);
          const areEnds = high !== low && isNumber(table, low) && isNumber(table, high);
          return areEnds ? [{ file, ends: [low, high] }] : [];
        }),
      ),
    );
    expect(spans.length).toBeGreaterThan(50);
    const open = spans.filter(
      ({ file, ends }) =>
        !orders.some((one) => one.file === file && ends.every((end) => one.columns.includes(end))),
    );
    expect(open).toEqual([]);
  });

  /** Spans of which both ends are one number: of a temperature or a year there is then nothing. */
  const EMPTY: [TableName, string, string][] = [
    ['ripple-by-frequency.csv', 'c_min', 'c_max'],
    ['properties.csv', 'lowest', 'highest'],
    ['condition-definitions.csv', 'lowest', 'highest'],
    ['derating.csv', 'from_c', 'to_c'],
    ['category-voltages.csv', 'category_v', 'rated_v'],
    ['category-voltages.csv', 'from_c', 'to_c'],
    ['triage.csv', 'v_from', 'v_to'],
    ['leakage-limits.csv', 'v_from', 'v_to'],
    ['reforming.csv', 'v_from', 'v_to'],
    ['kinds/kinds.csv', 'lowest', 'highest'],
    ['kinds/kinds.csv', 'rating_lowest', 'rating_highest'],
    ['kinds/properties.csv', 'lowest', 'highest'],
    ['look/questions.csv', 'lowest', 'highest'],
    ['look/signs.csv', 'low', 'high'],
    ['markings/value-forms.csv', 'years_from', 'years_to'],
    ['markings/tolerance-letters.csv', 'from_f', 'below_f'],
    ['markings/class2-codes.csv', 't_min', 't_max'],
    ['markings/colour-meanings.csv', 'from_f', 'below_f'],
    ['markings/value-forms.csv', 'ratio_min', 'ratio_max'],
    ['derating.csv', 'above_v', 'up_to_v'],
    ['devices/properties.csv', 'lowest', 'highest'],
    ['devices/condition-definitions.csv', 'lowest', 'highest'],
    ['job/bench-fields.csv', 'lowest', 'highest'],
    ['job/lead-forming.csv', 'lead_from', 'lead_to'],
  ];
  test.each(EMPTY)('%s: from %s to the same %s is a fault', (file, low, high) => {
    const faults = numberOrder.check(madeTables({ [file]: [`${low},${high}`, '60,60'] }));
    expect(faults.map(({ line, column }) => [line, column])).toEqual([[2, 4]]);
  });

  const strict = new Set(EMPTY.map((span) => span.join(' ')));
  const ranges = orders.flatMap(({ file, columns }) =>
    columns.slice(1).flatMap((high, index): [TableName, string, string][] => {
      const low = columns[index] ?? '';
      return strict.has(`${file} ${low} ${high}`) ? [] : [[file, low, high]];
    }),
  );
  test.each(ranges)('%s: %s and %s may be one number, and fall for a fault', (file, low, high) => {
    const at = (row: string) =>
      numberOrder.check(madeTables({ [file]: [`${low},${high}`, row] })).map((one) => one.column);
    expect(at('2,2')).toEqual([]);
    expect(at('3,2')).toEqual([3]);
  });
});

testRule('out-of-bounds', capacitanceBounds, [
  {
    what: 'from a tenth of a picofarad to ten farads, both counted',
    tables: { 'market.csv': ['c_min,c_max', '1e-13,10', '4.7e-9,1e-6', ',1e-6'] },
    faults: [],
  },
  {
    what: 'in picofarad or microfarad instead of farad',
    tables: { 'market.csv': ['c_min,c_max', '1e-14,1e-6', '1e-9,47', '!1,100'] },
    faults: [
      { at: 'market.csv:2:c_min', says: ['1e-13 to 10 F'] },
      { at: 'market.csv:3:c_max', says: ['1e-13 to 10 F'] },
    ],
  },
]);

describe('columns that hold capacitances', () => {
  const columns = capacitances.flatMap(({ file, columns: of }) =>
    of.map((one) => [file, one] as const),
  );
  test.each(columns)('%s: %s', (file, column) => {
    expect(capacitanceBounds.check(madeTables({ [file]: [column, '20'] }))).toHaveLength(1);
  });
  test.each(capacitances)('$file has some', ({ columns: of }) => {
    expect(of).not.toEqual([]);
  });
  test('are in seven tables', () => {
    expect(new Set(capacitances.map(({ file }) => file)).size).toBe(7);
  });
});

testRule('out-of-bounds', conditionBounds, [
  {
    what: 'up to both ends of what is allowed',
    tables: {
      'condition-definitions.csv': ['id,lowest,highest,unit', 'heat,-40,85,degC'],
      'conditions.csv': ['condition,min,typ,max', 'heat,-40,25,85', 'unheard,1,2,3'],
    },
    faults: [],
  },
  {
    what: 'below, above, and what nothing is said of',
    tables: {
      'condition-definitions.csv': ['id,lowest,highest,unit', 'heat,-40,85,degC'],
      'conditions.csv': ['condition,min,typ,max', 'heat,-41,25,90', 'heat,,100,'],
    },
    faults: [
      { at: 'conditions.csv:2:min', says: ['heat cannot', '-40 to 85 degC'] },
      { at: 'conditions.csv:2:max', says: ['-40 to 85 degC'] },
      'conditions.csv:3:typ',
    ],
  },
  {
    what: 'what follows from the old part is a share or a product, of any size above zero',
    tables: {
      'condition-definitions.csv': ['id,lowest,highest,unit', 'across,1,100,V'],
      'conditions.csv': [
        'condition,typ,max,follows',
        'across,0.7,,rated-voltage',
        'across,5000,,corner',
        'across,0,-1,charge',
      ],
    },
    faults: [
      { at: 'conditions.csv:4:typ', says: ['a number above zero'] },
      { at: 'conditions.csv:4:max', says: ['a number above zero'] },
    ],
  },
]);

testRule('out-of-bounds', conditionBounds, [
  {
    what: 'a number of a use of devices, which stays one where it follows from the old part',
    tables: {
      'devices/condition-definitions.csv': ['id,lowest,highest,unit', 'supply,0,60,V'],
      'devices/conditions.csv': [
        'condition,min,typ,max,follows',
        'supply,5,15,30,',
        'supply,,61,,',
        'supply,,12,,rating',
        'supply,,-12,61,rating',
      ],
    },
    faults: [
      { at: 'devices/conditions.csv:3:typ', says: ['supply cannot', '0 to 60 V'] },
      'devices/conditions.csv:5:typ',
      'devices/conditions.csv:5:max',
    ],
  },
]);

testRule('condition-number', conditionNumber, [
  {
    what: 'the same of a use of devices',
    tables: { 'devices/conditions.csv': ['condition,min,typ,max', 'heat,1,2,3', 'cold,1,,3'] },
    faults: ['devices/conditions.csv:3:typ'],
  },
  {
    what: 'a condition without its typical number',
    tables: { 'conditions.csv': ['condition,min,typ,max', 'heat,1,2,3', 'cold,1,,3', 'load,,0,'] },
    faults: [{ at: 'conditions.csv:3:typ', says: ['no default for cold'] }],
  },
]);

/** Two units of a resistance, one of a voltage, and temperatures with a zero of their own. */
const UNITS = ['unit,si,factor', 'ohm,ohm,1', 'kohm,ohm,1000', 'V,V,1', 'mV,V,0.001'];

const PROPERTIES = [
  'id,unit,lowest,highest',
  'esr,ohm,0.001,1000',
  'drift,mV,-5,5',
  'tall,unheard,0,1',
];

testRule('out-of-bounds', figureBounds, [
  {
    what: 'at the very ends, in the unit of the property and in another of its kind',
    tables: {
      'units.csv': UNITS,
      'properties.csv': PROPERTIES,
      'figures.csv': [
        'property,unit,min,typ,max',
        'esr,ohm,0.001,1,1000',
        'esr,kohm,1e-6,,1',
        'drift,mV,-5,0,5',
        'drift,V,-0.005,,0.005',
        'tall,ohm,1e99,,',
        'esr,unheard,1e99,,',
        'unheard,ohm,1e99,,',
      ],
    },
    faults: [],
  },
  {
    what: 'a unit of another kind is another rule, and not reckoned with',
    tables: {
      'units.csv': UNITS,
      'properties.csv': PROPERTIES,
      'figures.csv': ['property,unit,typ', 'esr,V,1e9'],
    },
    faults: [],
  },
  {
    what: 'a little outside, each end by itself',
    tables: {
      'units.csv': UNITS,
      'properties.csv': PROPERTIES,
      'figures.csv': [
        'property,unit,min,typ,max',
        'esr,ohm,0.00099,,1001',
        'esr,kohm,,1.1,',
        'drift,mV,-5.1,,',
        'drift,V,,,0.0051',
      ],
    },
    faults: [
      { at: 'figures.csv:2:min', says: ['esr cannot', '0.001 to 1000 ohm'] },
      'figures.csv:2:max',
      'figures.csv:3:typ',
      { at: 'figures.csv:4:min', says: ['drift cannot', '-5 to 5 mV'] },
      'figures.csv:5:max',
    ],
  },
  {
    // The room at a bound is a billionth of it, or of the span for one at or below zero:
    // a hundred-millionth short is outside, a hundred-billionth is the rounding of a conversion.
    what: 'room for rounding, and no more',
    tables: {
      'units.csv': UNITS,
      'properties.csv': PROPERTIES,
      'figures.csv': [
        'property,unit,min,typ,max',
        'esr,ohm,0.00099999999999,,1000.00000001',
        'esr,ohm,0.00099999999,,1000.00001',
        'drift,mV,-5.0000000001,,5.0000000001',
        'drift,mV,-5.0000001,,5.0000001',
      ],
    },
    faults: ['figures.csv:3:min', 'figures.csv:3:max', 'figures.csv:5:min', 'figures.csv:5:max'],
  },
  {
    what: 'figures and properties of other kinds of part',
    tables: {
      'units.csv': UNITS,
      'kinds/properties.csv': ['id,unit,lowest,highest', 'turns,ohm,0,30'],
      'kinds/figures-by-value.csv': ['property,unit,typ', 'turns,ohm,31', 'turns,ohm,30'],
    },
    faults: ['kinds/figures-by-value.csv:2:typ'],
  },
]);

testRule('unit-kind', unitKind, [
  {
    what: 'a unit of the kind, one of another, and ones that there are not',
    tables: {
      'units.csv': UNITS,
      'properties.csv': PROPERTIES,
      'figures.csv': [
        'property,unit',
        'esr,kohm',
        'esr,mV',
        'esr,furlong',
        'tall,ohm',
        'unheard,ohm',
      ],
    },
    faults: [{ at: 'figures.csv:3:unit', says: ['than esr has', '; ohm or kohm; '] }],
  },
  {
    what: 'the same of other kinds of part',
    tables: {
      'units.csv': UNITS,
      'kinds/properties.csv': ['id,unit', 'noise,V'],
      'kinds/figures-by-value.csv': ['property,unit', 'noise,ohm', 'noise,mV'],
    },
    faults: [{ at: 'kinds/figures-by-value.csv:2:unit', says: ['; V or mV; '] }],
  },
]);

testRule('limit-unit', limitUnit, [
  {
    what: 'a limit of the kind of its finding, of another, and what is not known',
    tables: {
      'units.csv': UNITS,
      'findings.csv': ['id,unit', 'loss,kohm', 'odd,furlong'],
      'condition-definitions.csv': ['id,unit', 'source,ohm', 'across,mV', 'far,furlong'],
      'demands.csv': [
        'finding,limit_of',
        'loss,source',
        'loss,across',
        'loss,',
        'loss,unheard',
        'unheard,across',
        'loss,far',
        'odd,across',
      ],
    },
    faults: [
      {
        at: 'demands.csv:3:limit_of',
        says: ['a condition in mV', 'a finding in kohm', 'a number of ohm'],
      },
    ],
  },
]);
