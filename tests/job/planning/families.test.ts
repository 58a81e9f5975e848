import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { decidingFinding, type Advice } from '../../../src/engine/index.ts';
import {
  choiceOf,
  firstAsk,
  isDevice,
  orderOf,
  planJob,
  recordOf,
  sheetOf,
  standInWords,
  typeNameIn,
  understandWith,
} from '../../../src/job/index.ts';
import { emptyFitted, emptyLine, emptyPreset, type Line } from '../../../src/job/model/job.ts';
import { withAlternating } from '../../../src/job/planning/alternating.ts';
import { alternating } from '../../../src/substitution/rated-voltage.ts';
import { jobOf } from '../boards.ts';

const catalogue = loadCatalogue();
const catalogueAt = () => catalogue;
const nameOf = (id: string) => typeNameIn(catalogue, id);
const tools = { catalogueAt, understand: understandWith(catalogue) };

const lineOf = (said: Partial<Line>): Line => ({ ...emptyLine('1'), designators: 'X1', ...said });
const planOf = (said: Partial<Line>) => {
  const [planned] = planJob(jobOf(lineOf(said)), tools).lines;
  if (planned === undefined) throw new Error('no line is planned');
  return planned;
};

const resistor = {
  kind: 'resistor',
  type: 'carbon-film',
  value: '47 k',
  position: 'bias-resistor',
};
const trimmer = { kind: 'trimmer', type: 'carbon-preset', value: '10k', position: 'gain-trim' };
const chip = { kind: 'ic', marking: 'RC4558P', position: 'amp-line' };
const transistor = { kind: 'transistor', type: '2sc1815', position: 'transistor-stage' };

describe('a line of each family is planned', () => {
  test.each<[string, Partial<Line>, string, RegExp]>([
    ['a resistor', resistor, 'assessed', /^Metal film resistor, 47.kΩ ±1.% /u],
    ['a resistor by its power', { ...resistor, volts: '2 W' }, 'assessed', /2.W$/u],
    [
      'a fusible one',
      {
        ...resistor,
        type: 'fusible-film',
        value: '10',
        volts: '0.33 W',
        position: 'fusible-position',
      },
      'assessed',
      /usible/u,
    ],
    ['a trimmer', trimmer, 'assessed', /ermet.*10.kΩ/u],
    // A 4558 slews too slowly to be sure of, 10 V peak at 20 kHz being 1.26 V/µs; what is faster fits.
    ['a chip by its marking', chip, 'assessed', /^TL072H$/u],
    ['a transistor', transistor, 'assessed', /^2SC1815$/u],
    [
      'a connector by its name',
      { kind: 'connector', value: '2.54 mm header', position: 'connector-wires' },
      'assessed',
      /^2\.54 mm friction-lock header$/u,
    ],
    [
      'a panel pot',
      { kind: 'pot', type: 'carbon-pot', value: '100k', position: 'volume-control' },
      'assessed',
      /arbon.*100.kΩ/u,
    ],
    [
      'a pot by its marking, whatever its letter says of the taper',
      { kind: 'pot', marking: 'B50K', type: 'carbon-pot', position: 'volume-control' },
      'assessed',
      /arbon.*50.kΩ/u,
    ],
    [
      'what is called a pot and is a trimmer',
      { ...trimmer, kind: 'Pot' },
      'assessed',
      /ermet.*10.kΩ/u,
    ],
    [
      'what is called a trimmer and is a pot',
      { kind: 'trimmer', type: 'carbon-pot', value: '100k', position: 'volume-control' },
      'assessed',
      /arbon.*100.kΩ/u,
    ],
    [
      'a connector by its words',
      { kind: 'connector', marking: '0.156" 6 way', position: 'connector-wires' },
      'assessed',
      /^3\.96 mm friction-lock header$/u,
    ],
    [
      'a diode by its value',
      { kind: 'diode', value: '1N4002', position: 'diode-rectifier' },
      'assessed',
      /^1N4002$/u,
    ],
    [
      'a regulator',
      { kind: 'regulator', marking: 'LM7815CT', position: 'reg-rail' },
      'assessed',
      /^7815$/u,
    ],
    ['a kind by its type alone', { ...resistor, kind: '' }, 'assessed', /^Metal film/u],
    ['a chip nobody knows', { ...chip, marking: 'XYZ 99' }, 'other', /^$/u],
    ['a resistor of unknown type', { ...resistor, type: '' }, 'open', /^$/u],
    ['a connector', { kind: 'connector', value: '22 ways' }, 'other', /^$/u],
  ])('%s', (_name, said, state, fit) => {
    const planned = planOf(said);
    expect(planned.state).toBe(state);
    const { standIn } = planned;
    expect(standIn === undefined ? '' : standInWords(standIn, nameOf)).toMatch(fit);
    if (standIn !== undefined) expect(decidingFinding(standIn)).toBeDefined();
  });
});

