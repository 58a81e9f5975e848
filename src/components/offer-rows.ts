import type { Basis, SourceId } from '../engine/index.ts';
import { isSeriesName, valuesBetween } from '../engine/values/index.ts';
import { listed } from '../text/words.ts';

/** What is stocked of a type, of whatever kind of part, a row a style and band of values. */
export interface Offer {
  style: string;
  /** Least and greatest value; nothing for parts without a value. */
  band: readonly [least: number, greatest: number] | undefined;
  ratings: string;
  tolerances: readonly string[];
  series: string;
  pitch_mm: readonly number[];
  note: string;
  basis: Basis;
  source: SourceId;
}

/** Bands that follow one another and differ in nothing but their pitch, as one row. */
export interface OfferRow extends Omit<Offer, 'pitch_mm'> {
  /** Pitches, mm, each with the greatest value that has them. */
  pitches: readonly { mm: readonly number[]; upTo: number | undefined }[];
}

/** All that the bands of a row have in common. */
const commonOf = ({ style, ratings, tolerances, series, note, basis, source }: OfferRow): string =>
  JSON.stringify([style, ratings, tolerances, series, note, basis, source]);

/** So near a value of a series that none is between, as a share. */
const NEXT_TO = 1e-3;

/** Whether the series has no value between two bands, and the second is above the first. */
const follows = (a: OfferRow, b: OfferRow): boolean => {
  const [end, start] = [a.band?.[1], b.band?.[0]];
  if (end === undefined || start === undefined || start <= end || !isSeriesName(a.series))
    return false;
  return valuesBetween(a.series, end * (1 + NEXT_TO), start * (1 - NEXT_TO)).length === 0;
};

const joined = (a: OfferRow, b: OfferRow): OfferRow => {
  const [last, next] = [a.pitches.at(-1), b.pitches[0]];
  const same = String(last?.mm) === String(next?.mm);
  return {
    ...a,
    band: a.band && b.band && [a.band[0], b.band[1]],
    pitches: [...(same ? a.pitches.slice(0, -1) : a.pitches), ...b.pitches],
  };
};

/** The offers in as few rows as say the same, in their order. */
export const offerRows = (offers: readonly Offer[]): OfferRow[] => {
  const rows: OfferRow[] = [];
  for (const { pitch_mm: mm, ...rest } of offers) {
    const row = { ...rest, pitches: [{ mm, upTo: rest.band?.[1] }] };
    const last = rows.at(-1);
    if (last !== undefined && commonOf(last) === commonOf(row) && follows(last, row))
      rows[rows.length - 1] = joined(last, row);
    else rows.push(row);
  }
  return rows;
};

/**
 * The pitches of a row as one reads them: `2 or 5 up to 22 µF; 2.5 or 5 above`.
 * @param print a value with its unit
 */
export const pitchesText = (
  { pitches }: Pick<OfferRow, 'pitches'>,
  print: (value: number) => string,
): string =>
  pitches
    .map(({ mm, upTo }, i) => {
      const list = listed(mm.map(String), 'or');
      if (pitches.length === 1 || upTo === undefined) return list;
      return i === pitches.length - 1 ? `${list} above` : `${list} up to ${print(upTo)}`;
    })
    .join('; ');
