import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { guessColumns } from '../../../src/job/list/columns.ts';
import { readDelimited } from '../../../src/job/list/delimited.ts';
import { emptyLine, type Line } from '../../../src/job/model/job.ts';
import { understoodLine } from '../../../src/job/understanding/understood.ts';

/** Lists say in words beside their values what a part is and where it sits. */

const catalogue = loadCatalogue();
const read = (said: Partial<Line>) => understoodLine(catalogue, { ...emptyLine('a'), ...said });
const offered = (said: Partial<Line>, about: 'type' | 'position') =>
  read(said)
    .asks.find((ask) => ask.about === about)
    ?.choices.map(({ set }) => set[about]) ?? [];

describe('where a part sits', () => {
  test.each<[Partial<Line>, string]>([
    [{ kind: 'capacitor', marking: '10µ/63 emitter bypass' }, 'emitter-bypass'],
    [
      { kind: 'capacitor', marking: '2.2uF 50V NP  input coupling' },
      // No electrolytic sits where a grid hangs on megohms.
      'interstage-coupling',
    ],
    [{ kind: 'capacitor', marking: '25/25', note: 'cathode bypass' }, 'cathode-bypass'],
    [{ kind: 'resistor', marking: '1M 1/2W grid leak' }, 'grid-leak'],
    [{ kind: 'resistor', marking: '1M', note: 'grid leak' }, 'grid-leak'],
    // The same words name two places, and the value says which.
    [{ kind: 'resistor', marking: '0.33 5W', note: 'emitter resistor' }, 'output-emitter'],
    [{ kind: 'resistor', marking: '1k', note: 'emitter resistor' }, 'bias-resistor'],
    [{ kind: 'resistor', marking: '100k 1/2W', note: 'plate load, V1' }, 'plate-load'],
    [{ kind: 'capacitor', marking: '220uF x 25V', note: '+15V supply rail' }, 'bulk-rail'],
    [{ kind: 'capacitor', marking: '.005 1kV disc', note: 'power cord to chassis' }, 'mains-y'],
    [{ kind: 'ic', marking: 'TL072', note: 'head amplifier' }, 'amp-mic'],
    [{ kind: 'diode', marking: '1N4148', note: 'AM detector' }, 'diode-detector'],
    [{ kind: 'resistor', value: '1k 10W', marking: 'bleeder' }, 'hv-dropper'],
  ])('is offered first where the list says so: %o', (said, position) => {
    expect(offered(said, 'position')[0]).toBe(position);
  });

  test('is nothing that is printed on the part', () => {
    const { part, asks } = read({ marking: '10µ/63 emitter bypass' });
    expect(part.capacitance?.typ).toBeCloseTo(1e-5, 9);
    expect(asks.map(({ about }) => about)).toEqual(['type', 'position']);
  });

  test.each<[Partial<Line>, number]>([
    [{ kind: 'trimmer', marking: '47k offset trim' }, 47e3],
    [{ kind: 'trimmer', marking: '220R quiescent thing' }, 220],
    [{ kind: 'pot', marking: '10k ten turn' }, 10e3],
  ])('leaves the value of %o', (said, ohm) => {
    expect(read(said).part.value?.typ).toBeCloseTo(ohm, 6);
  });

  test('is otherwise what one looks up most', () => {
    const np = { kind: 'capacitor', marking: '2.2uF 50V NP' };
    const positions = offered(np, 'position');
    expect(positions.indexOf('interstage-coupling')).toBeLessThan(positions.indexOf('motor-run'));
  });
});

