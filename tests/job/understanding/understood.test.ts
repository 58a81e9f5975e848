import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { emptyLine, type Line } from '../../../src/job/model/job.ts';
import { understoodLine } from '../../../src/job/understanding/understood.ts';
import { anyLine } from '../any-job.ts';

const catalogue = loadCatalogue();
const read = (said: Partial<Line>) => understoodLine(catalogue, { ...emptyLine('a'), ...said });
const asked = (said: Partial<Line>, about: string) =>
  read(said).asks.find((ask) => ask.about === about);

describe('a marking fills what is not typed', () => {
  test('value, tolerance and volts', () => {
    const { part } = read({ kind: 'capacitor', marking: '104K 100V' });
    expect(part.capacitance?.typ).toBeCloseTo(1e-7, 12);
    expect(part.tolerance).toEqual({ minus: 0.1, plus: 0.1 });
    expect(part.ratedVoltage?.typ).toBe(100);
    expect(part.type).toBeUndefined();
  });

  test('a single type is taken', () => {
    expect(read({ kind: 'capacitor', marking: 'KS 4700 pF 160 V' }).part.type).toBe('ps-film-foil');
  });

  test('what is typed holds', () => {
    const { part } = read({
      kind: 'capacitor',
      marking: '104K 100V',
      value: '0.1 µF',
      volts: '63 V',
    });
    expect(part.ratedVoltage?.typ).toBe(63);
    expect(part.tolerance).toBeUndefined();
  });

  test('of another kind of part, nothing is read', () => {
    const { part, asks } = read({ kind: 'ic', marking: '104' });
    expect(part.capacitance).toBeUndefined();
    expect(asks).toEqual([]);
  });
});

describe('a value that is no number by itself is read as a marking', () => {
  test.each<[Partial<Line>, number]>([
    [{ kind: 'capacitor', value: '100n/63V' }, 1e-7],
    [{ kind: 'capacitor', value: 'MKP 10 250V' }, 1e-5],
    [{ value: '4u7 25V' }, 4.7e-6],
  ])('%o', (said, farad) => {
    expect(read(said).part.capacitance?.typ).toBeCloseTo(farad, 12);
    expect(read(said).part.rejected).toEqual({});
  });

  test('with its volts and type, and of a resistor with its tolerance', () => {
    const { part } = read({ kind: 'capacitor', value: 'MKP 10 250V' });
    expect(part).toMatchObject({ type: 'pp-metallized', ratedVoltage: { typ: 250 } });
    const resistor = read({ kind: 'resistor', value: '4k7 5%' }).part;
    expect(resistor.value?.typ).toBeCloseTo(4700, 6);
    expect(resistor.tolerance).toEqual({ minus: 0.05, plus: 0.05 });
    expect(read({ kind: 'trimmer', value: '10k lin' }).part.value?.typ).toBeCloseTo(10e3, 6);
  });

  test('what is a number holds, and a marking beside it is read by itself', () => {
    expect(read({ kind: 'capacitor', value: '100 n' }).part.capacitance?.typ).toBeCloseTo(1e-7, 12);
    const both = read({ kind: 'capacitor', value: 'a lot', marking: '104K' });
    expect(Object.keys(both.part.rejected)).toEqual(['value']);
  });

  test('what is not sure of it is asked', () => {
    const ask = asked({ kind: 'capacitor', value: '10/63' }, 'marking');
    expect(ask?.question).toContain('10/63');
    expect(ask?.choices.map(({ set }) => set.value)).toContain('10u');
  });

  test('what is no marking either is rejected', () => {
    expect(Object.keys(read({ kind: 'capacitor', value: 'a lot' }).part.rejected)).toEqual([
      'value',
    ]);
  });
});

