import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { sliceKindPosition } from '../../src/catalogue/slices/slice-kind.ts';
import { slicePosition } from '../../src/catalogue/slices/slice-position.ts';
import { exactly, findStandIns, type Catalogue, type Request } from '../../src/engine/index.ts';
import { answerSentence } from '../../src/substitution/answer.ts';
import {
  answeredFirst,
  strangeness,
  strangenessOfType,
  type OldInPlace,
} from '../../src/substitution/strangeness.ts';
import { single } from '../engine/findings/by-hand.ts';

const catalogue = loadCatalogue();

/** An old part of a type, in a place that wants nothing special of it unless another is named. */
const at = (type: string, position = 'interstage-coupling') => ({ original: { type }, position });

describe('the list begins with what the answer names, and keeps its ranking behind it', () => {
  test.each([
    // A Y2 film where a Y2 film was, though a ceramic disc has more to spare.
    ['film-y2', 'mains-y', 'film-y2'],
    // Film with leads of the old part's family before a ceramic that does as well.
    ['pet-metallized', 'interstage-coupling', 'pp-metallized'],
    // Film for paper, which was wound as film is, before a ceramic of its value.
    ['paper-wax', 'interstage-coupling', 'pp-metallized'],
    // What everybody stocks before what some do, here mica.
    ['pet-metallized', 'vco-timing', 'ceramic-c0g'],
  ])('%s in %s', (original, position, first) => {
    const request = { original: { type: original }, position };
    const ranked = findStandIns(catalogue, request);
    const listed = answeredFirst(catalogue, request, ranked);
    expect(listed[0]?.candidate.type).toBe(first);
    expect(listed.slice(1)).toEqual(ranked.filter((one) => one !== listed[0]));
    const { short_name: name } = catalogue.types[first] ?? { short_name: '' };
    const sentence = answerSentence(catalogue, request, ranked);
    expect(sentence.toLowerCase().startsWith(name.toLowerCase())).toBe(true);
  });

  test('where nothing fits, nothing is moved', () => {
    const request = { original: { type: 'film-y2' }, position: 'mains-y' };
    const ranked = findStandIns(catalogue, request).filter(({ verdict }) => verdict === 'keep-out');
    expect(answeredFirst(catalogue, request, ranked)).toEqual(ranked);
    expect(answeredFirst(catalogue, request, [])).toEqual([]);
  });
});

describe('what counts against a part is what rules-of-thumb.csv says', () => {
  const heavier: Catalogue = {
    ...catalogue,
    rulesOfThumb: Object.fromEntries(
      Object.entries(catalogue.rulesOfThumb).map(([id, values]) => [
        id,
        id.startsWith('against-') ? values.map((value) => value * 8) : values,
      ]),
    ),
  };

  test.each<[string, string, string, Partial<OldInPlace['original']>]>([
    ['common, of the same family', 'pet-metallized', 'pp-metallized', {}],
    ['of another family', 'pet-metallized', 'ceramic-c0g', {}],
    ['stocked by few', 'pet-metallized', 'polystyrene', {}],
    ['made for a low resistance', 'al-electrolytic-wet', 'al-electrolytic-low-esr', {}],
    ['of another value', 'pet-metallized', 'pp-metallized', { capacitance: 1e-9 }],
    ['as small as film', 'pet-metallized', 'al-electrolytic-wet', {}],
  ])('%s: eight times as much where the rows say so', (_says, type, stand, said) => {
    const old = { original: { type, ...said }, position: 'interstage-coupling' };
    const candidate = { ...single, type: stand, capacitance: 10e-9 };
    const [now, then] = [catalogue, heavier].map((all) => strangeness(all, old, { candidate }));
    expect(then).toBeCloseTo(8 * (now ?? NaN), 9);
    expect(now === 0).toBe(stand === 'pp-metallized' && said.capacitance === undefined);
  });

  test('the slice of a place of another kind has them', () => {
    const slice = sliceKindPosition(catalogue, 'gain-resistor');
    const types = Object.values(catalogue.kindTypes).filter(({ kind }) => kind === 'resistor');
    const told = (tables: Catalogue): number[] =>
      types.flatMap(({ id: old }) =>
        types.map(({ id }) => strangenessOfType(tables, at(old, 'gain-resistor'), id)),
      );
    expect(told(slice)).toEqual(told(catalogue));
    expect(new Set(told(slice)).size).toBeGreaterThan(1);
  });
});