describe('what a part is', () => {
  test.each([
    [{ designators: 'R7', marking: '10k x8 SIL' }],
    [{ designators: 'R7', marking: 'resistor network 4k7' }],
  ])('several resistors in one body are no single one: %o', (said) => {
    expect(read(said).part).toMatchObject({ kind: 'resistor-network' });
    expect(read(said).part.family).toBeUndefined();
  });

  test.each([
    ['C302', '470/25 +12 V regulator out', 'capacitor'],
    ['R7', '220R 1/4W regulator', 'resistor'],
    ['Q7', '2SC1815 driver', 'transistor'],
    ['R17', '1 meg audio taper w/switch', 'pot'],
    ['RV3', '10k relay threshold', 'trimmer'],
    ['LS1', '4" speaker 3.2 ohm', 'speaker'],
    ['', '1000uF 35V speaker', 'capacitor'],
    ['M1', 'motor 12V', 'motor'],
    ['C9', '4uF 400VAC motor run', 'capacitor'],
    ['R8', '10k trimmer', 'trimmer'],
    ['C10', '10/40 pF ajustable', 'capacitor'],
    ['C7', '5-30p trim', 'capacitor'],
    ['VR1', '10K reverse log dual gang', 'pot'],
    // What it sits beside is no kind of it, be that a thing without a value.
    ['C4', '22p crystal', 'capacitor'],
    ['C9', '10µ 16V meter', 'capacitor'],
    ['R12', '1k optocoupler', 'resistor'],
    ['R9', '10k meter', 'resistor'],
    ['R5', '10k dal potenziometro', 'resistor'],
    ['C5', '100n dal potenziometro', 'capacitor'],
    ['X1', 'crystal 4 MHz', 'crystal'],
    ['R10', '130 ohm NTC', 'other'],
    // A taper tells a panel control, whatever letters stand for both.
    ['VR1', '1M log vol', 'pot'],
    ['VR2', '250k lin treble', 'pot'],
    ['P1', '100KB', 'pot'],
    ['RV4', '1M A bass', 'pot'],
    ['VR1', '5k log with switch', 'pot'],
    ['RV5', '22k lin bias preset', 'trimmer'],
    ['P3', '1 kΩ ajustable', 'trimmer'],
    ['R3', '4k7', 'resistor'],
    // Words of other languages, with the place of the part in the same ones.
    ['', '100 µF 25 V Elko hinter Gleichrichter', 'capacitor'],
    ['', '10k Kohleschicht', 'resistor'],
    ['', 'Trimmpoti 4,7k', 'trimmer'],
    ['', '22k lin Schieberegler', 'pot'],
    ['', 'condensateur 47n pour le potentiomètre', 'capacitor'],
    ['', 'résistance ajustable 10k', 'trimmer'],
    ['', 'potentiomètre 1M log', 'pot'],
    ['', 'condensatore 100n del trasformatore', 'capacitor'],
    ['', 'resistenza 4,7k', 'resistor'],
    ['', 'potenziometro 100k', 'pot'],
    ['', 'condensador 10u 50V para el relé', 'capacitor'],
    ['', 'Netztrafo 2x12V', 'transformer'],
    ['', 'Quarz 4,433 MHz', 'crystal'],
  ])('%s, %s: its designator tells it from what it sits beside', (designators, marking, kind) => {
    expect(read({ designators, marking }).part.kind).toBe(kind);
  });

  test.each([
    ['Elko axial', 'may be one of several', 'al-electrolytic-wet'],
    ['Tantal', 'may be one of several', 'ta-mno2-solid'],
    ['Keramik N150', 'may be one of several', 'ceramic-disc-unknown'],
    ['what I found', 'is not a type that is known here', undefined],
  ])('where the column of types says %s, which %s', (type, says, first) => {
    const ask = read({ kind: 'capacitor', value: '47p', type }).asks.find(
      ({ about }) => about === 'type',
    );
    expect(ask?.question).toContain(`“${type}” ${says}`);
    if (first !== undefined) expect(ask?.choices[0]?.set.type).toBe(first);
  });

  test('is asked of a pot without a word about what only names its kind', () => {
    const [ask] = read({ kind: 'pot', value: '10k', type: 'poti' }).asks;
    expect(ask?.question).toBe('What type of panel pot is it?');
  });

  test('is no fusible resistor first where nobody says so, nor paper for a few volts', () => {
    const types = offered({ kind: 'resistor', marking: '0.47 ohm 2W' }, 'type');
    expect(types.indexOf('wirewound')).toBeLessThan(types.indexOf('fusible-wirewound'));
    const [first] = offered({ kind: 'capacitor', marking: '4.7uF 25V' }, 'type');
    expect(first).toBe('al-electrolytic-wet');
  });

  test.each([
    ['47k carbon comp 1/2W', 'carbon-composition'],
    ['1k5 wirewound 5W', 'wirewound'],
    ['10k metal film 1%', 'metal-film'],
    ['4R7 fusible wirewound 1W', 'fusible-wirewound'],
  ])('of a resistor: %s', (marking, type) => {
    expect(read({ kind: 'resistor', marking }).part.type).toBe(type);
  });

  test.each([
    ['trimmer', 'TRIMMER 100K 20T CERMET TOP ADJ', 'cermet-multiturn'],
    ['pot', '100 ohm hum pot WW', 'wirewound-pot'],
  ])('of a %s: %s', (kind, marking, type) => {
    expect(read({ kind, marking }).part.type).toBe(type);
  });

  test.each(['4R7 fusible 1/4W', '10R metal film fusible', '10R safety resistor'])(
    '%s is offered as a fusible part and as no other',
    (marking) => {
      const { part } = read({ kind: 'resistor', marking });
      expect(part.type).toBeUndefined();
      expect(offered({ kind: 'resistor', marking }, 'type').toSorted()).toEqual([
        'fusible-film',
        'fusible-wirewound',
      ]);
    },
  );

  test.each<[Partial<Line>, string, RegExp | undefined]>([
    // By market.csv and types.csv, what was made decades ago in such values.
    [{ marking: '100u/50V' }, 'al-electrolytic-wet', /x5r|polymer/u],
    [{ marking: '330pF styro 63V' }, 'ps-film-foil', undefined],
    [{ marking: '0.1 MFD 600V', note: 'wax paper' }, 'paper-wax', undefined],
    [{ marking: '0.1µF 250VAC' }, 'film-x2', undefined],
    // The filter capacitor of a valve set; oil-filled paper of that value stood in transmitters.
    [{ marking: '8MF 500V' }, 'al-electrolytic-wet', /motor/u],
  ])('of a capacitor is offered by likelihood: %o', (said, first, late) => {
    const types = offered({ kind: 'capacitor', ...said }, 'type');
    expect(types[0]).toBe(first);
    if (late !== undefined)
      expect(types.findIndex((type) => late.test(type ?? ''))).toBeGreaterThan(1);
  });

  test('with a plus sign is polar', () => {
    const types = offered({ kind: 'capacitor', marking: '1u5 35+' }, 'type');
    expect(types).toContain('ta-mno2-solid');
    for (const type of types) expect(catalogue.types[type ?? '']?.polarity).toBe('polar');
  });

  test('of a rating is offered first in what has that', () => {
    expect(offered({ kind: 'resistor', marking: '150R 20W' }, 'type')[0]).toBe('wirewound');
    // 0.05 ohm is less than any type here is usually made in.
    expect(offered({ kind: 'resistor', value: '0.05', volts: '10 W' }, 'type')[0]).toBe(
      'wirewound',
    );
  });
});

