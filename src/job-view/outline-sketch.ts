import { coloursOf, specOfRow, type PartSpec } from '../drawing/index.ts';
import { bandsOf, type Banded, type Catalogue, type Tolerance } from '../engine/index.ts';
import { isCapacitor, isDevice, isKind, type SheetStep } from '../job/index.ts';
import type { PartOutlineRow } from '../schemas/job.ts';
import { basisWords } from '../text/words.ts';

/** A part to draw, with what is said of its sides. */
export interface Sketched {
  spec: PartSpec;
  name: string;
  said: string;
}

/** What is known of a part besides its kind. */
interface Known {
  type: string;
  bodies: readonly string[];
  /** Printed on it. */
  number?: string | undefined;
  /** What bands of colour would tell of it. */
  told?: Banded | undefined;
}

/** Bodies that an old device is sold in. */
const bodiesOf = (type: string, catalogue: Catalogue | undefined): string[] => {
  const device = catalogue?.devices.devices.find(({ id }) => id === type);
  const pinouts = catalogue?.devices.pinouts ?? [];
  return (device?.pinouts ?? []).flatMap((id) => pinouts.find((row) => row.id === id)?.body ?? []);
};

/** Bands tell of a tolerance that is alike both ways; without one, nobody knows how many there are. */
const told = (value: number | undefined, tolerance: Tolerance | undefined): Banded | undefined =>
  value === undefined || tolerance === undefined || tolerance.minus !== tolerance.plus
    ? undefined
    : { value, tolerance: tolerance.plus };

const oldPart = ({ planned: { part, line } }: SheetStep, catalogue?: Catalogue): Known => {
  const type = part.type ?? line.type;
  const bodies = bodiesOf(type, catalogue);
  const number = part.family === 'device' ? line.marking || type : undefined;
  return { type, bodies, number, told: told(part.value?.typ, part.tolerance) };
};

const newPart = ({ planned, action }: SheetStep): Known | undefined => {
  const { standIn } = planned;
  if (action !== 'replace' || standIn === undefined || isCapacitor(standIn)) return undefined;
  const { type } = standIn.candidate;
  if (isDevice(standIn))
    return { type, bodies: standIn.candidate.bodies, number: standIn.candidate.number };
  const { value, tolerance } = standIn.candidate;
  return { type, bodies: [], told: isKind(standIn) ? told(value, tolerance) : undefined };
};

/** The row for a part: one that names its type or body before one for all of its kind. */
const outlineOf = (
  rows: readonly PartOutlineRow[],
  kind: string,
  { type, bodies }: Known,
): PartOutlineRow | undefined => {
  const own = rows.filter(({ kinds }) => kinds.includes(kind));
  return (
    own.find((row) => row.types.includes(type)) ??
    own.find((row) => row.bodies.some((body) => bodies.includes(body))) ??
    own.find((row) => row.types.length === 0 && row.bodies.length === 0)
  );
};

/**
 * The old part and what is fitted, of kinds besides capacitors, in the usual outline of their types
 * or bodies. What looks alike is drawn once.
 * @param catalogue of the position
 */
export const outlines = (
  step: SheetStep,
  catalogue: Catalogue | undefined,
  looks: Catalogue,
): Sketched[] => {
  const { job, markings } = looks;
  const colours = coloursOf(looks);
  const { kind } = step.planned.part;
  const drawn = (known: Known | undefined, name: string): Sketched[] => {
    const row = known && outlineOf(job.partOutlines, kind, known);
    const spec = row && specOfRow(row);
    if (known === undefined || row === undefined || spec === undefined) return [];
    const marking = known.number === undefined ? [] : [known.number];
    const bands =
      row.banded && known.told !== undefined ? bandsOf(markings, known.told) : undefined;
    const names = (bands ?? []).map((id) => colours(id)?.name ?? id);
    const inWords = names.length === 0 ? '' : `, bands ${names.join(' – ')}`;
    const said = `usual outline (${basisWords[row.basis]?.meaning ?? row.basis})${inWords}`;
    return [{ spec: { ...spec, marking, bands: bands ?? spec.bands }, name, said }];
  };
  const old = drawn(oldPart(step, catalogue), 'old part');
  const fresh = drawn(newPart(step), 'new part');
  const isAlike = JSON.stringify(old[0]?.spec) === JSON.stringify(fresh[0]?.spec);
  return isAlike ? old.map((one) => ({ ...one, name: 'old and new part' })) : [...old, ...fresh];
};
