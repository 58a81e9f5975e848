import { describe, expect, test } from 'vitest';
import { offerRows, pitchesText, type Offer } from '../../src/components/offer-rows.ts';

const offer = (
  [least, greatest]: readonly [number, number],
  pitch_mm: readonly number[],
  rest: Partial<Offer> = {},
): Offer => ({
  style: 'can',
  band: [least * 1e-6, greatest * 1e-6],
  ratings: '25 V DC',
  tolerances: ['20'],
  series: 'E6',
  pitch_mm,
  note: '',
  basis: 'common-practice',
  source: 'trade',
  ...rest,
});

const micro = (value: number): string => `${String(Math.round(value * 1e7) / 10)} µF`;

const said = (offers: readonly Offer[]): string[] =>
  offerRows(offers).map((row) => {
    const band = row.band === undefined ? '–' : row.band.map(micro).join(' to ');
    return `${band}, ${row.ratings}: ${pitchesText(row, micro)}`;
  });

describe('bands of one style', () => {
  test.each<[what: string, offers: Offer[], rows: string[]]>([
    ['none', [], []],
    ['one', [offer([1, 22], [2, 5])], ['1 µF to 22 µF, 25 V DC: 2 or 5']],
    [
      'of the next values of the series, with other pitches',
      [offer([1, 22], [2, 5]), offer([33, 47], [2.5, 5]), offer([68, 470], [5])],
      ['1 µF to 470 µF, 25 V DC: 2 or 5 up to 22 µF; 2.5 or 5 up to 47 µF; 5 above'],
    ],
    [
      'of the next values, with the same pitches',
      [offer([1, 22], [2, 5]), offer([33, 47], [2, 5])],
      ['1 µF to 47 µF, 25 V DC: 2 or 5'],
    ],
    [
      'with a value of the series left out between them',
      [offer([1, 15], [2]), offer([33, 47], [5])],
      ['1 µF to 15 µF, 25 V DC: 2', '33 µF to 47 µF, 25 V DC: 5'],
    ],
    [
      'with a value between them in a finer series only',
      [offer([1, 22], [2], { series: 'E12' }), offer([33, 47], [5], { series: 'E12' })],
      ['1 µF to 22 µF, 25 V DC: 2', '33 µF to 47 µF, 25 V DC: 5'],
    ],
    [
      'that lie over one another',
      [offer([1, 33], [2]), offer([22, 47], [5])],
      ['1 µF to 33 µF, 25 V DC: 2', '22 µF to 47 µF, 25 V DC: 5'],
    ],
    [
      'without a series',
      [offer([1, 22], [2], { series: '' }), offer([33, 47], [5], { series: '' })],
      ['1 µF to 22 µF, 25 V DC: 2', '33 µF to 47 µF, 25 V DC: 5'],
    ],
    [
      'of another rating',
      [offer([1, 22], [2]), offer([33, 47], [2], { ratings: '50 V DC' })],
      ['1 µF to 22 µF, 25 V DC: 2', '33 µF to 47 µF, 50 V DC: 2'],
    ],
    [
      'of another source, which stays beside its own figures',
      [offer([1, 22], [2]), offer([33, 47], [2], { source: 'another' })],
      ['1 µF to 22 µF, 25 V DC: 2', '33 µF to 47 µF, 25 V DC: 2'],
    ],
    [
      'without values',
      [offer([0, 0], [2], { band: undefined }), offer([0, 0], [5], { band: undefined })],
      ['–, 25 V DC: 2', '–, 25 V DC: 5'],
    ],
  ])('%s', (_, offers, rows) => {
    expect(said(offers)).toEqual(rows);
  });
});
