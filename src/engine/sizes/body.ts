import type { BodyRow } from '../../schemas/sizes.ts';
import type { Basis, SourceId } from '../catalogue.ts';
import { add, hull, mapRising, type Range } from '../quantities/range.ts';
import { MILLIMETRE } from '../quantities/si.ts';

export type Shape = BodyRow['shape'];

/** Shapes that are as long as they are wide, or as wide as they are high. */
const ROUND: readonly Shape[] = ['can', 'tube', 'disc'];

/** Volume (mm3) of a tabulated body. */
export const volumeOf = ({
  shape,
  length_mm: length,
  width_mm: width,
  height_mm: height,
}: Pick<BodyRow, 'shape' | 'length_mm' | 'width_mm' | 'height_mm'>): number =>
  length * width * height * (ROUND.includes(shape) ? Math.PI / 4 : 1);

/** Size of a part, in metres and cubic metres. */
export interface Body {
  /** Nothing where only a volume is estimated. */
  shape: Shape | undefined;
  /** Longer side on the board. */
  length: Range;
  width: Range;
  /** Above the board. */
  height: Range;
  volume: Range;
  /** Between the leads as they come, m; nothing where the table does not say. */
  pitch: readonly number[];
  /** Thickest lead, m, where it is said. */
  lead: number | undefined;
  /** The tabulated body that takes the whole part, mm; nothing for an estimate. */
  row: BodyRow | undefined;
  /** How it was found, for a working: `the listed body of 1 uF 100 V`. */
  from: 'listed' | 'covering' | 'between' | 'members' | 'together' | 'estimate';
  /** Tabulated bodies that it rests on, the smaller first. */
  rows: readonly BodyRow[];
  sources: readonly SourceId[];
  bases: readonly Basis[];
}

const exact = (millimetres: number): Range => {
  const metres = millimetres * MILLIMETRE;
  return { min: metres, typ: metres, max: metres };
};

const cubic = (range: Range): Range => mapRising(range, (volume) => volume * MILLIMETRE ** 3);

/** The body of one row as it stands. */
export const bodyOfRow = (row: BodyRow, from: 'listed' | 'covering'): Body => {
  const volume = volumeOf(row);
  return {
    shape: row.shape,
    length: exact(row.length_mm),
    width: exact(row.width_mm),
    height: exact(row.height_mm),
    volume: cubic({ min: volume, typ: volume, max: volume }),
    pitch: row.pitch_mm.map((pitch) => pitch * MILLIMETRE),
    lead: row.lead_mm === undefined ? undefined : row.lead_mm * MILLIMETRE,
    row,
    from,
    rows: [row],
    sources: [row.source],
    bases: [row.basis],
  };
};

/**
 * A body between two tabulated ones: of the shape of the larger, which takes the part for certain,
 * with its sides shrunk alike to the volume (mm3) that is read between the two.
 */
export const bodyBetween = (smaller: BodyRow, larger: BodyRow, volume: number): Body => {
  const [least, most] = [Math.min(volumeOf(smaller), volume), volumeOf(larger)];
  const sides = (millimetres: number): Range => {
    const shrunk = (share: number): number => millimetres * MILLIMETRE * Math.cbrt(share / most);
    return { min: shrunk(least), typ: shrunk(volume), max: millimetres * MILLIMETRE };
  };
  return {
    ...bodyOfRow(larger, 'covering'),
    length: sides(larger.length_mm),
    width: sides(larger.width_mm),
    height: sides(larger.height_mm),
    volume: cubic({ min: least, typ: volume, max: most }),
    from: 'between',
    rows: [smaller, larger],
    sources: [...new Set([smaller.source, larger.source])],
    bases: [smaller.basis, larger.basis],
  };
};

/**
 * A body of which only the volume (m3) is estimated: as high as it is long and wide.
 * @param least volume (m3) that no estimate falls below
 */
export const estimatedBody = (estimate: Range, least: number): Body => {
  const volume = mapRising(estimate, (cubicMetres) => Math.max(least, cubicMetres));
  const side = mapRising(volume, Math.cbrt);
  return {
    shape: undefined,
    length: side,
    width: side,
    height: side,
    volume,
    pitch: [],
    lead: undefined,
    row: undefined,
    from: 'estimate',
    rows: [],
    sources: [],
    bases: [],
  };
};

/** The body of a part that may be any of several types: nothing smaller, nothing larger. */
export const bodyOfMembers = (members: readonly [Body, ...Body[]]): Body => {
  const over = (pick: (body: Body) => Range): Range => {
    const [first, ...rest] = members;
    return hull([pick(first), ...rest.map(pick)]);
  };
  const leads = members.flatMap(({ lead }) => lead ?? []);
  return {
    shape: undefined,
    length: over(({ length }) => length),
    width: over(({ width }) => width),
    height: over(({ height }) => height),
    volume: over(({ volume }) => volume),
    pitch: [],
    lead: leads.length === 0 ? undefined : Math.max(...leads),
    row: undefined,
    from: 'members',
    rows: members.flatMap(({ rows }) => rows),
    sources: [...new Set(members.flatMap(({ sources }) => sources))],
    bases: members.flatMap(({ bases }) => bases),
  };
};

const larger = (a: Range, b: Range): Range => ({
  min: Math.max(a.min, b.min),
  typ: Math.max(a.typ, b.typ),
  max: Math.max(a.max, b.max),
});

/** Two bodies beside each other: as long and as high as the larger, as wide as both. */
export const bodiesTogether = (a: Body, b: Body): Body => {
  const leads = [a.lead, b.lead].filter((lead) => lead !== undefined);
  // The one with the wider leads decides what room they need; one without leads, that there are none.
  const wider = Math.min(...a.pitch) >= Math.min(...b.pitch) ? a : b;
  return {
    shape: undefined,
    length: larger(a.length, b.length),
    width: add(a.width, b.width),
    height: larger(a.height, b.height),
    volume: add(a.volume, b.volume),
    pitch: wider.pitch,
    lead: leads.length === 0 ? undefined : Math.max(...leads),
    row: undefined,
    from: a.from === 'estimate' && b.from === 'estimate' ? 'estimate' : 'together',
    rows: [a, b].flatMap(({ row }) => row ?? []),
    sources: [...new Set([...a.sources, ...b.sources])],
    bases: [...a.bases, ...b.bases],
  };
};
