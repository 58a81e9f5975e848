import type { SeriesResistanceRow } from '../../schemas/sizes.ts';
import type { Part } from '../assessment/parts.ts';
import type { Basis, Catalogue, SourceId, TypeId } from '../catalogue.ts';
import { resistanceBetween } from '../equations/series-resistance.ts';
import { hull, mapRising, type Range } from '../quantities/range.ts';
import { ruleOf } from '../rule-of-thumb.ts';
import { alike, logBetweenRanges, logShare, TABLE_ROUNDING } from './interpolate.ts';

/** A single part as far as its series resistance is concerned. */
export type Resisting = Pick<Part, 'type' | 'capacitance' | 'ratedVoltage'>;

/** Series resistance (ohm) of a part. */
export interface SeriesResistance {
  range: Range;
  /** By its value and voltage, or the span of its whole type. */
  by: 'value' | 'type';
  sources: readonly SourceId[];
  bases: readonly Basis[];
}

/** Frequency (Hz) at which series resistance is tabulated for switching and regulating. */
export const TABLE_FREQUENCY = 1e5;

/** What is known of a whole type near 100 kHz. */
export const RESISTANCE = 'esr-100khz';

/** Rows of one type, frequency and voltage band, by rising capacitance. */
interface Band {
  frequency: number;
  low: number;
  high: number;
  rows: SeriesResistanceRow[];
}

const bandsOf = (rows: readonly SeriesResistanceRow[]): Map<TypeId, Band[]> => {
  const byType = new Map<TypeId, Band[]>();
  for (const row of rows) {
    const bands = byType.get(row.type) ?? [];
    byType.set(row.type, bands);
    const own = bands.find(
      ({ frequency, low }) => frequency === row.frequency_hz && low === row.v_min,
    );
    if (own !== undefined) own.rows.push(row);
    else {
      const { frequency_hz: frequency, v_min: low, v_max: high } = row;
      bands.push({ frequency, low, high, rows: [row] });
    }
  }
  for (const bands of byType.values()) {
    for (const band of bands) band.rows.sort((a, b) => a.capacitance - b.capacitance);
  }
  return byType;
};

/** Sorted once for each table. */
const sorted = new WeakMap<readonly SeriesResistanceRow[], Map<TypeId, Band[]>>();

const bandsFor = (rows: readonly SeriesResistanceRow[], type: TypeId): readonly Band[] => {
  const known = sorted.get(rows) ?? bandsOf(rows);
  sorted.set(rows, known);
  return known.get(type) ?? [];
};

const rangeOfRow = ({ esr_min: min, esr_typ: typ, esr_max: max }: SeriesResistanceRow): Range => ({
  min: min ?? typ,
  typ,
  max,
});

/** Read between the two rows beside the value, both scales logarithmic; never beyond the rows. */
const readBand = ({ rows }: Band, farads: number): SeriesResistance | undefined => {
  const after = rows.findIndex((row) => row.capacitance >= farads * (1 - TABLE_ROUNDING));
  const upper = rows[after];
  if (upper === undefined) return undefined;
  const lower = upper.capacitance <= farads * (1 + TABLE_ROUNDING) ? upper : rows[after - 1];
  if (lower === undefined) return undefined;
  const share = logShare(farads, lower.capacitance, upper.capacitance);
  return {
    range: logBetweenRanges(rangeOfRow(lower), rangeOfRow(upper), share),
    by: 'value',
    sources: [...new Set([lower.source, upper.source])],
    bases: [lower.basis, upper.basis],
  };
};

/** A row read at one tabulated frequency (Hz). */
interface Point {
  frequency: number;
  read: SeriesResistance;
}

/** What the rows say of a value and voltage, by rising frequency. */
const pointsFor = (
  { seriesResistance }: Catalogue,
  { type, capacitance, ratedVoltage }: Resisting,
): Point[] =>
  bandsFor(seriesResistance, type)
    .filter(
      ({ low, high }) =>
        low <= ratedVoltage * (1 + TABLE_ROUNDING) && high >= ratedVoltage * (1 - TABLE_ROUNDING),
    )
    .flatMap((band) => {
      const read = readBand(band, capacitance);
      return read === undefined ? [] : [{ frequency: band.frequency, read }];
    })
    .toSorted((a, b) => a.frequency - b.frequency);

const joined = (a: SeriesResistance, b: SeriesResistance, range: Range): SeriesResistance => ({
  range,
  by: 'value',
  sources: [...new Set([...a.sources, ...b.sources])],
  bases: [...a.bases, ...b.bases],
});

/** Series resistance by value and voltage: at a frequency (Hz) that rows are for, or between two. */
const byValue = (
  catalogue: Catalogue,
  part: Resisting,
  frequency: number,
): SeriesResistance | undefined => {
  const points = pointsFor(catalogue, part);
  const after = points.findIndex((point) => point.frequency >= frequency * (1 - TABLE_ROUNDING));
  const upper = points[after];
  if (upper !== undefined && alike(upper.frequency, frequency)) return upper.read;
  const lower = upper === undefined ? points.at(-1) : points[after - 1];
  if (lower === undefined) {
    // Below the rows the loss is what counts, and a steady loss is a resistance that goes with 1/f.
    if (
      upper === undefined ||
      frequency < upper.frequency * ruleOf(catalogue, 'frequency-reach-down')
    )
      return undefined;
    const range = mapRising(upper.read.range, (ohm) => (ohm * upper.frequency) / frequency);
    return { ...upper.read, range };
  }
  if (upper === undefined) {
    const reach = ruleOf(catalogue, 'resistance-frequency-reach');
    return frequency <= lower.frequency * reach ? lower.read : undefined;
  }
  const range = resistanceBetween(
    { frequency: lower.frequency, resistance: lower.read.range },
    { frequency: upper.frequency, resistance: upper.read.range },
    frequency,
  );
  return joined(lower.read, upper.read, range);
};

const ofOneType = (
  catalogue: Catalogue,
  part: Resisting,
  frequency: number,
): SeriesResistance | undefined => {
  const tabulated = byValue(catalogue, part, frequency);
  if (tabulated !== undefined) return tabulated;
  const reach = ruleOf(catalogue, 'type-frequency-reach');
  if (Math.abs(Math.log(frequency / TABLE_FREQUENCY)) > Math.log(reach)) return undefined;
  const whole = catalogue.knowledge[part.type]?.[RESISTANCE];
  return whole?.status === 'known'
    ? { range: whole.range, by: 'type', sources: whole.sources, bases: [whole.basis] }
    : undefined;
};

/**
 * Series resistance of a single part at 100 kHz or at another frequency (Hz): read between the rows
 * of its type for its voltage where they cover its value and the frequency, else, near 100 kHz, the
 * span of its type. For a part of unknown class the span of what it can be. Nothing where nothing
 * is known.
 */
export const esrOf = (
  catalogue: Catalogue,
  part: Resisting,
  frequency = TABLE_FREQUENCY,
): SeriesResistance | undefined => {
  const members = catalogue.types[part.type]?.union_of ?? [];
  if (members.length === 0) return ofOneType(catalogue, part, frequency);
  const found = members.flatMap((type) => ofOneType(catalogue, { ...part, type }, frequency) ?? []);
  const [first, ...rest] = found;
  if (first === undefined || found.length < members.length) return undefined;
  return {
    range: hull([first.range, ...rest.map(({ range }) => range)]),
    by: found.every(({ by }) => by === 'value') ? 'value' : 'type',
    sources: [...new Set(found.flatMap(({ sources }) => sources))],
    bases: found.flatMap(({ bases }) => bases),
  };
};
