import { describe, expect, test } from 'vitest';
import { piecesFor } from '../../../src/engine/printed/beside.ts';
import type { PartToPrint, Piece } from '../../../src/engine/printed/way.ts';
import { markings } from '../markings/tables.ts';

const pF = 1e-12;
const nF = 1e-9;

const within = (share: number) => ({ minus: share, plus: share, unit: 'fraction' as const });
const farads = (size: number) => ({ minus: size, plus: size, unit: 'F' as const });

const found = (part: PartToPrint, place: string): Piece[] => piecesFor(markings, part, place);

/** A piece as its text, its use, and where it is met, if that is not everywhere. */
type Short = [text: string, use: Piece['use'], bodies?: string, origins?: string];

const short = ({ text, use, bodies, origins }: Piece): Short =>
  origins.length > 0
    ? [text, use, bodies.join(), origins.join()]
    : bodies.length > 0
      ? [text, use, bodies.join()]
      : [text, use];

const NO_BEADS = 'ceramic,ceramic-chip,film,mica,glass,paper,aluminium,air,double-layer';

describe('a tolerance in a letter', () => {
  test.each<[part: PartToPrint, pieces: Short[]]>([
    [
      { capacitance: 47 * nF, tolerance: within(0.1) },
      [
        ['K', 'usual'],
        ['С', 'usual', '', 'soviet'],
        ['X9', 'usual', 'tantalum', 'american'],
      ],
    ],
    // Below 10 pF per cents are rare, and picofarads usual.
    [
      { capacitance: 4.7 * pF, tolerance: within(0.1) },
      [
        ['K', 'rare'],
        ['С', 'usual', '', 'soviet'],
      ],
    ],
    [{ capacitance: 4.7 * pF, tolerance: farads(0.5 * pF) }, [['D', 'usual']]],
    // A seldom letter that is a voltage behind the figures of a bead is none there.
    [{ capacitance: 47 * pF, tolerance: farads(0.5 * pF) }, [['D', 'other', NO_BEADS]]],
    [
      { capacitance: 47 * nF, tolerance: within(0.02) },
      [
        ['G', 'usual', NO_BEADS],
        ['Л', 'usual', '', 'soviet'],
      ],
    ],
    [{ capacitance: 47 * pF, tolerance: farads(1 * pF) }, [['E', 'other', 'ceramic']]],
    [
      { capacitance: 47 * nF, tolerance: { minus: 0.2, plus: 0.8, unit: 'fraction' } },
      [
        ['P', 'other', 'ceramic', 'british'],
        ['Z', 'usual', 'ceramic,ceramic-chip,film,paper,aluminium'],
        ['А', 'usual', '', 'soviet'],
      ],
    ],
    [{ capacitance: 47 * nF, tolerance: { minus: 0.8, plus: 0.2, unit: 'fraction' } }, []],
    [{ capacitance: 47 * nF }, []],
    [
      { resistance: 4700, tolerance: within(0.05) },
      [
        ['J', 'usual'],
        ['И', 'usual', '', 'soviet'],
      ],
    ],
    [{ resistance: 4700, tolerance: within(0.03) }, [['H', 'other']]],
    [{ resistance: 4700, tolerance: { minus: 0.05, plus: 0.1, unit: 'fraction' } }, []],
    [{ resistance: 4700 }, []],
  ])('%j', (part, pieces) => {
    expect(found(part, 'tolerance:letter').map(short)).toEqual(pieces);
  });

  // A code or a letter for the point leaves no unit open; other figures, and a unit, do.
  test.each<[value: string, stands: boolean]>([
    ['103', true],
    ['4n7', true],
    ['R47', true],
    ['100', false],
    ['5600', false],
    ['47', false],
    ['.47', false],
    ['0.1M', false],
    ['47n', false],
  ])('a seldom letter beside %s: %s', (value, stands) => {
    const besides = (plus: number, minus = 0): [string, boolean | undefined][] =>
      found(
        { capacitance: 47 * nF, tolerance: { minus, plus, unit: 'fraction' } },
        'tolerance:letter',
      ).map((piece) => [piece.text, piece.besides?.test(value)]);
    expect(besides(1)).toEqual([
      ['P', stands],
      ['GMV', undefined],
      ['R', stands],
    ]);
    // J is met, and stands beside all.
    expect(besides(0.05, 0.05)[0]).toEqual(['J', undefined]);
  });

  test('has the source of its row, and no note of a resistor', () => {
    const [capacitor] = found(
      { capacitance: 47 * nF, tolerance: within(0.15) },
      'tolerance:letter',
    );
    expect(capacitor).toMatchObject({ source: 'tti-disc', note: 'Not used alike by all makers.' });
    const [resistor] = found({ resistance: 1, tolerance: within(0.1) }, 'tolerance:letter');
    expect(resistor).toMatchObject({ source: 'probsee-rkm', note: '' });
  });
});

