import { describe, expect, test } from 'vitest';
import { assembleCatalogue } from '../../../src/catalogue/assemble.ts';
import { valuesOf } from '../../../src/catalogue/read-folder.ts';
import { settleBands, type BandTable } from '../../../src/catalogue/settle-bands.ts';
import { deviceTables } from '../../../src/schemas/device-tables.ts';
import { jobTables } from '../../../src/schemas/job-tables.ts';
import { lookTables } from '../../../src/schemas/look-tables.ts';
import { markingTables } from '../../../src/schemas/marking-tables.ts';
import { tables as registry } from '../../../src/schemas/tables.ts';
import { madeTables, type MadeTables } from '../checks/made-tables.ts';

/** Tables by the name that the catalogue has for them, each as it was read. */
const LISTS = {
  figures: 'figures.csv',
  bandedFigures: 'kinds/figures-by-value.csv',
  offers: 'market.csv',
  kindOffers: 'kinds/offers.csv',
  kindTriage: 'kinds/triage.csv',
  kindValues: 'kinds/values.csv',
  bodies: 'bodies.csv',
  typeLooks: 'type-looks.csv',
  seriesResistance: 'series-resistance.csv',
  rippleByFrequency: 'ripple-by-frequency.csv',
  rippleByTemperature: 'ripple-by-temperature.csv',
  coreRises: 'core-rise.csv',
  pulseRatings: 'pulse-ratings.csv',
  series: 'e-series.csv',
  valueLists: 'value-lists.csv',
  voltages: 'voltages.csv',
  positionNotes: 'position-notes.csv',
  conditions: 'conditions.csv',
  demands: 'demands.csv',
  sumInputs: 'sum-inputs.csv',
  verdictRules: 'verdict-rules.csv',
  unlikelyPairs: 'unlikely-pairs.csv',
  derating: 'derating.csv',
  categoryVoltages: 'category-voltages.csv',
  triage: 'triage.csv',
  esrOfNew: 'esr-of-new.csv',
  leakageLimits: 'leakage-limits.csv',
  reforming: 'reforming.csv',
  cautions: 'cautions.csv',
} as const;

/** Those whose rows are found by their id. */
const BY_ID = {
  sources: 'sources.csv',
  types: 'types.csv',
  families: 'families.csv',
  absorptionTests: 'absorption-tests.csv',
  kinds: 'kinds/kinds.csv',
  kindTypes: 'kinds/types.csv',
  kindPositions: 'kinds/positions.csv',
  positions: 'positions.csv',
  conditionDefinitions: 'condition-definitions.csv',
  findings: 'findings.csv',
  guidelines: 'guidelines.csv',
} as const;

describe('the catalogue', () => {
  test.each(Object.entries(LISTS))(
    '%s: the rows of %s',
    (name, file) => {
      const [column = ''] = Object.keys(registry[file].row.shape);
      const tables = madeTables({ [file]: [column, '', '!', ''] });
      const rows = valuesOf(tables, file);
      expect(rows).toHaveLength(2);
      expect(assembleCatalogue(tables)).toMatchObject({ [name]: rows });
    },
    0,
  );

  test.each(Object.entries(BY_ID))('%s: the rows of %s by their id', (name, file) => {
    const tables = madeTables({ [file]: ['id', 'one', '!two', 'three'] });
    const [one, three] = valuesOf(tables, file);
    expect(assembleCatalogue(tables)).toMatchObject({ [name]: { one, three } });
  });

  test('combinations by theirs', () => {
    const tables = madeTables({ 'combinations.csv': ['id', 'series'] });
    expect(Object.keys(assembleCatalogue(tables).combinations)).toEqual(['series']);
  });

  test('rules of thumb by their id, in SI', () => {
    const tables = madeTables({
      'rules-of-thumb.csv': ['id,values,unit', 'least-body,0.5,cm3', 'resistor-powers,1;2,W'],
      'units.csv': ['unit,factor', 'cm3,1e-6', 'W,1'],
    });
    const { rulesOfThumb } = assembleCatalogue(tables);
    expect(rulesOfThumb).toEqual({ 'least-body': [0.5e-6], 'resistor-powers': [1, 2] });
  });

  test('properties of all kinds of part, and units by what they are called', () => {
    const tables = madeTables({
      'properties.csv': ['id', 'loss'],
      'kinds/properties.csv': ['id', 'noise'],
      'units.csv': ['unit,factor', 'mV,0.001'],
    });
    const { properties, units } = assembleCatalogue(tables);
    expect(Object.keys(properties)).toEqual(['loss', 'noise']);
    expect(units['mV']).toMatchObject({ factor: 0.001 });
  });

  test.each([
    ['markings', markingTables],
    ['look', lookTables],
    ['job', jobTables],
    ['devices', deviceTables],
  ] as const)('%s: tables by their own names', (group, registry) => {
    const files = Object.entries(registry);
    const [[file, { name, row }] = ['', { name: '', row: { shape: {} } }]] = files;
    const [column = ''] = Object.keys(row.shape);
    const made = assembleCatalogue(madeTables({ [file]: [column, '', ''] }))[group];
    expect(Object.keys(made)).toEqual(files.map(([, table]) => table.name));
    expect((made as unknown as Record<string, unknown[]>)[name]).toHaveLength(2);
  });

  test('what figures come to, of capacitors and of other parts, by type and by band', () => {
    const { knowledge, bands } = assembleCatalogue(
      madeTables({
        'units.csv': ['unit,factor', 'mV,0.001'],
        'types.csv': ['id,union_of', 'foil,', 'mica,', 'either,foil;mica'],
        'kinds/types.csv': ['id', 'carbon'],
        'properties.csv': ['id,scale', 'hum,linear'],
        'kinds/properties.csv': ['id,scale', 'noise,linear'],
        'figures.csv': [
          'type,property,typ,unit,status,use,basis,source',
          'foil,hum,2,mV,known,used,published,book',
          'mica,hum,4,mV,known,used,memory,note',
          'carbon,noise,3,mV,known,used,published,book',
        ],
        'kinds/figures-by-value.csv': ['type,property,value_max,typ,unit', 'carbon,noise,100,7,mV'],
      }),
    );
    expect(knowledge['foil']?.['hum']).toMatchObject({ status: 'known', range: { typ: 0.002 } });
    expect(knowledge['either']?.['hum']).toMatchObject({ range: { min: 0.002, max: 0.004 } });
    expect(knowledge['carbon']?.['noise']).toMatchObject({ range: { typ: 0.003 } });
    expect(knowledge['carbon']?.['hum']).toEqual({ status: 'unknown', sources: [] });
    expect(bands['carbon']?.['noise']).toMatchObject([
      { values: { most: 100 }, knowledge: { range: { typ: 0.007 } } },
    ]);
  });
});

