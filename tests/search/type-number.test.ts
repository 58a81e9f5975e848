import { describe, expect, it, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { readMarking } from '../../src/engine/index.ts';
import { typeNumberIn } from '../../src/search/type-number.ts';
import { answerHtml } from './answer-html.ts';

const catalogue = loadCatalogue();

const numberIn = (mark: string) => typeNumberIn(catalogue, mark, readMarking(catalogue, mark));

const boxed = (text: string): string => answerHtml(catalogue, text);

/** What the box says first. */
const firstPart = (html: string): string => /<h2>([^<]*)<\/h2>/u.exec(html)?.[1] ?? '';

describe('a mark that is the type number of a device, with letters of makers', () => {
  it.each([
    'П213',
    'МП42Б',
    'MП42Б',
    'КТ315Б',
    'КТ805БМ',
    'Д226Б',
    'КС156А',
    'К174ХА2',
    'КР544УД2А',
  ])('%s is of a Soviet register, and no value', (mark) => {
    expect(numberIn(mark)).toMatchObject({ sure: true });
  });

  it.each([
    ['LM741CN', '741'],
    ['RC4558P', '4558'],
    ['uPC4558C', '4558'],
    ['4016B', '4016b'],
    // A value that takes a letter for a figure is poor beside a number that takes it as it stands.
    ['AC128', 'ac128'],
    ['CD4066BE', '4066b'],
    ['TC4066BP', '4066b'],
    ['7805', '7805'],
    ['L7805CV', '7805'],
    ['1N4148', '1n4148'],
    ['1N34A', '1n34a'],
    ['JAN1N4148', '1n4148'],
    ['JANTX1N4148', '1n4148'],
    ['2N3904', '2n3904'],
    ['BC547BTA', 'bc547'],
    ['TL072', 'tl072'],
    ['TL072CDR', 'tl072'],
    ['MC1458', '1458'],
    ['741', '741'],
    ['UA741TC', '741'],
    ['BAT46', 'bat46'],
    ['LM741CN 8234', '741'],
    ['NE555P', '555'],
    ['SN7400N', '7400'],
    ['CA3080E', 'ca3080'],
    ['LM339N', 'lm339'],
    ['BC109C', 'bc109'],
    ['CD4051BE', '4051b'],
    ['2N3055', '2n3055'],
    ['cd 4066', '4066b'],
    // No chip electrolytic has 11 nF.
    ['J113', 'j113'],
  ])('%s is %s, and a capacitor is unlikely', (mark, id) => {
    expect(numberIn(mark)).toMatchObject({ sure: true });
    expect(numberIn(mark)?.devices.map((device) => device.id)).toContain(id);
    const html = boxed(mark);
    expect(firstPart(html)).toBe('By type number');
    expect(html).not.toContain('<h2>As a marking</h2>');
  });

  it('keeps the readings folded below', () => {
    expect(boxed('LM741CN')).toMatch(/<details.*unlikely/u);
  });
});

describe('a mark that may be either', () => {
  it.each([
    ['324', '324'],
    ['308A', '308a'],
  ])('%s is the device %s, or a value', (mark, id) => {
    expect(numberIn(mark)).toMatchObject({ sure: false });
    expect(numberIn(mark)?.devices.map((device) => device.id)).toContain(id);
    const html = boxed(mark);
    expect(firstPart(html)).toBe('By type number');
    expect(html).toContain('<h2>As a marking</h2>');
  });

  it('1N33 is a diode by its form, or 1.33 nF', () => {
    expect(numberIn('1N33')).toMatchObject({ sure: false, devices: [] });
    const html = boxed('1N33');
    expect(html).toContain('a diode');
    expect(html).toMatch(/1\.33\snF/u);
  });
});

test.each([
  ['BC999', 'silicon'],
  ['2N707', 'a transistor'],
  ['AC199', 'germanium'],
  ['2SK99', 'field-effect'],
  ['OC99', 'germanium'],
])('%s is not among the devices, but its form says %s', (mark, word) => {
  expect(numberIn(mark)?.system?.names).toContain(word);
  expect(boxed(mark)).toContain(word);
});

describe('a number that has no page', () => {
  it.each([
    ['BC237', 'NPN', 'BC547'],
    ['PN2222A', 'NPN', ''],
    ['DG201', 'analogue switches', 'DG411'],
    ['OA90', 'germanium', 'OA91'],
    ['LF412N', 'dual operational amplifier', 'LF353'],
    ['MC14013BCP', 'two D flip-flops', ''],
    ['74LS74AN', 'two D flip-flops', ''],
    ['SN7490N', 'a decade counter', ''],
    ['78M12', 'positive fixed regulator for 12', '7812'],
    // In a TO-92 body its leads lie the other way round.
    ['78L12', 'positive fixed regulator for 12', ''],
    ['К140УД7', 'like a 741', '741'],
    ['КР140УД708', 'like a 741', '741'],
    ['K155LA3', 'like a 7400', '7400'],
    ['К561ЛА7', 'like a 4011', '4011A'],
    ['МП42Б', 'germanium PNP', 'OC71'],
    // Typed with some letters of the other script, which look alike or sound alike.
    ['MP42Б', 'germanium PNP', 'OC71'],
    ['МP42Б', 'germanium PNP', 'OC71'],
    ['KТ315', 'NPN', 'BC547'],
    ['K140УД7', 'like a 741', '741'],
    ['KP140УД708', 'like a 741', '741'],
    ['D226Б', 'silicon rectifier', '1N4007'],
    // No chip electrolytic is as close as its letter D would say.
    ['C106D', 'a thyristor', ''],
    ['HN462716', 'EPROM of 2 kB', ''],
    ['HN462732G', 'EPROM of 4 kB', ''],
    ['HN27C256', 'EPROM of 32 kB', ''],
    ['HM62256', 'static memory of 32 kB', ''],
    ['КТ361Г', 'PNP', 'BC557'],
    ['2SA101', 'germanium PNP', ''],
    ['2SC1845', 'of low noise and about 100 V', '2N5551'],
    ['BDX18', 'PNP power transistor', 'MJ2955'],
    ['BC171B', 'NPN transistor for small signals', 'BC547'],
    ['TBA231', 'preamplifiers', ''],
    ['1N5297', 'holds a current constant', ''],
    ['MN3009', 'delay line', ''],
    ['Д226Б', 'silicon rectifier', '1N4007'],
    ['2N3819', 'N-channel JFET', 'BF245'],
    ['C945', 'NPN', '2SC1815'],
    ['BZX79-C5V1', 'Zener diode of 5.1', ''],
    ['ZPD5.1', 'Zener diode of 5.1', ''],
    ['BZX55C12', 'Zener diode of 12', ''],
    ['1N4733A', 'Zener diode of 5.1', ''],
    ['4N25', 'optocoupler', ''],
    ['Z80A', 'microprocessor', ''],
    ['27C256', 'EPROM', ''],
    ['MK4116', 'dynamic memory', ''],
    ['OPA604', 'operational amplifier', 'TL071'],
    ['BT138-600', 'triac', ''],
    ['2SK134', 'lateral power MOSFET', ''],
    ['3006P', 'trimmer', ''],
    ['AD741', '741 of closer limits', '741'],
  ])('%s is %s, and leads on to %s', (mark, what, near) => {
    expect(numberIn(mark)).toMatchObject({ devices: [] });
    const said = boxed(mark).replace(/\u00a0/gu, ' ');
    expect(said).toContain(what);
    expect(said).toContain(near === '' ? 'It has no page here' : `>${near}</a>`);
  });

  it('puts a value first where that is sure and no device is called so', () => {
    // 10 µF ±20 % at 16 V; with D for its letter no chip of that value is made.
    expect(firstPart(boxed('C106M'))).toBe('As a marking');
    expect(boxed('C106M')).toContain('thyristor');
    expect(firstPart(boxed('C106D'))).toBe('By type number');
  });

  it('shows both where the start of a number may be left off, with what tells them apart', () => {
    expect(numberIn('4007')).toMatchObject({ devices: [], sure: false });
    const html = boxed('4007');
    expect(html).toMatch(/1N4007<\/a>, diode \(body: axial\)/u);
    expect(html).toContain('4000 series');
    expect(html).toContain('two leads and a ring');
  });

  it('shows all devices that four digits may be the rest of', () => {
    expect(numberIn('5401')?.shortened.map(({ id }) => id)).toEqual(['1n5401', '2n5401']);
    expect(numberIn('914')).toBeUndefined();
  });
});

test('no number without a page is given twice, nor one that has a page', () => {
  const { knownNumbers, devices } = catalogue.devices;
  const called = (text: string) => text.toUpperCase().replace(/[\s\-./]/gu, '');
  const known = knownNumbers.flatMap(({ number, also }) => [number, ...also]);
  expect(known.filter((one, at) => known.indexOf(one) !== at)).toEqual([]);
  const paged = new Set(devices.flatMap(({ name, also }) => [name, ...also]).map(called));
  expect(known.filter((one) => paged.has(one))).toEqual([]);
});

describe('true marks of capacitors', () => {
  it.each(['104K', '2A104J', '4n7', '472M', '1N0', '473K', '103M 1KV Z5U', '.05 MFD 600 WV'])(
    '%s is the number of no device',
    (mark) => {
      expect(numberIn(mark)).toBeUndefined();
      const html = boxed(mark);
      expect(html).toContain('<h2>As a marking</h2>');
      expect(html).not.toContain('By type number');
    },
  );

  it.each(['324 100V', 'RC4558P 104K', '2N2'])(
    '%s is read before devices that it names',
    (mark) => {
      expect(firstPart(boxed(mark))).toBe('As a marking');
    },
  );
});