describe('a tolerance in figures', () => {
  test.each<[part: PartToPrint, pieces: Short[]]>([
    [
      { tolerance: within(0.1) },
      [
        ['10%', 'usual'],
        ['±10%', 'other'],
      ],
    ],
    [
      { tolerance: within(0.025) },
      [
        ['2.5%', 'usual'],
        ['±2.5%', 'other'],
      ],
    ],
    [{ tolerance: { minus: 0.2, plus: 0.8, unit: 'fraction' } }, [['-20+80%', 'usual']]],
    [{ tolerance: farads(0.5 * pF) }, [['±0.5 pF', 'usual']]],
    [{ tolerance: { minus: pF, plus: 2 * pF, unit: 'F' } }, []],
    [{ tolerance: { minus: 1, plus: 1, unit: 'ohm' } }, []],
    [{}, []],
  ])('%j', (part, pieces) => {
    const all = found(part, 'tolerance:percent');
    expect(all.map(short)).toEqual(pieces);
    for (const { source, note } of all) expect([source, note]).toEqual(['trade', '']);
  });
});

describe('a voltage', () => {
  test.each<[part: PartToPrint, place: string, pieces: Short[]]>([
    [{ ratedVoltage: 100 }, 'voltage:figure-letter', [['2A', 'usual']]],
    [{ ratedVoltage: 90 }, 'voltage:figure-letter', []],
    [{ ratedVoltage: 3000 }, 'voltage:figure-letter', [['3F', 'rare']]],
    [{ ratedVoltage: 16 }, 'voltage:chip-letter', [['C', 'usual', 'aluminium,tantalum']]],
    [{ ratedVoltage: 250 }, 'voltage:small-letter', [['d', 'other', 'ceramic', 'german']]],
    [
      { ratedVoltage: 250, voltageKind: 'ac' },
      'voltage:small-letter',
      [['u', 'other', 'ceramic', 'german']],
    ],
    [{ ratedVoltage: 250, voltageKind: 'ac' }, 'voltage:figure-letter', []],
    // Of two words for the same line one is enough.
    [{ ratedVoltage: 500 }, 'voltage:words', [['no underline', 'usual', 'ceramic']]],
    [{ ratedVoltage: 80 }, 'voltage:words', [['underlined', 'usual', 'ceramic']]],
    [{ ratedVoltage: 50 }, 'voltage:words', [['underlined', 'usual', 'ceramic']]],
    [{ ratedVoltage: 40 }, 'voltage:words', []],
    [{}, 'voltage:figure-letter', []],
    // Words of the table behind the figures, for their kind.
    [{ ratedVoltage: 63 }, 'volts:V', [['63V', 'usual']]],
    [{ ratedVoltage: 63, voltageKind: 'dc' }, 'volts:V', [['63V', 'usual']]],
    [{ ratedVoltage: 63, voltageKind: 'ac' }, 'volts:V', []],
    [{ ratedVoltage: 63, voltageKind: 'ac' }, 'volts:V~', [['63V~', 'usual']]],
    [{ ratedVoltage: 63 }, 'volts:V~', []],
    [{ ratedVoltage: 400 }, 'volts:WVDC', [['400WVDC', 'usual']]],
    [{ ratedVoltage: 1000 }, 'volts:kV', [['1kV', 'usual']]],
    [{ ratedVoltage: 999 }, 'volts:kV', []],
    [{ ratedVoltage: 12345 }, 'volts:V', []],
    [{ ratedVoltage: 100 }, 'volts:-', [['100-', 'other']]],
    [{ ratedVoltage: 100 }, 'volts:TV', []],
    [{}, 'volts:V', []],
  ])('%j in the place %s', (part, place, pieces) => {
    const all = found(part, place);
    expect(all.map(short)).toEqual(pieces);
    for (const { note } of all) expect(note).toBe('');
  });
});