describe('what a line leaves open is asked, and nothing is taken by itself', () => {
  test.each<[string, Partial<Line>, string | undefined]>([
    ['a type of resistor', { ...resistor, type: '' }, 'type'],
    ['its place', { ...resistor, position: '' }, 'position'],
    ['a place of another family', { ...resistor, position: 'reservoir' }, 'position'],
    ['the use of a chip', { ...chip, position: '' }, 'position'],
    ['a use that is not of this device', { ...chip, position: 'reg-rail' }, 'position'],
    ['the type of a pot', { kind: 'pot', value: '100k', position: 'volume-control' }, 'type'],
    ['which socket of so many pins', { kind: 'socket', marking: '16 pin DIL' }, 'type'],
    ['which diode ends so', { kind: 'diode', marking: '4007' }, 'type'],
    [
      'by which device a number without figures is judged',
      { kind: 'transistor', marking: 'BC237B', position: 'transistor-stage' },
      'type',
    ],
    ['nothing of a number that no device is near', { kind: 'ic', marking: 'CD4013BE' }, undefined],
    ['whether a worn number is the one that it may be', { ...chip, marking: 'RC45?8P' }, 'type'],
    ['nothing of a part that is left', { ...resistor, type: '', decision: 'leave' }, undefined],
    ['nothing of a line that is whole', resistor, undefined],
  ])('%s', (_name, said, about) => {
    const planned = planOf(said);
    const ask = firstAsk(catalogue, planned);
    expect(ask?.about).toBe(about);
    expect(ask?.choices.length ?? 1).toBeGreaterThan(0);
  });

  test('only uses of the device and positions of the kind are offered', () => {
    const choices = (said: Partial<Line>) =>
      firstAsk(catalogue, planOf(said))?.choices.map(({ set }) => set.position ?? '') ?? [];
    for (const id of choices({ ...chip, position: '' })) expect(id).toMatch(/^amp-/u);
    for (const id of choices({ ...resistor, position: '' }))
      expect(catalogue.kindPositions[id]?.kind).toBe('resistor');
  });
});

test.each<[string, Partial<Line>, Advice]>([
  ['a film resistor', { ...resistor, type: 'metal-film' }, 'leave'],
  ['a composition resistor', { ...resistor, type: 'carbon-composition' }, 'test'],
  ['an open preset', { ...trimmer, type: 'carbon-preset' }, 'test'],
  ['a chip', chip, 'leave'],
  ['a transistor', transistor, 'leave'],
])('%s is judged by what it is, until somebody decides', (_, said, advice) => {
  const planned = planOf(said);
  expect(planned.worked?.judgement.advice).toBe(advice);
  expect(planned.worked?.judgement.reasons).toHaveLength(1);
  expect(planned).toMatchObject({ decision: advice, decidedBy: 'rules' });
});

test('what somebody decides holds', () => {
  expect(planOf({ ...resistor, decision: 'replace' })).toMatchObject({ decision: 'replace' });
});

test('a choice with a reason holds, and its pins are set against those of the old one', () => {
  const other = planOf(transistor)
    .worked?.rest()
    .standIns.find(({ candidate }) => candidate.type === 'bc547');
  if (other === undefined) throw new Error('no other transistor serves');
  const line = {
    ...transistor,
    decision: 'replace' as const,
    choice: choiceOf(other, 'in the drawer', false),
  };
  const planned = planOf(line);
  expect([planned.standIn?.candidate.type, planned.chosenBy]).toEqual(['bc547', 'visitor']);
  if (planned.standIn === undefined || !isDevice(planned.standIn)) throw new Error('no device');
  expect(planned.standIn.pins.map(({ pin }) => pin)).toEqual([1, 2, 3]);
});

