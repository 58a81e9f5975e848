import { describe, expect, it, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { readMarking } from '../../src/engine/index.ts';
import { toHtml } from '../../src/markup/to-html.ts';
import { answerMarkup } from '../../src/search/answer.ts';
import { typeNumberIn } from '../../src/search/type-number.ts';

const catalogue = loadCatalogue();

const numberIn = (mark: string) => typeNumberIn(catalogue, mark, readMarking(catalogue, mark));

const boxed = (text: string): string => answerMarkup(catalogue, text).map(toHtml).join('');

/** What the box says first. */
const firstPart = (html: string): string => /<h2>([^<]*)<\/h2>/u.exec(html)?.[1] ?? '';

describe('a mark that is the type number of a device, with letters of makers', () => {
  it.each([
    ['LM741CN', '741'],
    ['RC4558P', '4558'],
    ['uPC4558C', '4558'],
    ['4016B', '4016b'],
    ['CD4066BE', '4066b'],
    ['TC4066BP', '4066b'],
    ['7805', '7805'],
    ['L7805CV', '7805'],
    ['1N4148', '1n4148'],
    ['1N34A', '1n34a'],
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
  ['2N706', 'a transistor'],
  ['AC153', 'germanium'],
  ['2SK117', 'field-effect'],
  ['OC45', 'germanium'],
])('%s is not among the devices, but its form says %s', (mark, word) => {
  expect(numberIn(mark)?.system?.names).toContain(word);
  expect(boxed(mark)).toContain(word);
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