describe('what is not sure is asked', () => {
  test('a marking with several readings, and an answer settles it', () => {
    const ask = asked({ kind: 'capacitor', marking: '100' }, 'marking');
    expect(ask?.choices.map(({ set }) => set.value)).toEqual(['10p', '100p', '100u']);
    expect(read({ kind: 'capacitor', marking: '100' }).part.capacitance).toBeUndefined();
    const said = { kind: 'capacitor', marking: '100', ...ask?.choices[1]?.set };
    expect(read(said).part.capacitance?.typ).toBeCloseTo(1e-10, 15);
    expect(asked(said, 'marking')).toBeUndefined();
  });

  test.each([
    [{}, 275],
    [{ type: 'film-x2' }, 275],
    [{ type: 'pet-metallized' }, 630],
    [{ type: 'constructor' }, 630],
  ])('of two voltages marked, the one that the type is rated in: %o', (said, volts) => {
    const line = { kind: 'capacitor', marking: 'X2 0.1 275V~ 630V-', ...said };
    expect(read(line).part.ratedVoltage?.typ).toBe(volts);
  });

  test('the types of the reading that was chosen are asked about, and no others', () => {
    const said = { kind: 'capacitor', marking: 'КСО-5 6800 250В', value: '6.8n', volts: '250' };
    const offered = asked(said, 'type')?.choices.map(({ set }) => set.type);
    expect(offered).toEqual(['silvered-mica', 'mica-clamped']);
  });

  test('a style says what a resistor is made of', () => {
    expect(read({ kind: 'resistor', marking: 'МЛТ-0,5 47к' }).part.type).toBe('metal-film');
    expect(read({ kind: 'resistor', marking: 'ПЭВ-10 510 Ом' }).part.type).toBe('wirewound');
  });

  test('the name of a place does not take the type with it', () => {
    const { part } = read({ kind: 'capacitor', marking: '0.1 ceramic decoupling op amps' });
    expect(part.type).toBe('ceramic-disc-unknown');
  });

  test.each(['1-8pF trimmer', '3-30 ceramic trimmer'])(
    '%s is a trimmer of capacitance',
    (marking) => {
      const { part } = read({ designators: 'C8', marking });
      expect(part).toMatchObject({ kind: 'capacitor', type: 'air-variable' });
      // It is ordered by its maximum.
      expect(part.capacitance?.typ).toBeCloseTo(marking.startsWith('1') ? 8e-12 : 30e-12, 15);
    },
  );

  test('a type that was chosen still says of what kind the part is', () => {
    const said = { designators: 'R6', marking: '500K pot focus', type: 'carbon-pot' };
    expect(read(said).part).toMatchObject({ kind: 'pot', value: { typ: 500e3 } });
  });

  test('of a value that is usual nowhere, every place is offered', () => {
    const said = { kind: 'resistor', type: 'high-voltage-glaze', value: '100M' };
    expect(asked(said, 'position')?.choices.map(({ set }) => set.position)).toContain('hv-dropper');
  });

  test('a list and a marking that disagree', () => {
    const ask = asked({ kind: 'capacitor', marking: '104K', value: '10 nF' }, 'value');
    expect(ask?.question).toMatch(/10.nF, which is used; the marking reads as 100.nF/u);
    const answered = { kind: 'capacitor', marking: '104K', ...ask?.choices[0]?.set };
    expect(read(answered).part.capacitance?.typ).toBeCloseTo(1e-7, 12);
    expect(asked(answered, 'value')).toBeUndefined();
    expect(asked({ kind: 'capacitor', marking: '104K', value: '100 nF' }, 'value')).toBeUndefined();
  });

  test.each([
    // Of a microfarad and more at 50 V and below a polar part, film from 63 V on and below a microfarad.
    [{ kind: 'capacitor', marking: '1µF 50V' }, 'al-electrolytic-wet'],
    [{ kind: 'capacitor', marking: '2,2 µF 25V' }, 'al-electrolytic-wet'],
    [{ kind: 'capacitor', marking: '50 µF 3V' }, 'al-electrolytic-wet'],
    [{ kind: 'capacitor', marking: '1µF 100V' }, 'pet-metallized'],
    [{ kind: 'capacitor', marking: '0.1µF 50V' }, 'pet-metallized'],
    // Nobody made compositions of a per cent.
    [{ kind: 'resistor', marking: '10k 1%' }, 'metal-film'],
    [{ kind: 'resistor', marking: '1k 0,5%' }, 'metal-film'],
    [{ kind: 'resistor', marking: '10k 10%' }, 'carbon-composition'],
    // An eighth of a watt had leads before it had pads.
    [{ kind: 'resistor', marking: '4k7 0,1 W' }, 'carbon-film'],
  ])('of %o the likeliest type first: %s', (said, first) => {
    expect(asked(said, 'type')?.choices[0]?.set).toEqual({ type: first });
  });

  test.each([
    ['film-x2', '0.1 µF 250V~ X2', 'mains-x'],
    ['film-y2', '4700 pF Y2', 'mains-y'],
    ['ceramic-y-safety', '2.2nF Y1', 'mains-y'],
    ['pp-motor-run', '4 µF 400V~', 'motor-run'],
    // An electrolytic for valve voltages or of a thousand microfarads and more filters a supply.
    ['al-electrolytic-wet', '470 µF 350V', 'bulk-rail'],
    ['al-electrolytic-wet', '4700 µF 50V', 'bulk-rail'],
    ['al-electrolytic-wet', '47 µF 25V', 'interstage-coupling'],
  ])('of %s %s the place first that it is made for: %s', (type, marking, position) => {
    const places = asked({ kind: 'capacitor', type, marking }, 'position')?.choices;
    expect(places?.[0]?.set).toEqual({ position });
  });

  test('a type that is unknown, with those made in the value', () => {
    const types = asked({ kind: 'capacitor', value: '1000 µF' }, 'type')?.choices;
    const ids = types?.map(({ set }) => set.type);
    expect(ids).toContain('al-electrolytic-wet');
    expect(ids).not.toContain('ceramic-c0g');
    expect(asked({ kind: 'capacitor', type: 'constructor' }, 'type')?.question).toMatch(
      /not a type/,
    );
  });

  test('positions are offered and never taken', () => {
    const said = { type: 'pet-metallized', value: '10 nF', kind: 'capacitor' };
    const offered = asked(said, 'position')?.choices.map(({ set }) => set.position);
    expect(read(said).part.position).toBeUndefined();
    expect(offered).toContain('sample-hold');
    // An unlikely pair, and one that the value is too small for.
    expect(offered).not.toContain('power-factor');
    const answered = { ...said, position: 'sample-hold' };
    expect(read(answered).asks).toEqual([]);
  });
});

