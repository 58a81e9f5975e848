import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { sliceKindPosition } from '../../../src/catalogue/slices/slice-kind.ts';
import { dropped } from '../../../src/catalogue/slices/slice-pieces.ts';
import { sliceDevices } from '../../../src/catalogue/slices/slice-devices.ts';
import { sliceDrawings, sliceJob } from '../../../src/catalogue/slices/slice-job.ts';
import { sliceLook } from '../../../src/catalogue/slices/slice-look.ts';
import { slicePosition } from '../../../src/catalogue/slices/slice-position.ts';
import { sliceColours, sliceReading } from '../../../src/catalogue/slices/slice-reading.ts';
import type { Catalogue } from '../../../src/engine/index.ts';

/** What a slice carries, of which every page that fetches it has the weight. */

const catalogue = loadCatalogue();

/** Columns that are words for people. */
const WORDS = [
  ...['locator', 'note', 'source', 'basis', 'meaning', 'summary', 'appearance', 'failure'],
  ...['larger', 'smaller', 'text', 'about', 'equation', 'publisher', 'url', 'trap', 'hint'],
  ...['view', 'one', 'symptom', 'fill', 'drawn', 'word'],
];

const GROUPS = ['markings', 'look', 'job', 'devices'];

/** Every table of a catalogue by its name, with its rows. */
const tablesOf = (all: Catalogue): [string, Record<string, unknown>[]][] =>
  Object.entries(all).flatMap(([name, table]) => {
    if (name === 'knowledge' || name === 'bands') return [];
    const inner = table as Record<string, Record<string, unknown>[]>;
    return GROUPS.includes(name)
      ? Object.entries(inner).map(
          ([one, rows]) => [`${name}.${one}`, rows] as [string, typeof rows],
        )
      : [[name, Object.values(inner) as unknown as Record<string, unknown>[]]];
  });

const saysSomething = (cell: unknown): boolean => typeof cell === 'string' && cell !== '';

/** Tables that hold rows, each with the columns of words that are not blank in all of them. */
const carriedBy = (slice: Catalogue): Record<string, string> =>
  Object.fromEntries(
    tablesOf(slice)
      .filter(([, rows]) => rows.length > 0)
      .map(([name, rows]) => [
        name,
        WORDS.filter((word) => rows.some((row) => saysSomething(row[word]))).join(' '),
      ]),
  );

const CITED = 'source basis';

