import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { formatValue, readMarking, waysPrinted, type Reading } from '../../src/engine/index.ts';
import { sayCharacteristic } from '../../src/engine/markings/index.ts';
import { toHtml } from '../../src/markup/to-html.ts';
import { codePage, listedCodes } from '../../src/reading/codes/index.ts';
import { codeSlug } from '../../src/reading/codes/slug.ts';

const catalogue = loadCatalogue();
const codes = listedCodes(catalogue);
const pages = codes.map((own) => ({ own, page: codePage(catalogue, own, codes) }));
const ofKind = (kind: string) => pages.filter(({ own }) => own.kind === kind);

describe('addresses', () => {
  test('are the same on systems that do not tell capital from small letters', () => {
    for (const { slug } of codes) expect(slug).toMatch(/^[a-z0-9]+(?:-[a-z0-9]+)*$/);
    expect(new Set(codes.map(({ slug }) => slug)).size).toBe(codes.length);
  });

  test('are none that a file may not have', () => {
    for (const { slug } of codes) expect(slug).not.toMatch(/^(?:con|prn|aux|nul|com\d|lpt\d)$/);
  });

  test.each([
    ['473', '473'],
    ['2A', '2a'],
    ['k', 'small-k'],
    ['K', 'k'],
    ['М47', 'cyrillic-m47'],
    ['P350-N1000', 'p350-n1000'],
    ['X1/Y2', 'x1-y2'],
    ['4µ7', '4micro7'],
  ])('%s is %s', (code, slug) => {
    expect(codeSlug(code)).toBe(slug);
  });
});

/** What has to have a page, from the series and the standards themselves and not from our tables. */
describe('every common code has a page', () => {
  const known = new Set(
    codes.flatMap(({ kind, code, also }) => [code, ...also].map((one) => `${kind} ${one}`)),
  );
  const missing = (kind: string, wanted: readonly string[]): string[] =>
    wanted.filter((code) => !known.has(`${kind} ${code}`));

  test('145 three-figure codes: E24 from 10 pF to 10 µF', () => {
    const e24 = '10 11 12 13 15 16 18 20 22 24 27 30 33 36 39 43 47 51 56 62 68 75 82 91'.split(
      ' ',
    );
    const wanted = [0, 1, 2, 3, 4, 5].flatMap((noughts) => e24.map((two) => `${two}${noughts}`));
    expect([...wanted, '106']).toHaveLength(145);
    expect(missing('value', [...wanted, '106'])).toEqual([]);
  });

  test('voltage codes: the letters of the R10 series, V, W and their powers', () => {
    const wanted = ['0', '1', '2', '3'].flatMap((figure) =>
      [...'ABCDEFGHJK'].map((letter) => figure + letter),
    );
    expect(missing('voltage', [...wanted, '1V', '2V', '2W', '0L', '0G', '0J'])).toEqual([]);
  });

  test('temperature characteristics of EIA, of the trade and of JIS', () => {
    const classTwo = ['X', 'Y', 'Z'].flatMap((low) =>
      ['F', 'P', 'R', 'S', 'T', 'U', 'V'].map((change) => `${low}5${change}`),
    );
    const named =
      'X7R X7S X7T X6S X8R NP0 P100 N030 N075 N080 N150 N220 N330 N470 N750 N1500'.split(' ');
    const ofOneClass = 'C0G C0H M7G S1G U1G P2G P2H R2G R2H S2H T2H U2J P3K'.split(' ');
    const ofPairs = 'CG CH CJ CK PH RH SH TH UJ SL'.split(' ');
    expect(missing('temperature', [...classTwo, ...named, ...ofOneClass, ...ofPairs])).toEqual([]);
  });

  test('tolerance letters of IEC 60062 and those that makers added', () => {
    expect(missing('letter', [...'ABCDEFGHJKLMNPQRSTUVWXYZ'])).toEqual([]);
  });
});

/** What a page answers must be among the readings of its code, told what kind of part it is. */
const someReading = (code: string, holds: (reading: Reading) => boolean): boolean =>
  readMarking(catalogue, code, { kind: 'capacitor' }).some(holds);

