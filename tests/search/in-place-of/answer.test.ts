import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { toHtml } from '../../../src/markup/to-html.ts';
import { answerInPlaceOf } from '../../../src/search/in-place-of/answer.ts';
import { sliceReading } from '../../../src/catalogue/slices/slice-reading.ts';

const catalogue = loadCatalogue();

/** What an answer says, without its marks of basis, and where its links lead. */
const answerTo = (text: string) => {
  const html = (answerInPlaceOf(catalogue, text)?.pieces ?? []).map(toHtml).join('');
  return {
    says: html
      .replace(/<a class="basis".*?<\/a>/gu, '')
      .replace(/<[^>]+>/gu, ' ')
      .replace(/[\s\u00a0]+/gu, ' '),
    links: [...html.matchAll(/href="([^"]+)"/gu)].map(([, to = '']) => to.replaceAll('&amp;', '&')),
  };
};

describe('what both parts say is compared, with what it means wherever they sit', () => {
  test.each([
    [
      'X2 instead of X1',
      'Pulses on the line that its class stands: 2.5 kV for 4 kV, 38 % less. A lower class: keep it out.',
    ],
    [
      'X2 for Y2',
      'Impulse that its class is tested with: 2.5 kV for 5 kV, 0.5 times as much. A lower class: keep it out.',
    ],
    [
      'Y2 vs X2',
      'Impulse that its class is tested with: 5 kV for 2.5 kV, 2 times as much. A higher class',
    ],
    ['63V instead of 50V', 'Rated voltage: 63 V for 50 V, 26 % more. A higher rating is no fault'],
    ['50V instead of 63V', 'Rated voltage: 50 V for 63 V, 21 % less. A lower rating only where'],
    ['can I use 105C instead of 85C?', 'Highest temperature: 105 °C for 85 °C, 20 K more.'],
    ['85°C in place of 105 °C', 'Highest temperature: 85 °C for 105 °C, 20 K less.'],
    ['85 degrees C in place of 105 deg C', 'Highest temperature: 85 °C for 105 °C, 20 K less.'],
    ['125 degC instead of 85 degrees', 'Highest temperature: 125 °C for 85 °C, 40 K more.'],
    ['47k pot instead of 0', 'Resistance: 47 kΩ for 0 Ω;'],
    ['1% instead of 5%', 'Tolerance: ±1 % for ±5 %. A closer tolerance'],
    ['10% instead of 5%', 'Tolerance: ±10 % for ±5 %. A wider tolerance only'],
    ['1W instead of 1/2W', 'Rated power: 1 W for 0.5 W, 2 times as much.'],
    ['10 watt wirewound for a 5W wirewound', 'Rated power: 10 W for 5 W, 2 times as much.'],
    ['100 ohm 0,25W rather than 100 ohm 1 W', 'Rated power: 0.25 W for 1 W, 0.25 times as much.'],
    ['100n for 0.1uF', 'Capacitance: 100 nF, the same.'],
    ['47k instead of 50k', 'Resistance: 47 kΩ for 50 kΩ, 6 % less; within what'],
    ['50k trimmer instead of 47k', 'Resistance: 50 kΩ for 47 kΩ, 6.4 % more; within what'],
    ['can I use two 100u in parallel instead of 200u', 'Capacitance: 200 µF, the same.'],
    ['2 x 220u 50V in series for 110u 100V', 'Rated voltage: 100 V, the same.'],
    ['two 100k 0.5W in series instead of 200k 1W', 'Rated power: 1 W, the same.'],
    ['three 30 ohm in parallel instead of 10 ohm', 'Resistance: 10 Ω, the same.'],
  ])('%s', (text, says) => {
    expect(answerTo(text).says).toContain(says);
  });

  // By hand: 500 µF −20 % is 400 µF; 8 µF ±10 % is 7.2 to 8.8 µF.
  test.each([
    [
      'is 470uF ok for 500uF',
      '6 % less; within what the old one itself may have (400–600 µF, ±20 % taken)',
    ],
    [
      'is 390uF ok for 500uF',
      '22 % less; outside what the old one itself may have (400–600 µF, ±20 % taken)',
    ],
    ['10uF instead of 8uF 10%', '25 % more; outside what the old one itself may have (7.2–8.8 µF)'],
  ])('and a value with what the old part itself may have: %s', (text, says) => {
    expect(answerTo(text).says).toContain(says);
  });
});