describe('a temperature characteristic', () => {
  const codes = (characteristic: string, place = 'temperature:code'): Short[] =>
    found({ temperatureCharacteristic: characteristic }, place).map(short);

  const C = 'ceramic,ceramic-chip';

  test.each<[code: string, pieces: Short[]]>([
    // Its own code first, then those that say the same; one that leaves other room for error is rare.
    [
      'X7R',
      [
        ['X7R', 'usual', C],
        ['BX', 'usual', C],
        ['BR', 'usual', C],
      ],
    ],
    ['Y5P', [['Y5P', 'usual', C]]],
    [
      'Н90',
      [
        ['Н90', 'usual', C, 'soviet'],
        ['H90', 'other', C, 'soviet'],
      ],
    ],
    [
      'N33',
      [
        ['N33', 'other', C],
        ['N033', 'usual', C],
        ['HG', 'rare', C],
        ['М33', 'usual', C, 'soviet'],
      ],
    ],
    ['X6S', [['X6S', 'usual', C]]],
    ['Q', []],
  ])('%s', (code, pieces) => {
    expect(codes(code)).toEqual(pieces);
  });

  test('of a slope is every code of that slope, less close ones rarely', () => {
    const all = codes('U2J');
    expect(all[0]).toEqual(['U2J', 'usual', C]);
    const uses = Object.fromEntries(all.map(([text, use]) => [text, use]));
    expect(uses).toMatchObject({ N750: 'rare', UJ: 'usual', М750: 'rare' });
    expect(Object.keys(uses)).not.toContain('N470');
    expect(Object.keys(uses)).not.toContain('SL');
    // A letter by itself is a code of no ceramic.
    expect(all.every(([text]) => text.length > 1)).toBe(true);
  });

  test.each<[code: string, pieces: Short[]]>([
    [
      'N750',
      [
        ['N', 'usual', C, 'british'],
        ['V', 'rare', C, 'soviet'],
      ],
    ],
    [
      'P100',
      [
        ['A', 'usual', C, 'british'],
        ['A', 'rare', C, 'soviet'],
      ],
    ],
    ['X7R', []],
    ['Q', []],
  ])('%s in a single letter', (code, pieces) => {
    const all = codes(code, 'temperature:letter');
    expect(all.toSorted()).toEqual(pieces.toSorted());
  });

  test('none, where the part has none', () => {
    expect(found({}, 'temperature:code')).toEqual([]);
    expect(found({}, 'temperature:letter')).toEqual([]);
  });
});

describe('letters of the material and of the taper', () => {
  test.each<[part: PartToPrint, place: string, pieces: Short[]]>([
    // Words in capitals for the type; not the prefixes of styles, nor words in small letters.
    [
      { type: 'pet-metallized' },
      'dielectric',
      [
        ['MKT', 'usual', 'film'],
        ['MKS', 'usual', 'film'],
        ['MKH', 'usual', 'film'],
      ],
    ],
    [
      { type: 'ptfe' },
      'dielectric',
      [
        ['PTFE', 'usual', 'film'],
        ['ФТ', 'usual', 'film', 'soviet'],
      ],
    ],
    [
      { type: 'silvered-mica' },
      'dielectric',
      [
        ['КСО', 'usual', 'mica', 'soviet'],
        ['КСГ', 'usual', 'mica', 'soviet'],
        ['СГМ', 'usual', 'mica', 'soviet'],
        ['SM', 'usual', 'mica'],
        ['ССГ', 'usual', 'mica', 'soviet'],
        ['КСОТ', 'usual', 'mica', 'soviet'],
      ],
    ],
    [{ type: 'no-such-type' }, 'dielectric', []],
    [{}, 'dielectric', []],
    [
      { taper: 'logarithmic' },
      'taper:word',
      [
        ['LOG', 'usual', 'trimmer'],
        ['LOGARITHMIC', 'usual', 'trimmer'],
        ['AUDIO', 'usual', 'trimmer'],
      ],
    ],
    [
      { taper: 'S-shaped' },
      'taper:before',
      [
        ['W', 'other', 'trimmer'],
        ['G', 'rare', 'trimmer'],
      ],
    ],
    [{ taper: 'S-shaped' }, 'taper:word', []],
    [{}, 'taper:word', []],
  ])('%j in the place %s', (part, place, pieces) => {
    expect(found(part, place).map(short)).toEqual(pieces);
  });

  test('a letter of a taper stands before figures, or behind them and their letter', () => {
    const stands = (place: string, value: string): boolean | undefined =>
      found({ taper: 'S-shaped' }, place)[0]?.besides?.test(value);
    expect([stands('taper:before', '50K'), stands('taper:before', 'K5')]).toEqual([true, false]);
    expect([stands('taper:behind', '50K'), stands('taper:behind', '503')]).toEqual([true, false]);
    expect([stands('taper:behind', '100K'), stands('taper:behind', 'K50K')]).toEqual([true, false]);
    expect([stands('taper:behind', '4K7'), stands('taper:behind', 'K5')]).toEqual([false, false]);
    expect(found({ taper: 'linear' }, 'taper:word')[0]).not.toHaveProperty('besides');
  });
});
