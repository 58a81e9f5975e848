import { describe, expect, test } from 'vitest';
import { readMarking, type Hints, type Reading } from '../../../src/engine/markings/index.ts';
import { catalogue } from './tables.ts';

/** Single markings that were typed into the reader as they stood on parts, where each was read wrongly at first. */

interface Told {
  /** F, ohm, V, W. */
  c?: number;
  r?: number;
  volts?: number;
  watts?: number;
  /** The wider side, as a fraction. */
  within?: number;
  type?: string;
  sure?: 'sure';
}

const toldBy = (mark: string): Told => {
  const [best] = readMarking(catalogue, mark);
  if (best === undefined) return {};
  const { capacitance, resistance, ratedVoltage, power, tolerance, types, sure } = best;
  return {
    ...(capacitance === undefined ? {} : { c: capacitance.typ }),
    ...(resistance === undefined ? {} : { r: resistance.typ }),
    ...(ratedVoltage === undefined ? {} : { volts: ratedVoltage.typ }),
    ...(power === undefined ? {} : { watts: power.typ }),
    ...(tolerance?.unit === 'fraction' ? { within: tolerance.plus } : {}),
    ...(types[0] === undefined ? {} : { type: types[0] }),
    ...(sure === 'sure' ? { sure } : {}),
  };
};

const near = (told: Told): unknown =>
  Object.fromEntries(
    Object.entries(told).map(([key, value]) => [
      key,
      typeof value === 'number' ? expect.closeTo(value, 15) : (value as unknown),
    ]),
  );

/** What the best reading says, save how sure it is and its type where a case does not ask. */
const check = (mark: string, asked: Told): void => {
  const { type, sure, ...values } = toldBy(mark);
  const told = {
    ...values,
    ...(asked.type === undefined ? {} : { type }),
    ...(asked.sure === undefined ? {} : { sure }),
  };
  expect(told).toEqual(near(asked));
};

describe('signs behind values', () => {
  test.each<[string, Told]>([
    ['10k±1%', { r: 10e3, within: 0.01 }],
    ['10k+-1%', { r: 10e3, within: 0.01 }],
    ['10k+/-5%', { r: 10e3, within: 0.05 }],
    ['4k7-5%', { r: 4700, within: 0.05 }],
    ['22k/0,5', { r: 22e3, watts: 0.5 }],
    ['4k7/0.25', { r: 4700, watts: 0.25 }],
    ['10E', { r: 10 }],
    ['К53-1 15х20', { c: 15e-6, volts: 20 }],
    ['К50-20 1000x50', { c: 1e-3, volts: 50 }],
    ['100µF 25x', { c: 100e-6 }],
  ])('%s', check);

  // Ohms in a list and on parts with leads, ten thousands in the code of chips: each is offered beside the other.
  test.each<[string, Hints, number, number]>([
    ['10E', {}, 10, 1.24e6],
    ['10E', { kind: 'resistor' }, 10, 1.24e6],
    ['47E', { kind: 'resistor' }, 47, 3.01e6],
    ['10E', { body: 'resistor-chip' }, 1.24e6, 10],
    ['22E', { body: 'resistor-chip' }, 1.65e6, 22],
  ])('%s with %o is in ohms, and in tens of thousands on a chip', (mark, hints, first, second) => {
    const readings = readMarking(catalogue, mark, hints).filter(({ kind }) => kind === 'resistor');
    const ohms = readings.map(({ resistance }) => resistance?.typ);
    expect(ohms.slice(0, 2)).toEqual([expect.closeTo(first, 3), expect.closeTo(second, 3)]);
    expect(readings[0]?.sure).not.toBe('sure');
    expect(
      readings
        .slice(0, 2)
        .flatMap(({ settleBy }) => settleBy)
        .join(),
    ).toContain('ohmmeter');
  });
});

