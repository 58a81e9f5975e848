import { describe, expect, test } from 'vitest';
import { readColours, type ColourRequest } from '../../../src/engine/colours/index.ts';
import type { Reading } from '../../../src/engine/markings/index.ts';
import { catalogue } from '../markings/tables.ts';

/** `red ? gold` as colours, a question mark where one cannot tell. */
const coloursIn = (text: string) =>
  text.split(' ').map((name) => (name === '?' ? undefined : name));

const read = (form: string, text: string, more: Partial<ColourRequest> = {}): Reading[] =>
  readColours(catalogue, { form, colours: coloursIn(text), ...more });

/** What a reading comes to: `4700 ±5% 250V N750`, in SI units and per cent. */
const short = (reading: Reading | undefined): string => {
  if (reading === undefined) return 'nothing';
  const { resistance, capacitance, tolerance, ratedVoltage, temperatureCharacteristic } = reading;
  const value = resistance?.typ ?? capacitance?.typ;
  const size = (part: number): string =>
    tolerance?.unit === 'fraction' ? `${Number((part * 100).toPrecision(9))}%` : `${part}F`;
  return [
    value === undefined ? undefined : Number(value.toPrecision(9)),
    tolerance === undefined
      ? undefined
      : tolerance.minus === tolerance.plus
        ? `±${size(tolerance.plus)}`
        : `-${size(tolerance.minus)}+${size(tolerance.plus)}`,
    ratedVoltage === undefined ? undefined : `${ratedVoltage.typ}V`,
    temperatureCharacteristic?.code,
    reading.temperatureCoefficient === undefined
      ? undefined
      : `${Number((reading.temperatureCoefficient.max * 1e6).toPrecision(9))}ppm`,
  ]
    .filter((part) => part !== undefined)
    .join(' ');
};

describe('the first reading', () => {
  test.each([
    // Resistors.
    ['resistor', 'yellow violet red gold', '4700 ±5%', 'sure'],
    ['resistor', 'gold red violet yellow', '4700 ±5%', 'sure'],
    ['resistor', 'red red silver gold', '0.22 ±5%', 'sure'],
    ['resistor', 'silver brown black brown', '100 ±10%', 'sure'],
    ['resistor', 'yellow violet black brown brown', '4700 ±1%', 'sure'],
    ['resistor', 'brown green yellow gold red', '150000 ±5%', 'possible'],
    ['resistor', 'brown black black red brown', '10000 ±1%', 'likely'],
    ['resistor', 'orange orange orange', '33000 ±20%', 'sure'],
    ['resistor', 'brown black black brown brown red', '1000 ±1% 50ppm', 'sure'],
    ['resistor', 'black', '0', 'sure'],
    ['resistor-painted', 'green brown orange', '51000 ±20%', 'sure'],
    ['resistor-painted', 'red none brown', '220 ±20%', 'sure'],
    ['resistor-painted', 'yellow violet none gold', '470000 ±5%', 'sure'],
    // Ceramics.
    ['ceramic-tube', 'violet yellow violet black white', '4.7e-11 ±10% N750', 'sure'],
    ['ceramic-tube', 'black green violet white green', '5.7e-12 ±5e-13F NP0', 'possible'],
    ['ceramic-tube', 'black blue grey white brown', '6.8e-12 ±1e-13F NP0', 'sure'],
    ['ceramic-tube', 'orange orange yellow violet brown green', '4.7e-10 ±5% N1500', 'likely'],
    ['ceramic-tube', 'yellow violet brown white', '4.7e-10 ±10% 500V', 'sure'],
    ['ceramic-tip', 'violet', 'N750', 'sure'],
    ['ceramic-tip', 'red violet', 'P100', 'sure'],
    ['ceramic-body', 'red', 'М150 to М750', 'sure'],
    // Tantalum.
    ['tantalum-bead', 'yellow violet white yellow', '0.0000047 6.3V', 'sure'],
    ['tantalum-bead', 'brown black green red', '0.000001 10V', 'sure'],
    ['tantalum-bead', 'brown black black pink', '0.00001 35V', 'sure'],
    ['tantalum-bead', 'green', '32V', 'sure'],
    // Film.
    ['film-stripes', 'brown black yellow black red', '1e-7 ±20% 250V', 'sure'],
    ['film-stripes', 'red violet orange', '2.7e-8', 'sure'],
    ['film-roll', 'red', '160V', 'sure'],
    // Mica and paper.
    ['moulded-block', 'black green brown red yellow black', '5.1e-11 ±4% 500V C', 'likely'],
    ['moulded-block', 'white brown red red silver red', '1.2e-9 ±10% 500V C', 'sure'],
    ['moulded-block', 'silver brown red red silver red', '1.2e-9 ±10% 500V', 'sure'],
    ['moulded-block', 'black blue grey red gold red', '6.8e-9 ±5% 300V C', 'sure'],
    ['moulded-block', 'red green black none none', '2.5e-11 ±20% 500V', 'sure'],
    ['moulded-block', 'red green black', '2.5e-11 ±20% 500V', 'sure'],
    ['moulded-tube', 'red red orange black brown black', '2.2e-8 ±20% 1000V', 'likely'],
    ['moulded-tube', 'brown black yellow white blue', '1e-7 ±10% 600V', 'sure'],
  ])('%s: %s is %s, %s', (form, text, wanted, sure) => {
    const [reading] = read(form, text);
    expect(short(reading)).toBe(wanted);
    expect(reading?.sure).toBe(sure);
  });
});