describe('tables and words', () => {
  test('of a position: what its findings, their sums and the rules to judge by are worked out from', () => {
    expect(carriedBy(slicePosition(catalogue, 'sample-hold'))).toEqual({
      sources: '',
      units: '',
      types: CITED,
      families: '',
      properties: '',
      absorptionTests: `locator note ${CITED}`,
      offers: CITED,
      bodies: CITED,
      seriesResistance: CITED,
      valueLists: 'basis',
      voltages: 'basis',
      positions: CITED,
      conditionDefinitions: '',
      conditions: 'basis',
      demands: CITED,
      findings: CITED,
      sumInputs: '',
      verdictRules: 'meaning',
      guidelines: 'basis',
      derating: CITED,
      categoryVoltages: CITED,
      mountings: '',
      seldomStyles: '',
      rulesOfThumb: '',
      combinations: CITED,
      triage: `locator note ${CITED}`,
      esrOfNew: 'basis',
      leakageLimits: 'basis',
      reforming: CITED,
    });
  });

  test('of a position of another kind', () => {
    expect(carriedBy(sliceKindPosition(catalogue, 'gain-resistor'))).toEqual({
      sources: '',
      units: '',
      properties: '',
      kinds: 'summary',
      kindTypes: CITED,
      kindPositions: 'basis',
      kindOffers: CITED,
      // A page says the note of what an old part is judged by.
      kindTriage: `note ${CITED}`,
      kindValues: 'basis',
      conditionDefinitions: '',
      conditions: 'basis',
      demands: CITED,
      findings: CITED,
      mountings: '',
      seldomStyles: '',
      rulesOfThumb: '',
      sumInputs: '',
      verdictRules: 'meaning',
    });
  });

  /** What is found by names: types, positions and devices, whatever else a slice is for. */
  const NAMED = {
    units: '',
    types: `${CITED} summary`,
    kinds: 'summary',
    kindTypes: CITED,
    kindPositions: CITED,
    positions: `${CITED} summary`,
    unlikelyPairs: '',
    'job.kindWords': 'word',
    'job.besideKindWords': 'word',
    'job.toldKinds': '',
    'job.usualParts': '',
    'job.usualPlaces': '',
    'job.designatorLetters': '',
    'devices.families': '',
    'devices.functions': '',
    'devices.devices': '',
    'devices.pinouts': '',
    'devices.uses': '',
    'devices.affixes': 'meaning text',
    'devices.besideWords': 'meaning',
    'devices.numberSystems': '',
    'devices.knownNumbers': '',
  };
  const withoutMarkings = (carried: Record<string, string>): Record<string, string> =>
    Object.fromEntries(Object.entries(carried).filter(([name]) => !name.startsWith('markings.')));
  const markingsOf = (carried: Record<string, string>): string[] =>
    Object.keys(carried).flatMap((name) => (name.startsWith('markings.') ? [name.slice(9)] : []));

  /** A row of what is printed without where it was found, and what only its page says. */
  const whatIsRead = (row: Partial<Record<'locator' | 'basis' | 'note', unknown>>) =>
    dropped(row, ['locator', 'basis', 'note']);
  /** Tables whose notes stand beside what may be printed. */
  const withNotes = [
    ...['printedUnits', 'valueForms', 'pointLetters', 'mantissaLetters', 'resistorForms'],
    ...['toleranceLetters', 'dielectricCodes', 'tapers', 'arrangements'],
  ];

  test('of reading: all that is printed and read, whole, and of colours their names', () => {
    const slice = sliceReading(catalogue);
    const carried = carriedBy(slice);
    const words = (one: string) => one.split(' ').toSorted();
    expect(
      Object.entries(withoutMarkings(carried)).map(([name, said]) => [name, words(said)]),
    ).toEqual(
      expect.arrayContaining(Object.entries(NAMED).map(([name, said]) => [name, words(said)])),
    );
    expect(Object.keys(withoutMarkings(carried)).toSorted()).toEqual(
      [
        ...Object.keys(NAMED),
        'benchWords',
        'inPlaceOf',
        'kindOffers',
        'mountings',
        'series',
        'rulesOfThumb',
      ].toSorted(),
    );
    const printed = Object.keys(catalogue.markings).filter(
      (name) => (!name.startsWith('colour') || name === 'colours') && name !== 'ambiguities',
    );
    expect(markingsOf(carried).toSorted()).toEqual(printed.toSorted());
    const shortened = ['colours', 'temperatureSystems', 'markGroups', 'metCodes', 'voltageSchemes'];
    for (const name of printed.filter((one) => !shortened.includes(one))) {
      const table = name as keyof Catalogue['markings'];
      expect(slice.markings[table], name).toEqual(
        catalogue.markings[table].map((row) =>
          withNotes.includes(name) ? dropped(row, ['locator', 'basis']) : whatIsRead(row),
        ),
      );
    }
    // Of ways of writing a code only what the reader goes by, and what finds the pages of codes.
    const { temperatureSystems, markGroups, metCodes, voltageSchemes } = catalogue.markings;
    expect(slice.markings.temperatureSystems).toEqual(
      temperatureSystems.map((row) => whatIsRead(dropped(row, ['letter_where']))),
    );
    expect(slice.markings.markGroups).toEqual(
      markGroups.map(({ id, says, form }) => ({ id, says, form })),
    );
    expect(slice.markings.metCodes).toEqual(
      metCodes.map(({ system, begins, ends }) => ({ system, begins, ends })),
    );
    expect(slice.markings.voltageSchemes).toEqual(
      voltageSchemes.map(({ id, stands }) => ({ id, stands })),
    );
    expect(carried['markings.colours']).toBe('basis');
    expect(slice.markings.colours).toHaveLength(catalogue.markings.colours.length);
  });

  test('of colours: no series, printed marks, words of lists nor devices, and all that colours say', () => {
    const carried = carriedBy(sliceColours(catalogue));
    const named = Object.keys(NAMED).filter((name) => !/^(?:devices|job)\./u.test(name));
    expect(Object.keys(withoutMarkings(carried)).toSorted()).toEqual(
      [...named, 'rulesOfThumb'].toSorted(),
    );
    expect(markingsOf(carried).toSorted()).toEqual([
      'class1Codes',
      'colourForms',
      'colourLayouts',
      'colourMeanings',
      'colourSchemes',
      'colourWeights',
      'colours',
      'oldMantissas',
      'seriesTolerances',
      'temperatureSystems',
    ]);
    expect(carried['markings.colours']).toBe('basis fill');
    expect(carried['markings.colourMeanings']).toBe(`${CITED} word`);
    expect(carried['markings.colourSchemes']).toBe(`locator note ${CITED} about`);
  });

  test('of looks: all styles and questions, without what their pages say', () => {
    expect(carriedBy(sliceLook(catalogue))).toEqual({
      units: '',
      cautions: 'basis',
      'markings.colours': 'basis fill',
      'look.styles': 'basis',
      'look.kinds': '',
      'look.questions': '',
      'look.answers': '',
      'look.features': `note ${CITED}`,
      'look.ranges': `note ${CITED}`,
      'look.disguises': CITED,
      'look.drawings': '',
      'look.weights': CITED,
      'look.signs': `note ${CITED}`,
    });
  });

  test('of a job: what its papers say', () => {
    expect(carriedBy(sliceJob(catalogue))).toEqual({
      units: '',
      types: `${CITED} summary`,
      kinds: 'summary',
      kindTypes: CITED,
      cautions: `locator note ${CITED} text`,
      mountings: '',
      rulesOfThumb: '',
      'job.fittingOrder': `note ${CITED}`,
      'job.closingChecks': CITED,
      'job.benchFields': `${CITED} hint`,
      'job.leadForming': `locator note ${CITED}`,
      'job.columnWords': `${CITED} word`,
      'job.designatorLetters': 'basis',
      'devices.devices': 'basis',
    });
  });

  test('of drawings: looks, and of colours those of bands alone', () => {
    expect(carriedBy(sliceDrawings(catalogue))).toEqual({
      typeLooks: CITED,
      'markings.colours': 'basis fill',
      'markings.toleranceLetters': 'basis',
      'markings.colourSchemes': 'basis',
      'markings.colourMeanings': 'basis',
      'job.packageLooks': CITED,
      'job.partOutlines': CITED,
    });
  });

  test('of a family of devices: its own devices, whole but for where they come from', () => {
    const carried = carriedBy(sliceDevices(catalogue, 'switch'));
    expect(carried).toMatchObject({
      sources: '',
      units: '',
      verdictRules: 'meaning',
      'devices.devices': `${CITED} summary trap`,
      'devices.figures': CITED,
      'devices.pins': CITED,
      'devices.demands': CITED,
    });
    for (const name of ['affixes', 'besideWords', 'numberSystems', 'knownNumbers'])
      expect(carried).not.toHaveProperty([`devices.${name}`]);
  });
});