describe('numbers of the American military', () => {
  test.each<[string, Told]>([
    ['D55342K07B10D0R', { r: 10, within: 0.01 }],
    ['M55342K06B10E0R', { r: 10e3, within: 0.01 }],
    ['M55342/06B4K70M', { r: 4700, within: 0.05 }],
    ['D55342E07B1H00S', { r: 1000, within: 0.02 }],
    ['RW29V102', { r: 1000, watts: 11 }],
    ['RW33G501', { r: 500, watts: 26 }],
    ['RB08CE10001B', { r: 10e3, within: 0.001 }],
    ['RV4NAYSD103A', { r: 10e3 }],
    ['RT22C2X502', { r: 5000 }],
    // The figure behind the tolerance letter is none of volts.
    ['CQ09A1MC104K3', { c: 100e-9, within: 0.1 }],
    ['CPV09A1KE103K3', { c: 10e-9, within: 0.1 }],
    ['CH09A1NB105K', { c: 1e-6, within: 0.1 }],
    ['226M6', { c: 22e-6, within: 0.2, volts: 6 }],
    // Three figures of the paper styles are pF, and of the wet tantalum ones µF; the letter behind is a tolerance.
    ['CP53B1FF105V', { c: 1e-6, within: 0.2, type: 'paper-oil' }],
    ['CP61B1FF205V', { c: 2e-6, within: 0.2, type: 'paper-oil' }],
    ['CP53B1EF104V1', { c: 100e-9, within: 0.2, type: 'paper-oil' }],
    ['CL65BJ100MP3', { c: 10e-6, within: 0.2, type: 'ta-wet' }],
    ['CL35BJ060MP3', { c: 6e-6, within: 0.2, type: 'ta-wet' }],
    ['CL65BH600MP3', { c: 60e-6, within: 0.2, type: 'ta-wet' }],
    ['CL24BC101MP3', { c: 100e-6, within: 0.2, type: 'ta-wet' }],
    // The same letters of a Chinese film stay what they are.
    ['CL21 104J', { c: 100e-9, within: 0.05, type: 'pet-metallized' }],
  ])('%s', check);
});

describe('small chips', () => {
  test.each<[string, Told]>([
    ['A7', { c: 10e-6 }],
    ['S3', { c: 4.7e-9 }],
    ['JA7', { c: 10e-6, volts: 6.3 }],
    ['GS6', { c: 4.7e-6, volts: 4 }],
    ['JA', {}],
  ])('%s', check);
});

describe('letters of pots beside those of chips', () => {
  test.each<[string, Told]>([
    ['A475', { c: 4.7e-6, volts: 10 }],
    ['A225', { c: 2.2e-6, volts: 10 }],
    ['A105', { r: 1e6 }],
    ['A504', { r: 500e3 }],
    ['B505', { r: 5e6 }],
  ])('%s', check);

  test.each<[string, number, Reading['taper']]>([
    ['A100K dual', 100e3, 'logarithmic'],
    ['50k lin stereo', 50e3, 'linear'],
    ['dual gang 10k log', 10e3, 'logarithmic'],
    ['10kx2A', 10e3, 'logarithmic'],
    ['10k x2 A', 10e3, 'logarithmic'],
    ['10kx2 B', 10e3, 'linear'],
    ['100k×2C', 100e3, 'reverse logarithmic'],
    ['2x47kB', 47e3, 'linear'],
  ])('%s is two on one shaft', (mark, ohms, taper) => {
    const [best] = readMarking(catalogue, mark);
    expect([best?.resistance?.typ, best?.gangs, best?.taper]).toEqual([ohms, 2, taper]);
  });
});

describe('words and styles that stand beside a value', () => {
  test.each<[string, Told]>([
    // A value with its unit, or a can's sections, is not left aside for volts with a stroke.
    ['Elko 250µF 15/18V', { c: 250e-6, volts: 15, type: 'al-electrolytic-wet' }],
    ['MKL 10/63', { c: 10e-6, volts: 63 }],
    ['100nX2', { c: 100e-9, type: 'film-x2' }],
    ['0,15µF ~250V', { c: 150e-9, volts: 250 }],
    ['K73-17 0,22 х 630В', { c: 220e-9, volts: 630, type: 'pet-metallized' }],
    ['22 bipolar', { c: 22e-6, type: 'al-electrolytic-bipolar' }],
    ['47 tantalum', { c: 47e-6, type: 'ta-mno2-solid' }],
    ['TC 235 M1 160V', { c: 100e-9, volts: 160, type: 'pet-metallized' }],
    ['TC 180 M22', { c: 220e-9, type: 'metallized-paper' }],
    ['TE 984 50M 15V', { c: 50e-6, within: 0.2, volts: 15, type: 'al-electrolytic-wet' }],
    ['TK 783 10n', { c: 10e-9, type: 'ceramic-disc-unknown' }],
    ['TR 212 M1', { r: 100e3 }],
    ['TP 280 M25/N', { r: 250e3 }],
    ['AC05 2K2', { r: 2200, watts: 5 }],
    ['PT15 220k', { r: 220e3 }],
    ['КЛМ 100М', { r: 100e6 }],
    ['С5-16В 5Вт 0,1 Ом', { r: 0.1, watts: 5 }],
    ['k56', { r: 560 }],
    ['ВСа 0.25 47К', { r: 47e3, watts: 0.25 }],
    ['ППБ-3 1к', { r: 1000, watts: 3 }],
    ['СПЗ-1а 10К', { r: 10e3 }],
    ['СП5-16ВА 0,25 1к', { r: 1000, watts: 0.25 }],
  ])('%s', check);

  test.each<[string, number, Reading['taper'], number | undefined]>([
    ['500K-A', 500e3, 'logarithmic', undefined],
    ['СП-1 1М А', 1e6, 'linear', undefined],
    ['СП-II 470к-Б', 470e3, 'reverse logarithmic', undefined],
    ['B10K x 2', 10e3, 'linear', 2],
    ['2 x 22k log', 22e3, 'logarithmic', 2],
  ])('%s is a pot', (mark, ohms, taper, gangs) => {
    const [best] = readMarking(catalogue, mark);
    expect([best?.resistance?.typ, best?.taper, best?.gangs]).toEqual([ohms, taper, gangs]);
  });

  test.each(['6...30 pF', '6..30pF', '6…30 pF', 'Folientrimmer 6/30'])('%s can be set', (mark) => {
    const [best] = readMarking(catalogue, mark);
    expect([best?.capacitance?.min, best?.capacitance?.max]).toEqual([
      expect.closeTo(6e-12, 15),
      expect.closeTo(30e-12, 15),
    ]);
  });
});

