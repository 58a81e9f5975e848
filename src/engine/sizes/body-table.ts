import type { BodyRow } from '../../schemas/sizes.ts';
import type { Catalogue, TypeId } from '../catalogue.ts';
import { ruleOf, type WithRules } from '../rule-of-thumb.ts';
import { bodyBetween, bodyOfRow, volumeOf, type Body } from './body.ts';
import { alike, logBetween, logShare, TABLE_ROUNDING } from './interpolate.ts';

/** What is asked for: a value (F) and a rated voltage (V) of a type, of one style or of any. */
export interface Wanted {
  type: TypeId;
  capacitance: number;
  ratedVoltage: number;
  style?: string | undefined;
}

/** A body with its volume (mm3), worked out once. */
interface Entry {
  row: BodyRow;
  volume: number;
}

/** Bodies of one style at one rated voltage, the smallest first. */
interface Shelf {
  style: string;
  volts: number;
  entries: Entry[];
}

const shelvesOf = (rows: readonly BodyRow[]): Map<TypeId, Shelf[]> => {
  const byType = new Map<TypeId, Shelf[]>();
  const byKey = new Map<string, Shelf>();
  for (const row of rows) {
    const key = `${row.type} ${row.style} ${String(row.voltage)}`;
    const entry = { row, volume: volumeOf(row) };
    const shelf = byKey.get(key);
    if (shelf !== undefined) {
      shelf.entries.push(entry);
      continue;
    }
    const fresh = { style: row.style, volts: row.voltage, entries: [entry] };
    byKey.set(key, fresh);
    const own = byType.get(row.type);
    if (own === undefined) byType.set(row.type, [fresh]);
    else own.push(fresh);
  }
  for (const { entries } of byKey.values()) entries.sort((a, b) => a.volume - b.volume);
  return byType;
};

/** Sorted once for each table: every part of every assessment asks. */
const sorted = new WeakMap<readonly BodyRow[], Map<TypeId, Shelf[]>>();

const shelves = (rows: readonly BodyRow[], type: TypeId): readonly Shelf[] => {
  const known = sorted.get(rows) ?? shelvesOf(rows);
  sorted.set(rows, known);
  return known.get(type) ?? [];
};

/**
 * A body that takes the part, and the volume (mm3) that it is reckoned at. `near` where the value is
 * close enough for it to say something about the part's size.
 */
interface Found {
  volume: number;
  near: boolean;
  body: () => Body;
}

/** The largest body that holds less than the value, and the value that it holds. */
const nextBelow = (entries: readonly Entry[], farads: number): Entry | undefined =>
  entries
    .filter(({ row }) => row.c_max < farads * (1 - TABLE_ROUNDING))
    .reduce<Entry | undefined>(
      (largest, entry) =>
        largest === undefined || entry.row.c_max > largest.row.c_max ? entry : largest,
      undefined,
    );

/** What one shelf has for the part: a listed body, one between two values, or a larger one. */
const onShelf = (
  { volts, entries }: Shelf,
  wanted: Wanted,
  valueReach: number,
): Found | undefined => {
  const farads = wanted.capacitance;
  const cover = entries.find(({ row }) => row.c_max >= farads * (1 - TABLE_ROUNDING));
  if (cover === undefined) return undefined;
  const { row, volume } = cover;
  const near = row.c_min <= farads * valueReach;
  const whole = (from: 'listed' | 'covering'): Found => ({
    volume,
    near,
    body: () => bodyOfRow(row, from),
  });
  if (row.c_min <= farads * (1 + TABLE_ROUNDING)) {
    return whole(alike(volts, wanted.ratedVoltage) ? 'listed' : 'covering');
  }
  const below = nextBelow(entries, farads);
  if (below === undefined || below.volume >= volume) return whole('covering');
  const share = logShare(farads, below.row.c_max, row.c_min);
  const between = logBetween(below.volume, volume, share);
  return { volume: between, near, body: () => bodyBetween(below.row, row, between) };
};

/**
 * The smallest tabulated body that takes a part: of its value at its own rated voltage or the next
 * higher ones, read between two values of one style and voltage where it lies between them. Nothing
 * where no row of the type takes the part, or only ones of far higher values; it is never read
 * beyond the rows. Once one row is near, a smaller body counts however much more it holds, so that
 * no part is reckoned larger than another of more value.
 */
export const tabulatedBody = (
  catalogue: Pick<Catalogue, 'bodies'> & WithRules,
  wanted: Wanted,
): Body | undefined => {
  const { ratedVoltage, style } = wanted;
  // A body for more takes the part as well, but says little about its size where it is for far more.
  const valueReach = ruleOf(catalogue, 'body-value-reach');
  const mostVolts = ratedVoltage * ruleOf(catalogue, 'body-rating-reach');
  let best: Found | undefined;
  let near = false;
  for (const shelf of shelves(catalogue.bodies, wanted.type)) {
    const chip = shelf.entries[0]?.row.shape === 'chip';
    const suits =
      (style === undefined ? !chip : shelf.style === style) &&
      shelf.volts >= ratedVoltage * (1 - TABLE_ROUNDING) &&
      shelf.volts <= mostVolts;
    const found = suits ? onShelf(shelf, wanted, valueReach) : undefined;
    if (found === undefined) continue;
    near ||= found.near;
    if (best === undefined || found.volume < best.volume) best = found;
  }
  return near ? best?.body() : undefined;
};