describe('it goes on to where the old part may sit, with the other judged there', () => {
  test.each([
    [
      'polyester instead of paper',
      '/replace/paper-wax/in/interstage-coupling/?have=pet-metallized#have-part',
    ],
    [
      'film for electrolytic',
      '/replace/al-electrolytic-wet/in/emitter-bypass/?have=pet-metallized#have-part',
    ],
    [
      'replace 10uF 16V tantalum with 10uF 25V electrolytic',
      '/replace/ta-mno2-solid/in/bulk-rail/?c=10u&v=16&have=al-electrolytic-wet&have-c=10u&have-v=25#have-part',
    ],
    [
      '100u 40V electrolytic for 80u 25V electrolytic',
      '/replace/al-electrolytic-wet/in/bulk-rail/?c=80u&v=25&have=al-electrolytic-wet&have-c=100u&have-v=40#have-part',
    ],
    [
      'metal film instead of carbon composition',
      '/resistors/carbon-composition/in/plate-load/?have=metal-film#have-part',
    ],
    [
      '4.7 ohm wirewound instead of 4.7 ohm fusible',
      '/resistors/fusible-wirewound/in/fusible-position/?value=4.7&have=wirewound#have-part',
    ],
    ['TL072 instead of 4558', '/devices/4558/in/amp-line/#tl072'],
    ['2N3904 for BC109', '/devices/bc109/in/transistor-stage/#2n3904'],
    // What it is made of is not said: each choice goes on with the part that would be fitted.
    [
      'is 470uF ok for 500uF',
      '/replace/al-electrolytic-wet/?c=500u&have=al-electrolytic-wet&have-c=470u',
    ],
    ['220n 400V instead of .22 200V', '/replace/film-unknown/?c=220n&v=200&have-c=220n&have-v=400'],
    ['5532 for 741', '/devices/5532/'],
  ])('%s', (text, link) => {
    expect(answerTo(text).links).toContain(link);
  });

  test('of two devices neither of which is said to be the old one it goes both ways', () => {
    for (const text of ['NE5532 vs TL072', '5532 or TL072?'])
      expect(answerTo(text).links).toEqual(
        expect.arrayContaining([
          '/devices/5532/in/amp-line/#tl072',
          '/devices/tl072/in/amp-line/#5532',
        ]),
      );
    expect(answerTo('LM324 vs LM358').says).toMatch(
      /They do different things.*358 , dual.*324 , quad/u,
    );
    expect(answerTo('47n or 4066')).toEqual({ says: '', links: [] });
  });

  test('a part of a lower class is led to no place', () => {
    const { links } = answerTo('X2 instead of X1');
    expect(links.filter((to) => to.startsWith('/replace/'))).toEqual([]);
    expect(answerTo('X1 instead of X2').links).toContainEqual(
      expect.stringMatching(/^\/replace\//u),
    );
  });

  test.each([
    [
      '4n7 vs 5n',
      /5n in place of 4n7 Capacitance: 5 nF for 4\.7 nF, 6\.4 % more.*4n7 in place of 5n Capacitance: 4\.7 nF for 5 nF, 6 % less/u,
    ],
    [
      '470uF 25V vs 35V',
      /35V in place of 470uF 25V Rated voltage: 35 V for 25 V.*Rated voltage: 25 V for 35 V/u,
    ],
    ['100R versus 120R', /120R in place of 100R Resistance: 120 Ω for 100 Ω/u],
    [
      'X7R vs Z5U',
      /What Z5U ceramic comes to in place of X7R.*What X7R ceramic comes to in place of Z5U/u,
    ],
  ])('of two parts that are compared it goes both ways: %s', (text, says) => {
    expect(answerTo(text).says).toMatch(says);
  });

  test('“or” between two parts is no such question', () => {
    expect(answerTo('ceramic or film in a tone control')).toEqual({ says: '', links: [] });
    expect(answerTo('hot vs cold')).toEqual({ says: '', links: [] });
  });

  test.each([
    ['4n7 vs 5n', '4n7 and 5n'],
    ['film for electrolytic', 'Film in place of electrolytic'],
    ['is 470 µF ok for 500 µF', '470 µF in place of 500 µF'],
  ])('under what was asked: %s', (text, title) => {
    expect(answerInPlaceOf(catalogue, text)?.title).toBe(title);
  });

  test('a part that is no longer made is said to be so', () => {
    const { says, links } = answerTo('AC128 instead of OC71');
    expect(says).toMatch(/AC128 is no longer made|AC128 comes to in place of OC71/u);
    expect(links.every((to) => to.startsWith('/devices/oc71/'))).toBe(true);
  });
});

test.each([
  '100n for audio',
  'tantalum for coupling',
  '1k for 5 mA',
  '100u 25V for 12V rail',
  '103M 1KV Z5U',
  '8uF 450V replacement',
  '',
])('“%s” is answered otherwise', (text) => {
  expect(answerInPlaceOf(catalogue, text)).toBeUndefined();
});

test('what reads markings on the first page answers the same', () => {
  const slice = { ...catalogue, ...sliceReading(catalogue) };
  for (const text of [
    '63V instead of 50V',
    'film for electrolytic',
    'TL072 instead of 4558',
    '1k carbon film for 1k wirewound',
  ])
    expect(answerInPlaceOf(slice, text)?.pieces.map(toHtml)).toEqual(
      answerInPlaceOf(catalogue, text)?.pieces.map(toHtml),
    );
});

test('whatever is asked, it is answered or left, and never thrown at', () => {
  const words = fc.oneof(
    fc.constantFrom(
      'instead of',
      'for',
      'vs',
      'replace',
      'with',
      'in parallel',
      'two',
      '1/2W',
      '105C',
    ),
    fc.constantFrom(
      '470uF',
      '0',
      '-5V',
      '1e99',
      '4558',
      'TL072',
      'fusible',
      'paper',
      '47k pot',
      '<b>',
    ),
    fc.string({ maxLength: 6 }),
  );
  fc.assert(
    fc.property(fc.array(words, { maxLength: 7 }), (some) => {
      const answer = answerInPlaceOf(catalogue, some.join(' '));
      expect(answer?.pieces.length ?? 1).toBeGreaterThan(0);
      expect((answer?.pieces ?? []).map(toHtml).join('')).not.toMatch(
        /NaN|Infinity|undefined|–\u00a0/u,
      );
    }),
    { numRuns: 300 },
  );
});