/** Every source that rows and figures of a slice name. */
const citedBy = (slice: Catalogue): Set<string> =>
  new Set([
    ...tablesOf(slice).flatMap(([, rows]) => rows.map((row) => row['source'])),
    ...Object.values(slice.knowledge).flatMap((one) =>
      Object.values(one).flatMap(({ sources }) => sources),
    ),
    ...Object.values(slice.bands).flatMap((one) =>
      Object.values(one).flatMap((bands) => bands.flatMap(({ knowledge }) => knowledge.sources)),
    ),
  ] as string[]);

describe.each([
  ['sample-hold', slicePosition],
  ['pitch-timing', slicePosition],
  ['smps-output', slicePosition],
  ['gain-resistor', sliceKindPosition],
] as const)('rows of the position %s', (position, slice) => {
  const own = slice(catalogue, position);

  test('are its conditions and demands, with what they name, and no other', () => {
    for (const table of ['conditions', 'demands'] as const) {
      expect(own[table].every((row) => row.position === position)).toBe(true);
      expect(own[table]).toHaveLength(
        catalogue[table].filter((row) => row.position === position).length,
      );
    }
    expect(new Set(Object.keys(own.findings))).toEqual(
      new Set(own.demands.map(({ finding }) => finding)),
    );
    expect(new Set(Object.keys(own.conditionDefinitions))).toEqual(
      new Set(own.conditions.map(({ condition }) => condition)),
    );
  });

  test('know of every property that a finding needs, or a sum that it leads to', () => {
    const { ordered = [] } = Object.values(own.kinds)[0] ?? {};
    const needed = new Set(
      [
        ...ordered,
        ...Object.values(own.findings).flatMap(({ properties }) => properties),
        ...own.sumInputs.flatMap(({ takes, of }) => (takes === 'words' ? [] : of)),
      ].filter((id) => Object.hasOwn(catalogue.properties, id)),
    );
    expect(Object.keys(own.properties)).toEqual(expect.arrayContaining([...needed]));
    const one = Object.values(own.kinds)[0]?.id;
    expect(Object.keys(own.knowledge).toSorted()).toEqual(
      one === undefined
        ? Object.keys(catalogue.knowledge).toSorted()
        : Object.keys(own.kindTypes).toSorted(),
    );
    expect(Object.values(own.kindTypes).every(({ kind }) => kind === one)).toBe(true);
    expect(own.kindOffers.every(({ type }) => Object.hasOwn(own.kindTypes, type))).toBe(true);
    for (const [type, known] of Object.entries(own.knowledge))
      for (const property of needed)
        expect(known[property]).toEqual(catalogue.knowledge[type]?.[property]);
    // Two parts put together may need a few more.
    expect(Object.keys(own.properties).length).toBeLessThan(needed.size + 12);
  });

  test('cite sources with a title, and every title is cited', () => {
    const cited = citedBy(own);
    for (const [id, { title, kind }] of Object.entries(own.sources)) {
      expect([...cited], id).toContain(id);
      expect({ title, kind }).toEqual({
        title: catalogue.sources[id]?.title,
        kind: catalogue.sources[id]?.kind,
      });
    }
    // What findings are worked out from is cited beside them; what only sorts or sums up is not.
    const beside = ['demands', 'findings', 'offers', 'kindOffers', 'derating', 'categoryVoltages'];
    const sized = ['bodies', 'seriesResistance', 'pulseRatings', 'coreRises', 'combinations'];
    const rows = tablesOf(own).flatMap(([name, all]) =>
      [...beside, ...sized].includes(name) ? all : [],
    );
    const known = [
      ...Object.values(own.knowledge).flatMap((one) => Object.values(one)),
      ...Object.values(own.bands).flatMap((one) =>
        Object.values(one).flatMap((bands) => bands.map(({ knowledge }) => knowledge)),
      ),
    ];
    const named = [...rows.map(({ source }) => source), ...known.flatMap(({ sources }) => sources)];
    for (const source of new Set(named)) expect(own.sources).toHaveProperty([source as string]);
  });
});