describe('whose family a type is taken for is what families.csv says', () => {
  /** The tables with the families of invented types, and one kinship. */
  const made = (kin: Readonly<Record<string, string>>): Catalogue => {
    const [type, family] = [catalogue.types['pet-metallized'], catalogue.families['film']];
    if (type === undefined || family === undefined) throw new Error('no row to begin with');
    const types = ['slate', 'shale', 'chalk'].map((id) => ({ ...type, id, family: `${id}-stone` }));
    const families = Object.entries(kin).map(([id, of]) => ({ ...family, id, kin: of }));
    return {
      ...catalogue,
      types: Object.fromEntries(types.map((row) => [row.id, row])),
      families: Object.fromEntries(families.map((row) => [row.id, row])),
    };
  };
  const kin = { 'slate-stone': 'shale-stone', 'shale-stone': '', 'chalk-stone': '' };

  test.each([
    ['slate', 'slate', 0],
    ['slate', 'shale', 0],
    ['shale', 'slate', 0],
    ['slate', 'chalk', 1],
    ['chalk', 'shale', 1],
  ])('%s for %s counts %s against it, both stocked by all', (type, original, strange) => {
    expect(strangenessOfType(made(kin), at(original), type)).toBe(strange);
  });

  test('a family without a row is its own', () => {
    expect(strangenessOfType(made({}), at('slate'), 'slate')).toBe(0);
    expect(strangenessOfType(made({}), at('slate'), 'shale')).toBe(1);
  });

  test('the slice of a position says the same of all types', () => {
    const slice = slicePosition(catalogue, 'interstage-coupling');
    const types = Object.keys(catalogue.types);
    const told = (tables: Catalogue): number[] =>
      types.flatMap((one) => types.map((other) => strangenessOfType(tables, at(one), other)));
    expect(told(slice)).toEqual(told(catalogue));
  });
});

describe('small electrolytics and seldom styles', () => {
  const firstFor = (type: string, capacitance: number, position: string) => {
    const request = { original: { type, capacitance: exactly(capacitance) }, position };
    return answeredFirst(catalogue, request, findStandIns(catalogue, request))[0];
  };

  // Up to the value of families.csv film goes in for an electrolytic; above it, one like the old part.
  test.each([
    [0.22e-6, 'film'],
    [0.47e-6, 'film'],
    [1e-6, 'film'],
    [2.2e-6, 'aluminium'],
    [10e-6, 'aluminium'],
  ])('%d F of an electrolytic between stages is first of all of %s', (farads, family) => {
    const first = firstFor('al-electrolytic-wet', farads, 'interstage-coupling');
    expect(first?.verdict).toBe('fits');
    expect(catalogue.types[first?.candidate.type ?? '']?.family).toBe(family);
  });

  // Film of some hundred picofarads is made in few types: one of the value, be it of foil or of ceramic.
  test.each([
    ['ps-film-foil', 680e-12, 'input-coupling-high-impedance', 680e-12],
    ['ps-film-foil', 470e-12, 'input-coupling-high-impedance', 470e-12],
    ['pp-film-foil', 470e-12, 'input-coupling-high-impedance', 470e-12],
    ['pet-film-foil', 330e-12, 'interstage-coupling', 330e-12],
    // A step of preferred values is no other value: 8 µF gives way to 10 µF of its kind.
    ['al-electrolytic-wet', 8e-6, 'cathode-bypass', 10e-6],
  ])('%s of %d F in %s gives way to %d F', (type, farads, position, nearest) => {
    const first = firstFor(type, farads, position);
    expect(first?.verdict).toBe('fits');
    expect(first?.candidate.capacitance).toBeCloseTo(nearest, 15);
  });

  // Film of 1 % that few keep has more to spare there, and comes after what every dealer has.
  test.each(['interstage-coupling', 'peak-detector', 'agc-bypass', 'rc-filter-audio'])(
    'no part that is made to order comes first in %s where one from any dealer fits',
    (position) => {
      const first = firstFor('al-electrolytic-bipolar', 0.47e-6, position);
      expect(catalogue.seldomStyles).toContain('axial precision');
      expect(first?.verdict).toBe('fits');
      expect(first?.candidate.type).toBe('pet-metallized');
      expect(catalogue.seldomStyles).not.toContain(first?.buy?.style);
    },
  );
});