describe('figures with gaps between value, tolerance and volts', () => {
  test.each<[string, Told]>([
    ['KS 4700 2,5 25', { c: 4.7e-9, within: 0.025, volts: 25, type: 'ps-film-foil' }],
    ['KS 4700 1 63', { c: 4.7e-9, within: 0.01, volts: 63, type: 'ps-film-foil' }],
    ['KP 2200 5 160', { c: 2.2e-9, within: 0.05, volts: 160, type: 'pp-film-foil' }],
    ['4700 5 125', { c: 4.7e-9, within: 0.05, volts: 125 }],
  ])('%s', check);
});

describe('Soviet and East German parts', () => {
  test.each<[string, Told]>([
    ['УЛМ 0,12 56к', { r: 56e3, watts: 0.12 }],
    ['УЛИ 0,5 1,24к 1%', { r: 1240, watts: 0.5, within: 0.01 }],
    ['БЛП-0,1 10к 0,5%', { r: 10e3, watts: 0.1, within: 0.005 }],
    ['С2-29В 0,25 10,2к 0,1%', { r: 10.2e3, watts: 0.25, within: 0.001 }],
    ['ВС 1 2,2 МОм 10%', { r: 2.2e6, watts: 1, within: 0.1 }],
    ['С5-37 5 3К', { r: 3000, watts: 5 }],
    ['МЛТ-0,5 100К±5%', { r: 100e3, watts: 0.5, within: 0.05 }],
    ['МЛТ 470', { r: 470 }],
    ['К40П-2 0,01 400', { c: 10e-9, volts: 400, type: 'paper-oil' }],
    ['ССГ-1 510', { c: 510e-12, type: 'silvered-mica' }],
    ['КСОТ-1 510', { c: 510e-12, type: 'silvered-mica' }],
    ['HDK 10n', { c: 10e-9, type: 'ceramic-disc-unknown' }],
    ['NDK 47p', { c: 47e-12, type: 'ceramic-class1-other' }],
    ['Epsilan 4700 pF', { c: 4.7e-9, type: 'ceramic-disc-unknown' }],
    ['EDPU 10n', { c: 10e-9, type: 'ceramic-disc-unknown' }],
    ['LH 22', { c: 22e-12, type: 'ceramic-class1-other' }],
    ['YF 103Z', { c: 10e-9, within: 0.8, type: 'ceramic-y5v' }],
  ])('%s', check);

  test.each([
    ['КПК-М 4/15', 4e-12, 15e-12],
    ['КПК-1 8/30', 8e-12, 30e-12],
    ['C-Trimmer 10/60', 10e-12, 60e-12],
    ['КПК-МП 6-25', 6e-12, 25e-12],
  ])('%s is adjustable', (mark, least, most) => {
    const [best] = readMarking(catalogue, mark);
    expect([best?.capacitance?.min, best?.capacitance?.max]).toEqual([
      expect.closeTo(least, 15),
      expect.closeTo(most, 15),
    ]);
    expect(best?.types).toEqual(['air-variable']);
  });
});

describe('styles of parts for the mains and of presets', () => {
  test.each<[string, Told]>([
    ['PME 271 M 0.1 250V~', { c: 100e-9, volts: 250, type: 'paper-x-safety' }],
    ['PME271M 0.1uF 250V~ X2', { c: 100e-9, volts: 250, type: 'paper-x-safety' }],
    ['PHE820 0,1 X2', { c: 100e-9, type: 'film-x2' }],
    ['T93YA 10K', { r: 10e3, watts: 0.5 }],
  ])('%s', check);
});