test('an order names what each is ordered by', () => {
  const job = jobOf(
    lineOf({ ...resistor, decision: 'replace', designators: 'R1-R3' }),
    { ...lineOf({ ...resistor, decision: 'replace', designators: 'R7' }), id: '2' },
    { ...lineOf({ ...trimmer, decision: 'replace', designators: 'RV1' }), id: '3' },
    { ...lineOf({ ...chip, decision: 'replace', designators: 'U1' }), id: '4' },
  );
  const { groups } = orderOf(planJob(job, tools), job.whole, catalogue);
  const [film, preset, amplifier] = groups;
  expect(groups).toHaveLength(3);
  expect(film).toMatchObject({ needed: 4, spares: 1, tolerance: '±1\u00A0%' });
  expect(film?.power).toMatch(/W$/u);
  expect(film?.details).toMatch(/temperature coefficient.*ppm\/K/u);
  expect(preset?.details).toMatch(/turns from end to end/u);
  expect(preset).toMatchObject({ pitch: '2.54\u00A0mm' });
  expect(amplifier).toMatchObject({ what: 'TL072H', style: 'DIP 8', value: '' });
});

test("a trimmer's setting is worked out for the part that goes in, by ohms or by ratio", () => {
  const preset = { ...emptyPreset(), old: '2.5 k', oldTotal: '9 k', supplied: '5 k' };
  const stepOf = (position: string) => {
    const fitted = { X1: { ...emptyFitted(), preset } };
    const job = jobOf(lineOf({ ...trimmer, position, decision: 'replace', fitted }));
    const plan = planJob(job, tools);
    return sheetOf(job, plan, { catalogueAt, common: catalogue }).steps[0]?.preset;
  };
  const rheostat = stepOf('gain-trim');
  expect(rheostat?.from).toMatchObject({ use: 'rheostat', total: '10\u00A0kΩ' });
  expect(rheostat?.set?.typ).toBeCloseTo(2500, 6);
  expect(stepOf('level-preset')?.set?.typ).toBeCloseTo((2.5 / 9) * 10_000, 6);
});

test('a reading of the old setting counts in the assessment of its line', () => {
  const preset = { ...emptyPreset(), old: '2.5 k', oldTotal: '9 k' };
  const { worked } = planOf({ ...trimmer, fitted: { X1: { ...emptyFitted(), preset } } });
  const setting = worked?.conditions?.find(({ id }) => id === 'old-setting');
  expect(setting).toMatchObject({ from: 'given', range: { typ: 2500 } });
});

describe('a reading after the work is set against the new part', () => {
  test.each<[string, Partial<Line>, Record<string, string>, RegExp]>([
    ['a resistor inside', resistor, { resistance: '47.3 k' }, /^Resistance 47.3.kΩ$/u],
    [
      'a resistor outside',
      resistor,
      { resistance: '49 k' },
      /outside its tolerance: 47.kΩ ±1.%.*4\.2\d* % above its mark$/u,
    ],
    [
      'a capacitor outside',
      {
        kind: 'capacitor',
        type: 'pet-metallized',
        value: '100n',
        volts: '100 V',
        position: 'tone-stack',
      },
      { capacitance: '60 nF' },
      /outside its tolerance: 100.nF .*40.% below its mark$/u,
    ],
  ])('%s', (_name, said, measured, words) => {
    const fitted = { X1: { ...emptyFitted(), measured } };
    const job = jobOf(lineOf({ ...said, decision: 'replace', decisionReason: 'x', fitted }));
    const record = recordOf(job, planJob(job, tools), catalogue, catalogueAt);
    expect(record.entries[0]?.measured.replaceAll('\u00A0', ' ')).toMatch(words);
  });
});

test.each([
  ['250~', '250 V'],
  ['250 V~', '250 V'],
  ['275 VAC', '275 V'],
  ['1.5 kV ~', '1.5 kV'],
  ['250', undefined],
  ['~', undefined],
  ['25 V', undefined],
])('%s is read as %s of alternating voltage', (text, read) => {
  expect(alternating(text)).toBe(read);
});

test('an alternating voltage across a part is no steady one', () => {
  expect(withAlternating({ vdc: '250~' })).toEqual({ vdc: '0 V', vac: '250 V' });
  expect(withAlternating({ vdc: '12', vac: '3 V~' })).toEqual({ vdc: '12', vac: '3 V' });
  const planned = planOf({
    kind: 'capacitor',
    type: 'film-x2',
    value: '100n',
    volts: '275~',
    position: 'mains-x',
  });
  expect(planned.rejected).toEqual({});
  expect(planned.part.ratedVoltage?.typ).toBe(275);
});