describe('what a page answers is what the reader says', () => {
  test.each(ofKind('value'))('$own.code', ({ own: { code }, page: { answer } }) => {
    const [, said = ''] = /^\d{3} is ([^(.]+(?:\.\d+[^(.]*)?)/.exec(answer) ?? [];
    expect(
      someReading(
        code,
        ({ capacitance }) => formatValue(capacitance?.typ ?? NaN, 'F') === said.trim(),
      ),
      answer,
    ).toBe(true);
  });

  test.each(ofKind('voltage'))('$own.code', ({ own: { code }, page: { answer } }) => {
    const [, said = ''] = /voltage of (.*) DC/.exec(answer) ?? [];
    const volts = ({ ratedVoltage }: Reading) =>
      formatValue(ratedVoltage?.typ ?? NaN, 'V') === said;
    // A code by itself may be taken for a date; beside a value it is a voltage.
    expect(someReading(code, volts) || someReading(`104K ${code}`, volts), answer).toBe(true);
  });

  test.each(ofKind('temperature'))('$own.code', ({ own: { code }, page: { answer } }) => {
    const slope = ({ temperatureCharacteristic: own }: Reading) =>
      own !== undefined && answer.includes(sayCharacteristic(own).replace(/^class \d, /, ''));
    // S1G by itself may be 51G that was read wrongly; beside a value it is a slope.
    expect(someReading(code, slope) || someReading(`101J ${code}`, slope), answer).toBe(true);
  });

  // 473V is 473 volts to anyone: only letters that are printed behind a value are read there.
  const letters = ofKind('letter').flatMap(({ own: { code }, page: { answer } }) => {
    const said = /: (?:±|−)([\d.]+)(?:\s%)?(?: to \+([\d.]+))?.*on a capacitor/.exec(answer);
    const [, minus = '', plus = minus] = said ?? [];
    const tolerance = { minus: +minus / 100, plus: +plus / 100, unit: 'fraction' } as const;
    const printed = said === null ? [] : waysPrinted(catalogue, { capacitance: 4.7e-8, tolerance });
    return printed.some(({ text }) => text === `473${code}`) ? [{ code, answer, tolerance }] : [];
  });

  test('the letters of usual tolerances are among them', () => {
    expect(letters.map(({ code }) => code)).toEqual(expect.arrayContaining(['J', 'K', 'M', 'Z']));
  });

  test.each(letters)('$code behind a value', ({ code, answer, tolerance: { minus, plus } }) => {
    expect(
      someReading(
        `473${code}`,
        ({ tolerance }) =>
          Math.abs((tolerance?.minus ?? NaN) - minus) < 1e-8 &&
          Math.abs((tolerance?.plus ?? NaN) - plus) < 1e-8,
      ),
      answer,
    ).toBe(true);
  });
});

describe('what people ask for', () => {
  test.each(['473J', '473K', '473M', '104K', '222K', '100J', '106M'])('what is %s', (marking) => {
    const page = ofKind('value').find(({ own }) => marking.startsWith(own.code))?.page;
    expect(page?.sought).toContain(marking);
    expect(page?.answer).toContain(`${marking} is `);
  });

  test.each([
    ['A', 'A on a potentiometer is a logarithmic taper on newer parts but a linear one on older'],
    ['B', 'B on a potentiometer is a linear taper on newer parts but a logarithmic one on older'],
    ['W', 'W on a potentiometer is an S-shaped taper on newer parts.'],
  ])('what is %s on a potentiometer', (letter, says) => {
    expect(ofKind('taper').find(({ own }) => own.code === letter)?.page.answer).toContain(says);
  });

  test('every letter of a taper has a page, and no word for one', () => {
    expect(ofKind('taper').map(({ own }) => own.code)).toEqual(['A', 'B', 'C', 'F', 'G', 'N', 'W']);
  });
});

describe('every page', () => {
  test('has a title of its own', () => {
    expect(new Set(pages.map(({ page }) => page.title)).size).toBe(pages.length);
  });

  test.each(pages)('$own.slug says more than a row of a table', ({ page }) => {
    expect(page.sections.length).toBeGreaterThanOrEqual(2);
    const html = page.sections.flatMap(({ content }) => content.map(toHtml)).join('');
    expect(html).not.toMatch(/undefined|NaN|\[object/);
  });

  test('a value page names each usual tolerance as it is printed', () => {
    const page = ofKind('value').find(({ own }) => own.code === '473')?.page;
    const html = page?.sections.flatMap(({ content }) => content.map(toHtml)).join('') ?? '';
    for (const text of ['473J', '473K', '473M', '473Z', '47n', '.047'])
      expect(html).toContain(text);
  });
});
