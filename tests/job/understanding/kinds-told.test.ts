import { describe, expect, test } from 'vitest';
import { firstAsk } from '../../../src/job/index.ts';
import { emptyLine, type Line } from '../../../src/job/model/job.ts';
import { planJob } from '../../../src/job/planning/plan.ts';
import { understandWith } from '../../../src/job/understanding/understood.ts';
import { catalogue, catalogueAt, jobOf } from '../boards.ts';

/** Parts of pasted lists whose number, unit or word tells their kind, so that nobody is asked for it. */

const understand = understandWith(catalogue);

const askedOf = (designators: string, marking: string, said: Partial<Line> = {}) => {
  const job = jobOf({ ...emptyLine('a'), designators, marking, ...said });
  const [planned] = planJob(job, { catalogueAt, understand }).lines;
  if (planned === undefined) throw new Error('a job of one line plans one');
  return { kind: planned.part.kind, ask: firstAsk(catalogue, planned) };
};

describe('a kind is told by', () => {
  test.each([
    ['a number of a bridge', 'Gl1', 'B250C75', 'diode'],
    ['the same on a French board', 'Pont1', 'B80C3200', 'diode'],
    ['the same in selenium', 'Gl2', 'E60C5', 'diode'],
    ['a square bridge', 'BR1', 'KBPC2504', 'diode'],
    ['a bridge in a can', 'D7', 'BY164', 'diode'],
    ['a rectifier with a gap in its number', 'D2', 'BYX 10', 'diode'],
    ['a rectifier valve', 'V4', 'EZ80', 'valve'],
    ['a fuse of the mains', 'Si1', 'T 0,8A', 'fuse'],
    ['the same by its word', 'F1', 'T 1,6A fusible', 'fuse'],
    ['a quick fuse in words', 'F601', '3A 3AG fast-blo', 'fuse'],
    ['a slow one', 'F-102', '3AG 2A SLO-BLO', 'fuse'],
    ['a unit of a choke', 'L1', '10 mH', 'inductor'],
    ['the same of a filter', 'L2', '8 HY 150 MA', 'inductor'],
    ['the same in Cyrillic', 'L1', '100 мкГн', 'inductor'],
    ['a word of a choke', 'Dr1', 'Siebdrossel 10H', 'inductor'],
    ['a frequency', 'X1', '6.144MHz', 'crystal'],
    ['a varistor', 'RV1', '14D471K', 'other'],
    ['a word of the mains', 'S1', 'Netzschalter', 'switch'],
    ['a short word', 'T601', 'power xfmr', 'transformer'],
    ['a word of a network', 'R9', '51K ARRAY x8', 'resistor-network'],
    ['a word of Japanese presets', 'VR4', '500B semi fixed', 'trimmer'],
    ['what is said of a taper', 'R6', '1 MOhm log Lautstärke', 'pot'],
    ['what is said of a taper in short', 'R112', '5k var lin 2W', 'pot'],
    ['an optocoupler', 'IC9', '4N25', 'optocoupler'],
    ['a soviet thermistor', 'R13', 'ММТ-1 4,7к', 'other'],
    ['a soviet preset', 'R10', 'СП3-38 10к', 'trimmer'],
    ['a Japanese rectifier bridge', 'D6', 'S4VB', 'diode'],
    ['a number behind letters of the military', 'CR-101', 'JAN1N645', 'diode'],
    ['a valve of a series heater', 'V6', 'UCH42', 'valve'],
    ['a rectifier valve of America', 'V8', '5Z4G', 'valve'],
    ['a thyristor by its number', 'SCR1', 'C106D', 'other'],
    ['a short word for a transformer', 'T1', 'mains trans', 'transformer'],
    ['the same in Italian', 'T1', 'trasf. 220V / 2x15V', 'transformer'],
    ['an Italian bridge', 'RP1', 'ponte 100V 2A', 'diode'],
    ['a Soviet transistor of the second register', 'VT5', '2Т608Б', 'transistor'],
    ['a Soviet rectifier valve', 'V3', '5Ц4С', 'valve'],
    ['a small pentode of America', 'V20', '12AU6', 'valve'],
    ['a valve that holds a voltage', 'V30', '5651', 'valve'],
    ['a count before a number', 'T1', '2x OC72', 'transistor'],
    ['a lamp, by its voltage and current', 'La1', 'lamp 6,3V 0,3A', 'lamp'],
  ])('%s: %s %s', (_what, designators, marking, kind) => {
    const { kind: told, ask } = askedOf(designators, marking);
    expect(told).toBe(kind);
    expect(ask?.about).not.toBe('kind');
  });

  test.each<[string, Partial<Line>, string]>([
    ['R1', { value: '470K' }, 'resistor'],
    ['C14', { value: '.002' }, 'capacitor'],
    ['C8', { value: '25uF', type: 'Elec' }, 'capacitor'],
    ['VR1', { value: '500K', type: 'log' }, 'pot'],
    ['C2', { value: '500pF', type: 'Gang' }, 'capacitor'],
  ])('a value in its column, beside the letters of %s: %o', (designators, said, kind) => {
    const { kind: told, ask } = askedOf(designators, '', said);
    expect(told).toBe(kind);
    expect(ask?.about).not.toBe('kind');
  });

  test('a note, where the letters stand for nothing', () => {
    expect(askedOf('W1', 'DRM 2B', { note: 'metal rectifier' }).kind).toBe('diode');
  });

  test('a word in the column of types', () => {
    const { kind } = askedOf('R9', '', { value: '120', type: 'CTN' });
    expect(kind).toBe('other');
  });
});

test.each([
  ['La1', '6,3V 0,3A', 'lamp'],
  ['FS1', '125V 1A', 'fuse'],
  ['DZ1', '5,1V 1W', 'diode'],
  ['AP1', 'x', 'speaker'],
])('where it is not, %s %s is offered as its letters say', (designators, marking, kind) => {
  const { ask } = askedOf(designators, marking);
  expect(ask?.about).toBe('kind');
  expect(ask?.choices[0]?.set.kind).toBe(kind);
});

test.each([
  // What a number drives or has inside is no kind of it.
  ['U1', 'ULN2003', 'ic'],
  ['U2', 'LM317', 'regulator'],
  // A current is marked on chokes and on switches as well.
  ['L1', '100uH 1A', 'inductor'],
  ['C1', '10 µF 50 V 1A ripple', 'capacitor'],
  ['C2', '100n 14 MHz', 'capacitor'],
])('%s %s stays %s', (designators, marking, kind) => {
  expect(askedOf(designators, marking).kind).toBe(kind);
});
