import { expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { emptyJob, emptyLine, type Line } from '../../../src/job/model/job.ts';
import { planJob } from '../../../src/job/planning/plan.ts';
import { questionsOf } from '../../../src/job/planning/questions.ts';
import type { Ask } from '../../../src/job/understanding/ask.ts';
import { understandWith, understoodLine } from '../../../src/job/understanding/understood.ts';

const catalogue = loadCatalogue();

const ask = (...said: Partial<Line>[]) => {
  const lines = said.map((one, at) => ({ ...emptyLine(String(at)), ...one }));
  const job = { ...emptyJob('a', new Date(0)), lines };
  const tools = { catalogueAt: () => catalogue, understand: understandWith(catalogue) };
  return questionsOf(catalogue, planJob(job, tools).lines);
};

test('lines that are alike are asked once, and an answer holds for each', () => {
  const one = { kind: 'capacitor', marking: '100' };
  const asked = ask(
    { ...one, designators: 'C1' },
    { ...one, designators: 'C2-C4' },
    { ...one, designators: 'C9', marking: '104K', type: 'pet-metallized' },
  );
  expect(asked.map(({ about, lines }) => [about, lines.map(({ id }) => id)])).toEqual([
    ['marking', ['0', '1']],
    ['position', ['2']],
  ]);
});

test.each([
  ['C1', 'capacitor'],
  ['RV3, RV4', 'trimmer'],
  ['R1-R6', 'resistor'],
  ['ic12', 'ic'],
])('the letters of %s offer a %s', (designators, kind) => {
  const [first] = ask({ designators, value: '10' });
  expect(first?.about).toBe('kind');
  expect(first?.choices[0]?.set).toEqual({ kind });
});

test.each([
  ['U1', 'TL072', 'ic'],
  ['Q1', 'BC108', 'transistor'],
  ['D3', '1N4148', 'diode'],
])(
  '%s with %s in the column of values is what its type number tells, and no capacitor',
  (designators, value, kind) => {
    const line = { ...emptyLine('0'), designators, value };
    const { part } = understoodLine(catalogue, line);
    expect([part.kind, part.type]).toEqual([kind, value.toLowerCase()]);
    expect(ask({ designators, value })[0]?.about).toBe('position');
  },
);

test.each([
  // Some type numbers are listed here without figures, and their words say what they are.
  ['U1', '4066', 'ic'],
  // Drivers with diodes in them are no diode, and analogue switches no switch.
  ['X1', 'ULN2003A', 'ic'],
  ['X1', 'DG201', 'ic'],
  ['LDR1', 'ORP12', 'other'],
  ['X1', 'LM386N', 'ic'],
  ['DA1', 'К140УД7', 'ic'],
  ['DD1', 'КР1533ЛА3', 'ic'],
  ['VT1', 'МП42Б', 'transistor'],
  ['IC3', '7815', 'regulator'],
  ['D4', '1S1555', 'diode'],
  ['V1', 'ECC83', 'valve'],
  ['T1', 'AC128', 'transistor'],
  ['V2', '12AX7', 'valve'],
  // Words beside a value name the kind; of words that belong together the longest name counts.
  ['RV1', '10k trimmer', 'trimmer'],
  ['P1', '47k log pot', 'pot'],
  ['R9', 'metal film 10k', 'resistor'],
  ['T1', 'output transformer', 'transformer'],
  ['TC1', '3-30p trimmer capacitor', 'capacitor'],
])('%s with %s is asked no kind of', (designators, marking, kind) => {
  const line = { ...emptyLine('0'), designators, marking };
  expect(understoodLine(catalogue, line).part.kind).toBe(kind);
  expect(ask({ designators, marking }).filter(({ about }) => about === 'kind')).toEqual([]);
});

test.each([
  // Two kinds are named, and a number that may as well be a value tells none.
  ['X1', 'relay or switch'],
  ['X1', '4021F'],
])('%s with %s is of no kind that is told', (designators, marking) => {
  expect(understoodLine(catalogue, { ...emptyLine('0'), designators, marking }).part).toMatchObject(
    {
      isKindSaid: false,
    },
  );
});

test('words that tell a kind and no value are asked about as a type, those that they name first', () => {
  const [first] = ask({ designators: 'C1', marking: 'Capacitor, polyester' });
  expect(first?.about).toBe('type');
  expect(first?.choices[0]?.set).toEqual({ type: 'pet-metallized' });
});

test.each([
  // A register tells its kind, whatever the designator says: V is of valves too.
  ['V1', 'КТ315Б', 'transistor'],
  ['VD1', 'Д814А', 'diode'],
])('%s with the marking %s is not asked about: it is a %s', (designators, marking, kind) => {
  const line = { ...emptyLine('0'), designators, marking };
  const tools = { catalogueAt: () => catalogue, understand: understandWith(catalogue) };
  const { lines } = planJob({ ...emptyJob('a', new Date(0)), lines: [line] }, tools);
  expect(lines[0]?.part.kind).toBe(kind);
});

test.each([
  ['VD1', 'unmarked', 'diode'],
  ['RV1', '4k7', 'trimmer'],
  ['C5', '10kΩ 1W', 'capacitor'],
])(
  '%s with the marking %s is first asked about as what its letters stand for',
  (designators, marking, kind) => {
    // Pages carry the devices apart from what the questions are asked by.
    const withoutDevices = { ...catalogue, devices: { ...catalogue.devices, families: [] } };
    const line = { ...emptyLine('0'), designators, marking };
    const tools = { catalogueAt: () => catalogue, understand: understandWith(catalogue) };
    const { lines } = planJob({ ...emptyJob('a', new Date(0)), lines: [line] }, tools);
    const [first] = questionsOf(withoutDevices, lines);
    expect(first?.about).toBe('kind');
    expect(first?.choices[0]?.set).toEqual({ kind });
  },
);

test.each([
  ['R1', '4k7', 4700],
  ['R2', '10k 1%', 10e3],
  ['R9', '10K', 10e3],
  ['R7', '103', 10e3],
  ['R3', '2W474J', 470e3],
])(
  '%s with the marking %s is a resistor by its letter, and no kind is asked',
  (designators, marking, ohms) => {
    const line = { ...emptyLine('0'), designators, marking };
    expect(understoodLine(catalogue, line).part).toMatchObject({
      kind: 'resistor',
      value: { typ: ohms },
    });
    expect(ask({ designators, marking }).map(({ about }) => about)).not.toContain('kind');
  },
);

test.each([
  ['C2', '2W474J', 470e-9],
  ['C7', '103', 10e-9],
  ['C3', '4K7J', 4.7e-9],
])('%s with the marking %s is a capacitor by its letter', (designators, marking, farads) => {
  const line = { ...emptyLine('0'), designators, marking };
  expect(understoodLine(catalogue, line).part).toMatchObject({
    kind: 'capacitor',
    capacitance: { typ: expect.closeTo(farads, 15) as number },
  });
});

test('of a letter that is not surely the value, the choices are of the kind of its designator', () => {
  const [first] = ask({ designators: 'C9', marking: '10K' });
  expect(first?.about).toBe('marking');
  expect(first?.choices.map(({ set }) => set.kind)).toEqual(['capacitor', 'capacitor']);
});

test('a marking of resistors at RV2 is asked about as what its letters stand for', () => {
  const [first] = ask({ designators: 'RV2', marking: '100k' });
  expect(first?.about).toBe('kind');
  expect(first?.choices[0]?.set).toEqual({ kind: 'trimmer' });
  // With a taper it is a panel control.
  const [next] = ask({ designators: 'RV2', value: '100k log' });
  expect(next?.about).toBe('type');
  expect(next?.question).toContain('panel pot');
});

test('an abbreviation of a kind is written in capitals', () => {
  const [first] = ask({ designators: 'U1', value: 'XY 1' });
  expect(first?.question).toContain('U usually stands for this: IC.');
  expect(first?.choices[0]?.label).toBe('IC');
});

test('letters that are not known offer every kind', () => {
  const [first] = ask({ designators: 'XYZ1' });
  expect(first?.question).toBe('What kind of part is it?');
  expect(first?.choices.length).toBeGreaterThan(5);
});

test('a word that is no kind is asked about', () => {
  const [first] = ask({ designators: 'C1', kind: 'gadget' });
  expect(first?.question).toMatch(/“gadget” is not a kind/u);
  expect(first?.choices[0]?.set).toEqual({ kind: 'capacitor' });
});

test('one type is taken for rows of several values, if it was made in all of them', () => {
  const [first, ...others] = ask(
    { designators: 'C1', kind: 'elko', value: '1 µF' },
    { designators: 'C2', kind: 'elko', value: '1000 µF' },
  );
  expect(others).toEqual([]);
  expect(first?.lines).toHaveLength(2);
  const types = first?.choices.map(({ set }) => set.type);
  expect(types?.[0]).toBe('al-electrolytic-wet');
  expect(types).not.toContain('pet-metallized');
});

test('nothing is asked of a row that says nothing, nor of other kinds of part', () => {
  expect(ask({}, { kind: 'ic', designators: 'U1', marking: 'x' })).toEqual([]);
});

test('a can of several sections is offered with the value of each', () => {
  const [first] = ask({ designators: 'C8', marking: '16-8 450V' });
  expect(first?.choices[0]?.label).toBe('capacitor, 16\u{a0}µF + 8\u{a0}µF, 450\u{a0}V');
});

test('a row without designators is called by what is printed on its part', () => {
  const [first] = ask({ marking: 'TL072' });
  expect(first?.lines).toEqual([{ id: '0', name: 'TL072', marked: '' }]);
});

test.each<[Partial<Line>, string]>([
  [{ designators: 'C1', marking: '22n 160V', value: '22n' }, '22n 160V'],
  [{ designators: 'C1', value: '22n' }, '22n'],
  [{ value: '22n' }, ''],
])('a question about %j names what is marked: %s', (line, marked) => {
  const [first] = ask({ kind: 'capacitor', ...line });
  expect(first?.lines[0]?.marked).toBe(marked);
});

test.each<[Partial<Line>, Ask['about'], boolean]>([
  [{ designators: 'F1', marking: '500mA 250V' }, 'kind', true],
  [{ designators: 'ZZ1', value: '10' }, 'kind', false],
  [{ designators: 'C1', marking: '2200uF 25V' }, 'type', true],
  [{ designators: 'R1', kind: 'resistor', value: '4k7' }, 'type', true],
  [{ designators: 'C1', marking: '104K 100V', type: 'pet-metallized' }, 'position', false],
])('of %j the first answer on its %s is likelier: %s', (line, about, isLikely) => {
  const [first] = ask(line);
  expect([first?.about, first?.isFirstLikely ?? false]).toEqual([about, isLikely]);
});

test.each([
  ['L1', '250 turns'],
  ['F1', '1A'],
  ['S1', '2 A 250 V'],
])(
  '%s with %s is not asked whether it is a capacitor, of which nothing is told',
  (designators, marking) => {
    const asked = ask({ designators, marking });
    expect(asked.filter(({ about }) => about === 'marking')).toEqual([]);
    expect(asked[0]?.about).toBe('kind');
  },
);

test.each([
  ['L1', '10mH'],
  ['F1', 'T1A'],
  ['MOV1', 'V275LA20A'],
])(
  '%s with %s is asked nothing, since its unit or its form tells the kind',
  (designators, marking) => {
    expect(ask({ designators, marking })).toEqual([]);
  },
);

// No bead of tantalum was made for more than 150 V, nor an electrolytic for more than 600 V (bodies.csv).
test.each([
  ['63 V', true, true],
  ['250 V', false, true],
  ['1000 V', false, false],
])(
  '1 µF of %s is asked about as a tantalum: %s, as an electrolytic: %s',
  (volts, isBead, isCan) => {
    const asked = ask({ designators: 'C1', kind: 'capacitor', value: '1 µF', volts });
    const types = asked
      .find(({ about }) => about === 'type')
      ?.choices.map(({ set }) => ('type' in set ? set.type : ''));
    expect(types).toContain('pet-metallized');
    expect(types?.includes('ta-mno2-solid')).toBe(isBead);
    expect(types?.includes('al-electrolytic-wet')).toBe(isCan);
  },
);

test.each([
  ['4k7', 'carbon-film'],
  ['4k7 5%', 'carbon-film'],
  ['4k7 10% 1/2W', 'carbon-composition'],
  ['4k7 1%', 'metal-film'],
  ['4k7 5% 2W', 'metal-oxide'],
  ['47R 5W', 'wirewound'],
])('of a resistor marked %s, %s is likeliest', (marking, type) => {
  const [first] = ask({ designators: 'R1', kind: 'resistor', marking });
  expect([first?.about, first?.choices[0]?.set.type]).toEqual(['type', type]);
});