describe('a plain part comes before one that is made for what nothing asked for', () => {
  // One takes an electrolytic of low impedance for its ripple current at the rate of a converter; under
  // an emitter, beside a rectifier at 100 Hz and at a regulator the plain one is what was there.
  test.each([
    ['al-electrolytic-wet', 'emitter-bypass', 'al-electrolytic-wet'],
    ['al-electrolytic-wet', 'cathode-bypass', 'al-electrolytic-wet'],
    ['al-electrolytic-wet', 'reservoir', 'al-electrolytic-wet'],
    ['al-electrolytic-wet', 'bulk-rail', 'al-electrolytic-wet'],
    ['al-electrolytic-wet', 'output-coupling', 'al-electrolytic-wet'],
    ['al-solid-mno2', 'emitter-bypass', 'al-electrolytic-wet'],
    // What was there was taken for the same.
    ['al-electrolytic-low-esr', 'reservoir', 'al-electrolytic-low-esr'],
    ['al-electrolytic-low-esr', 'bulk-rail', 'al-electrolytic-low-esr'],
    ['al-polymer', 'reservoir', 'al-electrolytic-low-esr'],
    // The place wants it, whatever was there.
    ['al-electrolytic-wet', 'converter-output', 'al-electrolytic-low-esr'],
    ['al-electrolytic-low-esr', 'converter-output', 'al-electrolytic-low-esr'],
    // Steady ceramics are for places that ask for steadiness; a decoupling disc was the plain kind.
    ['ceramic-z5u', 'local-decoupling', 'ceramic-x7r'],
    // Nor does a wound film, paper or a small bead come before it there.
    ['pet-metallized', 'local-decoupling', 'ceramic-x7r'],
    ['pp-film-foil', 'local-decoupling', 'ceramic-x7r'],
    ['paper-wax', 'local-decoupling', 'ceramic-x7r'],
    ['ceramic-x7r', 'agc-bypass', 'ceramic-x7r'],
    ['ceramic-z5u', 'rc-filter-audio', 'ceramic-c0g'],
    ['silvered-mica', 'vco-timing', 'silvered-mica'],
    // What is made for the mains has no place in a loudspeaker, and its place across a winding.
    ['pp-metallized', 'speaker-crossover', 'pp-metallized'],
    ['pp-metallized', 'transformer-snubber', 'film-x2'],
    // Where none of a type has leads in such a value, the old one was a chip, and so is the new one.
    ['ta-polymer', 'bulk-rail', 'ta-polymer'],
    ['ceramic-x5r', 'bulk-rail', 'ceramic-x5r'],
    // One with leads of the next rating comes before a chip of the lowest.
    ['ta-mno2-solid', 'bootstrap', 'ta-mno2-solid'],
    ['ps-film-foil', 'vco-timing', 'ceramic-c0g'],
    // What the old part was, if it is still sold; a timing place wants a low leakage besides.
    ['pp-film-foil', 'snubber', 'pp-film-foil'],
    ['pp-film-foil', 'equaliser-riaa', 'pp-film-foil'],
    ['al-low-leakage', 'reset-delay', 'al-low-leakage'],
    ['al-low-leakage', 'agc-bypass', 'al-low-leakage'],
    ['al-electrolytic-low-esr', 'reset-delay', 'al-electrolytic-wet'],
    ['ceramic-c0g', 'reset-delay', 'ceramic-c0g'],
    // But no polymer part where none is wanted.
    ['ta-polymer', 'agc-bypass', 'ta-mno2-solid'],
    // What switched with a polymer part is set up for its resistance.
    ['al-polymer', 'converter-output', 'al-polymer'],
    // What the regulator has lived with needs no resistor.
    ['ceramic-x7r', 'regulator-output', 'ceramic-x7r'],
  ])('%s in %s: %s', (type, position, first) => {
    const request = at(type, position);
    const [answer] = answeredFirst(catalogue, request, findStandIns(catalogue, request));
    expect([answer?.candidate.type, answer?.verdict]).toEqual([first, 'fits']);
  });

  test('what a type is made for is what types.csv says', () => {
    const counted = (original: string, type: string, tables: Catalogue = catalogue): number =>
      strangenessOfType(tables, at(original), type);
    const low = 'al-electrolytic-low-esr';
    expect(counted('al-electrolytic-wet', 'al-electrolytic-wet')).toBe(0);
    expect(counted('al-electrolytic-wet', low)).toBeGreaterThan(0);
    expect(counted('al-electrolytic-wet', low)).toBeLessThan(counted('ta-mno2-solid', low));
    expect(counted(low, low)).toBe(0);
    expect(counted('al-low-leakage', low)).toBe(counted('al-electrolytic-wet', low));
    const row = catalogue.types[low];
    if (row === undefined) throw new Error('no such type');
    const plain = { ...catalogue.types, [low]: { ...row, chosen_for: '' } };
    expect(counted('al-electrolytic-wet', low, { ...catalogue, types: plain })).toBe(0);
  });
});

test('where a place wants what some parts of a family are made for, its plain ones come after', () => {
  const counted = (original: string, type: string): number =>
    strangenessOfType(catalogue, at(original, 'converter-output'), type);
  const [plain, low] = ['al-electrolytic-wet', 'al-electrolytic-low-esr'];
  expect(counted(plain, low)).toBe(0);
  expect(counted(plain, plain)).toBeGreaterThan(0);
  expect(counted(low, plain)).toBeGreaterThan(0);
  // No film is made for it, so none is too plain.
  expect(counted('pet-metallized', 'pp-metallized')).toBe(0);
});

// What feeds a converter's load at 50 kHz is replaced by its like of whatever size, not by a larger plain one.
describe('behind a converter', () => {
  test.each([
    [1000e-6, 50],
    [470e-6, 63],
    [1000e-6, 63],
    [2200e-6, 16],
    [3300e-6, 10],
    [4700e-6, 10],
    [1000e-6, 35],
    [2200e-6, 35],
    [2200e-6, 50],
    [470e-6, 25],
    [22e-6, 160],
  ])('%f F for %d V', (farad, volts) => {
    const request: Request = {
      original: {
        type: 'al-electrolytic-low-esr',
        capacitance: exactly(farad),
        ratedVoltage: exactly(volts),
      },
      position: 'converter-output',
    };
    const [first] = answeredFirst(catalogue, request, findStandIns(catalogue, request));
    expect(first?.candidate).toMatchObject({
      type: 'al-electrolytic-low-esr',
      ratedVoltage: volts,
    });
    expect((first?.candidate.capacitance ?? 0) / farad).toBeCloseTo(1, 6);
    expect(first?.verdict).toBe('fits');
  });
});