describe('figures that go by value or rating', () => {
  const settled = (rows: readonly string[]): BandTable => {
    const made: MadeTables = {
      'units.csv': ['unit,factor', 'ppm/K,1e-6'],
      'kinds/properties.csv': ['id,scale,unit', 'drift,linear,ppm/K', 'noise,linear,ppm/K'],
      'kinds/figures-by-value.csv': [
        'type,property,value_min,value_max,rating_min,rating_max,min,typ,max,unit,source,basis',
        ...rows,
      ],
    };
    const tables = madeTables(made);
    return settleBands(valuesOf(tables, 'kinds/figures-by-value.csv'), {
      properties: valuesOf(tables, 'kinds/properties.csv'),
      absorptionTests: [],
      units: Object.fromEntries(valuesOf(tables, 'units.csv').map((row) => [row.unit, row])),
    });
  };

  test('each band in its order, open where an end is not given', () => {
    const table = settled([
      'carbon,drift,,1e3,,,-5,,5,ppm/K,one,published',
      'carbon,drift,1e3,1e6,,0.5,-7,,7,ppm/K,one,published',
      'carbon,drift,1e6,,2,,-9,,9,ppm/K,one,published',
      'carbon,drift,,,,,-11,,11,ppm/K,one,published',
    ]);
    expect(table['carbon']?.['drift']?.map(({ values, ratings }) => ({ values, ratings }))).toEqual(
      [
        { values: { most: 1e3 }, ratings: undefined },
        { values: { least: 1e3, most: 1e6 }, ratings: { most: 0.5 } },
        { values: { least: 1e6 }, ratings: { least: 2 } },
        { values: undefined, ratings: undefined },
      ],
    );
    const bands = table['carbon']?.['drift'] ?? [];
    expect(bands.map((band) => Object.keys(band))).toEqual([
      ['values', 'knowledge'],
      ['values', 'ratings', 'knowledge'],
      ['values', 'ratings', 'knowledge'],
      ['knowledge'],
    ]);
  });

  test('rows of one band are joined, with the weakest basis and every source', () => {
    const table = settled([
      'carbon,drift,,1e3,,,-5,,5,ppm/K,one,published',
      'carbon,drift,1,1e3,,,-50,,50,ppm/K,one,published',
      'carbon,drift,,1e3,,,-8,,2,ppm/K,two,common-practice',
    ]);
    expect(table['carbon']?.['drift']?.[0]?.knowledge).toMatchObject({
      status: 'known',
      range: { min: expect.closeTo(-8e-6, 12), max: expect.closeTo(5e-6, 12) },
      basis: 'common-practice',
      sources: ['one', 'two'],
    });
    expect(table['carbon']?.['drift']).toHaveLength(2);
  });

  test('the ends of one band are not run together with those of another', () => {
    const table = settled([
      'carbon,drift,1,11,,,1,,2,ppm/K,one,published',
      'carbon,drift,11,1,,,1,,2,ppm/K,one,published',
      'carbon,drift,,1,11,,1,,2,ppm/K,one,published',
      'carbon,drift,,1,,11,1,,2,ppm/K,one,published',
    ]);
    expect(table['carbon']?.['drift']).toHaveLength(4);
  });

  test('types and properties apart, and a property that there is not', () => {
    const table = settled([
      'carbon,drift,,,,,1,,2,ppm/K,one,published',
      'metal,drift,,,,,3,,4,ppm/K,one,published',
      'carbon,noise,,,,,5,,6,ppm/K,one,published',
      'carbon,charm,,,,,7,,8,ppm/K,one,published',
    ]);
    expect(
      Object.entries(table).map(([type, of]) => [
        type,
        Object.entries(of).map(([property, bands]) => [property, bands.length]),
      ]),
    ).toEqual([
      [
        'carbon',
        [
          ['drift', 1],
          ['noise', 1],
          ['charm', 0],
        ],
      ],
      ['metal', [['drift', 1]]],
    ]);
    expect(table['metal']?.['drift']?.[0]?.knowledge).toMatchObject({
      range: { max: expect.closeTo(4e-6, 12) },
    });
  });
});