test('a position that no kind has is a mistake', () => {
  expect(() => sliceKindPosition(catalogue, 'sample-hold')).toThrow(/sample-hold/);
});

test('drawings have the colours of the schemes of bands that are drawn, and no other meaning', () => {
  const { colourSchemes, colourMeanings } = sliceDrawings(catalogue).markings;
  expect(colourSchemes.length).toBeGreaterThan(1);
  expect(colourSchemes.every(({ places }) => places.length > 0)).toBe(true);
  const codes = new Set(colourSchemes.flatMap((scheme) => scheme.codes));
  expect(new Set(colourMeanings.map(({ code }) => code))).toEqual(codes);
  expect(colourMeanings.every(({ types }) => types.length === 0)).toBe(true);
});

test('a key to looks warns of what is dangerous in some types, and knows the units it asks in', () => {
  const { cautions, units, look } = sliceLook(catalogue);
  expect(cautions.length).toBeGreaterThan(0);
  const dangers = catalogue.cautions.filter((row) => row.severity === 'danger');
  expect(cautions.map(({ id }) => id)).toEqual(
    dangers.filter(({ types }) => types.length > 0).map(({ id }) => id),
  );
  const asked = [...look.questions, ...look.ranges].map(({ unit }) => unit);
  expect(new Set(Object.keys(units))).toEqual(
    new Set(asked.filter((unit) => Object.hasOwn(catalogue.units, unit))),
  );
});
