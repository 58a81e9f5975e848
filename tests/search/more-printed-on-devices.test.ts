import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { readMarking } from '../../src/engine/index.ts';
import { typeNumberIn } from '../../src/search/type-number.ts';
import { answerHtml } from './answer-html.ts';
import { KNOWN_PRINTED } from './known-printed.ts';
import { MORE_PRINTED } from './more-printed-on-devices.ts';

const catalogue = loadCatalogue();

const numberIn = (mark: string) => typeNumberIn(catalogue, mark, readMarking(catalogue, mark));

const boxed = (text: string): string => answerHtml(catalogue, text).replaceAll('\u00a0', ' ');

const firstHeading = (html: string): string => /<h2>([^<]*)<\/h2>/u.exec(html)?.[1] ?? '';

describe.each(Object.entries(MORE_PRINTED))('%s', (_, cases) => {
  it.each(cases)('%s is %s', (mark, id) => {
    expect(numberIn(mark)?.devices.map((device) => device.id)).toEqual([id]);
  });
});

describe('a part without a page', () => {
  it.each(KNOWN_PRINTED)('%s is %s …', (mark, what) => {
    expect(numberIn(mark)?.devices).toEqual([]);
    expect(numberIn(mark)?.known[0]?.what.startsWith(what)).toBe(true);
  });
});

describe('a regulator in a TO-3 case', () => {
  it.each(['LM317K', 'LM337K', 'MC7812CK', 'LM7905K', 'LM340K-5'])(
    '%s leads to no page of another body, but to compare with',
    (mark) => {
      const html = boxed(mark);
      expect(html).toContain('TO-3 case');
      expect(html).toContain('It has no page here; compare it with the');
      expect(html).not.toMatch(/href="[^"]*\/devices\/[^"]*\/in\//u);
    },
  );
});

describe('a number of a register of five figures', () => {
  it.each(['40250', '40319L', '40583'])('%s is known by its form alone', (mark) => {
    expect(numberIn(mark)).toMatchObject({ devices: [], known: [], sure: false });
    expect(boxed(mark)).toContain('by a maker’s own number');
  });

  it.each(['40106', '40174'])('%s is a chip first', (mark) => {
    expect(numberIn(mark)?.known[0]?.what).toContain('4000 series');
  });
});

describe('a Zener diode of a bare letter has its voltage with a point or a V', () => {
  it.each(['Z12', 'Z104', 'Z5', 'Z5U', 'Z5U104', 'Z5V104'])('%s is none', (mark) => {
    expect(numberIn(mark)).toBeUndefined();
  });
});

describe('a mark that is no number as it stands is guessed, and never surely', () => {
  it.each([
    ['D4016BE', '4016b'],
    ['C4016', '4016b'],
    ['A741TC', '741'],
    ['ITT7404N', '7404'],
    ['SW7400N', '7400'],
    ['SIL4011', '4011b'],
    ['?N3904', '2n3904'],
    ['?N4148', '1n4148'],
    ['LM7?1', '741'],
    ['4?66', '4066b'],
    ['BC5?7', 'bc547'],
  ])('%s may be %s', (mark, id) => {
    expect(numberIn(mark)).toMatchObject({ guessed: true, sure: false });
    expect(numberIn(mark)?.devices.map((device) => device.id)).toContain(id);
    expect(firstHeading(boxed(mark))).toBe('By type number');
  });

  it.each(['MKT1813', 'KP1830', 'WIMA MKS4 1500', 'FKP 4700', 'CM05 4001', 'K741', '4?7', '104?'])(
    '%s is none',
    (mark) => {
      expect(numberIn(mark)).toBeUndefined();
    },
  );

  it('says that it does not know letters before a number', () => {
    expect(boxed('SIL4011')).toContain('SIL, letters that are not known here');
  });
});

describe('a value of a capacitor or resistor comes before what only the form of a number says', () => {
  it.each(['1n5 100', '2n2 100', '4n75', '3n01J', '1n33K', 'LIN 10K', '40-40/450-50/25', '0p63'])(
    '%s is a value',
    (mark) => {
      const first = firstHeading(boxed(mark));
      expect(numberIn(mark)?.sure ?? false).toBe(false);
      expect(first).toBe('As a marking');
    },
  );

  it('a figure code with a letter behind it is a value as well as a chip', () => {
    expect(numberIn('4021F')?.sure ?? false).toBe(false);
  });

  it('no form of a number hides behind a reading that takes one character for another', () => {
    expect(firstHeading(boxed('2SJ50'))).toBe('By type number');
  });
});

it.each(['OP27GP', 'OP27EZ', 'OP07CP'])('%s is no capacitor of less than its tolerance', (mark) => {
  expect(readMarking(catalogue, mark)[0]?.sure ?? 'possible').toBe('possible');
  expect(numberIn(mark)).toMatchObject({ sure: true });
});
