import type { DeviceFigureRow, DeviceRow } from '../../schemas/devices.ts';
import { weakestOf } from '../assessment/basis.ts';
import type { Basis, Catalogue, PropertyId, SourceId } from '../catalogue.ts';
import { hull, type Range } from '../quantities/range.ts';

/** What is known of one property of a device. */
export interface DeviceKnowledge {
  /** SI */
  range: Range;
  basis: Basis;
  sources: SourceId[];
}

/** What a finding rests on that takes several facts: each source once, the basis of each. */
export const restingOn = (
  facts: readonly DeviceKnowledge[],
): { sources: SourceId[]; bases: Basis[] } => ({
  sources: [...new Set(facts.flatMap(({ sources }) => sources))],
  bases: facts.map(({ basis }) => basis),
});

/** The rows that assessments take, by property and by the device or series that they are of. */
type FiguresByProperty = ReadonlyMap<PropertyId, ReadonlyMap<string, DeviceFigureRow[]>>;

const grouped = new WeakMap<readonly DeviceFigureRow[], FiguresByProperty>();

const byProperty = (figures: readonly DeviceFigureRow[]): FiguresByProperty => {
  const known = grouped.get(figures);
  if (known !== undefined) return known;
  const used = figures.filter(({ use }) => use === 'used');
  const made = new Map(
    [...Map.groupBy(used, ({ property }) => property)].map(([property, rows]) => [
      property,
      Map.groupBy(rows, (row) => row.of),
    ]),
  );
  grouped.set(figures, made);
  return made;
};

/**
 * The rows that assessments take for a property: the device's own, or else those of the nearest of its
 * series, of which the widest is named first.
 */
export const figuresFor = (
  { devices }: Pick<Catalogue, 'devices'>,
  device: DeviceRow,
  property: PropertyId,
): DeviceFigureRow[] => {
  const all = byProperty(devices.figures).get(property);
  const owner = [device.id, ...device.series.toReversed()].find((one) => all?.has(one));
  return owner === undefined ? [] : (all?.get(owner) ?? []);
};

/** The least, the typical and the greatest of several rows of one property, SI. */
const joined = (rows: readonly DeviceFigureRow[], { units }: Pick<Catalogue, 'units'>): Range => {
  const si = (value: number, row: DeviceFigureRow): number =>
    value * (units[row.unit]?.factor ?? 1);
  const numbers = rows.flatMap((row) =>
    [row.min, row.typ, row.max].flatMap((value) => (value === undefined ? [] : [si(value, row)])),
  );
  const ends = { min: Math.min(...numbers), max: Math.max(...numbers) };
  const typical = rows.flatMap((row) => (row.typ === undefined ? [] : [si(row.typ, row)]));
  // Where only limits are promised, the middle of them is all that can be called usual.
  const middles = typical.length > 0 ? typical : numbers;
  const [first, ...others] = middles.map((value) => ({ min: value, typ: value, max: value }));
  return { ...ends, typ: first === undefined ? ends.max : hull([first, ...others]).typ };
};

const along = (low: number, high: number, share: number): number =>
  low > 0 && high > 0 ? low ** (1 - share) * high ** share : low + (high - low) * share;

/** Between two points on logarithmic scales. */
const between = (low: Range, high: Range, share: number): Range => ({
  min: along(low.min, high.min, share),
  typ: along(low.typ, high.typ, share),
  max: along(low.max, high.max, share),
});

/**
 * What is known of a property of a device, or nothing. Where figures depend on supply or current, it
 * is read between the two nearest on logarithmic scales; beyond the figures the nearest one holds.
 * @param at supply in V, or current in A
 */
export const deviceKnowledge = (
  catalogue: Pick<Catalogue, 'devices' | 'units'>,
  device: DeviceRow,
  property: PropertyId,
  at?: number,
): DeviceKnowledge | undefined => {
  const rows = figuresFor(catalogue, device, property);
  if (rows.length === 0) return undefined;
  const anywhere = rows.filter((row) => row.at === undefined);
  const points = [...new Set(rows.flatMap((row) => row.at ?? []))].sort((a, b) => a - b);
  const wanted = at ?? points.at(-1) ?? 0;
  const lower = points.filter((point) => point <= wanted).at(-1) ?? points[0];
  const upper = points.find((point) => point >= wanted) ?? points.at(-1);
  const taken = rows.filter((row) => row.at === lower || row.at === upper);
  const used = [...new Set([...taken, ...anywhere])];
  const known = {
    basis: weakestOf(used.map((row) => row.basis)),
    sources: [...new Set(used.map((row) => row.source))],
  };
  if (lower === undefined || upper === undefined)
    return { ...known, range: joined(used, catalogue) };
  const rangeAt = (point: number): Range =>
    joined([...rows.filter((row) => row.at === point), ...anywhere], catalogue);
  const [low, high] = [rangeAt(lower), rangeAt(upper)];
  const share =
    lower === upper || lower <= 0 ? 0 : Math.log(wanted / lower) / Math.log(upper / lower);
  return { ...known, range: between(low, high, share) };
};