test.each(['10k NTC', 'thermistor 4k7', '470R PTC', '1k -4500 ppm/K'])(
  '%s is bought as it is, and no resistor',
  (marking) => {
    expect(read({ marking }).part).toMatchObject({ kind: 'other', isKindSaid: true });
    expect(read({ marking }).part.family).toBeUndefined();
  },
);

describe('a column that describes parts beside one of values', () => {
  test.each<[string, string, Partial<Record<'kind' | 'type' | 'value', unknown>>]>([
    ['100uF 63V', 'output of the regulator', { kind: 'capacitor' }],
    ['100uF 63V', 'regulator output', { kind: 'capacitor' }],
    ['BC337', 'relay driver', { kind: 'transistor', type: 'bc337' }],
    ['B80C5000', 'bridge', { kind: 'diode' }],
    ['4u7 35V', 'tantalum', { kind: 'capacitor', type: 'ta-mno2-solid' }],
    ['10k', 'trimmer for the bias', { kind: 'trimmer' }],
    ['7805', 'TO-220 regulator', { kind: 'regulator' }],
    ['T 1 A', 'fuse', { kind: 'fuse' }],
  ])('%s: %s', (value, marking, part) => {
    expect(read({ value, marking }).part).toMatchObject(part);
  });

  test('has its values read, with volts', () => {
    const { part } = read({ kind: 'capacitor', value: '10000µF 63V', marking: 'screw terminal' });
    expect(part).toMatchObject({ capacitance: { typ: 0.01 }, ratedVoltage: { typ: 63 } });
    const { part: divider } = read({ kind: 'resistor', value: '6k8 0.1% ww', marking: 'divider' });
    expect(divider).toMatchObject({ value: { typ: 6800 }, tolerance: { plus: 0.001 } });
    const { part: shunt } = read({ kind: 'resistor', value: '0R1 5W 1%', marking: 'shunt' });
    expect(shunt).toMatchObject({ value: { typ: 0.1 }, rating: { typ: 5 } });
  });
});

test('a mark with its watts is offered with them', () => {
  // Kilohms, or a code with the letter of a tolerance: 332 kΩ or 3.3 kΩ.
  const [ask] = read({ kind: 'resistor', marking: '332K 1W' }).asks;
  expect(ask?.choices[0]?.set).toMatchObject({ volts: '1 W' });
});

test.each([
  ['C1\t0.1 MFD 600V\twax paper\nC2\t25/25\tcathode bypass', ['designators', 'marking', 'note']],
  ['C1\t0.1 MFD 600V\nC2\t8MF 500V', ['designators', 'marking']],
  ['C1\tleft\t0.1 MFD 600V\nC2\tright\t8MF 500V', ['designators', undefined, 'marking']],
  ['C1\tleft\nC2\tright', ['designators', undefined]],
])('a table that nothing heads has its marks behind the designators: %j', (text, fields) => {
  const table = readDelimited(text);
  if (!table.ok) throw new Error(table.message);
  const { columnWords, kindWords } = catalogue.job;
  expect(guessColumns(table.rows, columnWords, kindWords)).toMatchObject({
    hasHeader: false,
    fields,
  });
});