describe('what is offered besides', () => {
  test.each([
    ['resistor', 'brown black black red brown', '120 ±1%'],
    ['resistor', 'brown black black red violet', '10 ±2%'],
    ['resistor', 'brown green yellow gold red', '15.4 ±2%'],
    ['resistor', 'yellow violet red orange', '4700 ±3%'],
    ['ceramic-tip', 'yellow', '±10%'],
    ['moulded-block', 'brown green red', '1.5e-9'],
    ['tantalum-bead', 'brown black brown black', '0.0001 10V'],
  ])('%s: %s may be %s', (form, text, wanted) => {
    expect(read(form, text).map(short)).toContain(wanted);
  });

  test('nothing that a colour makes impossible', () => {
    expect(read('tantalum-bead', 'red red white green').map((r) => r.colours?.scheme)).toEqual([
      'tantalum-european',
    ]);
    expect(read('resistor', 'yellow violet red gold')).toHaveLength(1);
  });

  test('what tells two schemes apart, and what measuring would show', () => {
    const [first, second] = read('resistor', 'brown black black red violet');
    expect(first?.settleBy).toContain('measure: 10 kΩ or 10 Ω');
    expect(second?.settleBy.join()).toContain('fusible');
  });
});

describe('the end to begin at', () => {
  const begin = (text: string, more: Partial<ColourRequest> = {}): string | undefined =>
    read('resistor', text, more)[0]?.evidence.find((each) => each.text.startsWith('begins'))?.means;

  test('is told by a colour that cannot come first', () => {
    expect(begin('yellow violet red gold')).toContain('gold would be a figure, which it never is');
    expect(begin('gold red violet yellow')).toContain('gold would be a figure, which it never is');
  });

  test('is told by the series of values', () => {
    expect(begin('yellow violet black red brown')).toContain('1.2 GΩ, which such parts do not');
    expect(begin('brown black black orange red')).toContain('which is in no series');
  });

  test('is left open where both make sense, the given one first', () => {
    expect(begin('brown black black red brown')).toContain('from the other end it would be 120 Ω');
    expect(begin('brown red black black brown')).toContain('from the other end it would be 10 kΩ');
  });

  test('follows the band that stands apart', () => {
    const [first] = read('resistor', 'brown black black red brown', { apart: 'first' });
    expect(short(first)).toBe('120 ±1%');
    expect(first?.colours?.turned).toBe(true);
    expect(begin('brown black black red brown', { apart: 'first' })).toContain('stands apart');
    const [plain] = read('resistor', 'brown black black red brown', { apart: 'last' });
    expect(short(plain)).toBe('10000 ±1%');
  });

  test('a broad first band is a wirewound part', () => {
    const schemes = read('resistor', 'yellow violet red gold', { apart: 'first' }).map(
      ({ colours }) => colours?.scheme,
    );
    expect(schemes).toEqual(['resistor-4-wirewound']);
  });

  test('means nothing where the colours are the same from both ends', () => {
    expect(begin('brown red red brown')).toBeUndefined();
  });
});

describe('a colour that one cannot tell', () => {
  const values = (text: string): number[] =>
    read('resistor', text).map(({ resistance }) => Number(resistance?.typ.toPrecision(6)));

  test('gives every value that it may have been, preferred ones first', () => {
    const found = values('yellow ? red gold');
    expect(found.slice(0, 2)).toEqual([4700, 4300]);
    expect([...found].sort((a, b) => a - b)).toEqual([
      4000, 4100, 4200, 4300, 4400, 4500, 4600, 4700, 4800, 4900,
    ]);
    const [first] = read('resistor', 'yellow ? red gold');
    expect(first?.colours).toMatchObject({
      marks: ['yellow', 'violet', 'red', 'gold'],
      guessed: [1],
    });
    expect(first?.evidence.map(({ text }) => text)).toContain('violet? (2nd band)');
  });

  test('in two places', () => {
    const found = values('yellow violet ? ?');
    expect(found).toContain(4700);
    expect(found).toContain(0.47);
    expect(values('? ? red gold')[0]).toBe(1000);
  });

  test('in too many places leaves no value', () => {
    const [first] = read('resistor', '? ? ? gold');
    expect(short(first)).toBe('±5%');
    expect(first?.sure).toBe('possible');
  });

  test('leaves open what only it would tell', () => {
    const [first] = read('resistor', 'yellow violet red ?');
    expect(short(first)).toBe('4700');
    expect(first?.sure).toBe('likely');
    expect(first?.notUnderstood).toEqual(['4th band, not known']);
  });

  test('everywhere reads as nothing', () => {
    expect(read('resistor', '? ? ? ?')).toEqual([]);
  });
});

test('types follow the colours', () => {
  expect(read('moulded-block', 'silver brown red red silver red')[0]?.types).toEqual([
    'paper-wax',
    'paper-oil',
  ]);
  expect(read('ceramic-tip', 'black')[0]?.types).toEqual(['ceramic-c0g']);
  expect(read('film-stripes', 'red violet orange')[0]?.types).toContain('pet-metallized');
});

test('one scheme alone, and an unknown one', () => {
  const colours = ['brown', 'black', 'black', 'red', 'violet'];
  const [only, ...more] = readColours(catalogue, { scheme: 'resistor-5-type', colours });
  expect(short(only)).toBe('10 ±2%');
  expect(more).toEqual([]);
  expect(readColours(catalogue, { scheme: 'no-such', colours })).toEqual([]);
  expect(readColours(catalogue, { form: 'no-such', colours })).toEqual([]);
});