describe('words for kinds of part', () => {
  test.each([
    ['cap', 'capacitor'],
    ['Elko', 'capacitor'],
    ['res', 'resistor'],
    ['Trim  Pot', 'trimmer'],
    ['op amp', 'ic'],
    ['gadget', 'gadget'],
    ['constructor', 'constructor'],
  ])('%s is a %s', (typed, kind) => {
    expect(read({ kind: typed }).part.kind).toBe(kind);
  });

  test('the type that a word may mean is offered first and not taken', () => {
    const said = { kind: 'elko', value: '10 µF' };
    expect(read(said).part.type).toBeUndefined();
    expect(asked(said, 'type')?.choices[0]?.set).toEqual({ type: 'al-electrolytic-wet' });
    expect(asked({ kind: 'cap', type: 'mylar' }, 'type')?.choices[0]?.set).toEqual({
      type: 'pet-metallized',
    });
    expect(
      asked({ kind: 'cap', type: 'pet-metallized', position: 'hold cap' }, 'position')?.choices[0],
    ).toMatchObject({ set: { position: 'sample-hold' } });
  });

  test('a type of its own makes no capacitor of a part of unknown kind', () => {
    expect(read({ type: 'gadget 3' }).part.kind).toBe('');
    expect(read({ type: 'TL072' }).part.kind).toBe('ic');
    expect(read({ type: 'ceramic-z5u' }).part.kind).toBe('capacitor');
  });
});

test('never throws', () => {
  fc.assert(
    fc.property(anyLine, (line) => {
      expect(understoodLine(catalogue, { ...line, kind: 'capacitor' }).part.kind).toBe('capacitor');
    }),
  );
});
