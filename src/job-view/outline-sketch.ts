import { specOfRow, type PartSpec } from '../drawing/index.ts';
import type { Catalogue } from '../engine/index.ts';
import { isCapacitor, isDevice, type SheetStep } from '../job/index.ts';
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
}

/** Bodies that an old device is sold in. */
const bodiesOf = (type: string, catalogue: Catalogue | undefined): string[] => {
  const device = catalogue?.devices.devices.find(({ id }) => id === type);
  const pinouts = catalogue?.devices.pinouts ?? [];
  return (device?.pinouts ?? []).flatMap((id) => pinouts.find((row) => row.id === id)?.body ?? []);
};

const oldPart = ({ planned: { part, line } }: SheetStep, catalogue?: Catalogue): Known => {
  const type = part.type ?? line.type;
  const bodies = bodiesOf(type, catalogue);
  return { type, bodies, number: part.family === 'device' ? line.marking || type : undefined };
};

const newPart = ({ planned, action }: SheetStep): Known | undefined => {
  const { standIn } = planned;
  if (action !== 'replace' || standIn === undefined || isCapacitor(standIn)) return undefined;
  const { type } = standIn.candidate;
  return isDevice(standIn)
    ? { type, bodies: standIn.candidate.bodies, number: standIn.candidate.number }
    : { type, bodies: [] };
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
  { job: { partOutlines } }: Catalogue,
): Sketched[] => {
  const { kind } = step.planned.part;
  const drawn = (known: Known | undefined, name: string): Sketched[] => {
    const row = known && outlineOf(partOutlines, kind, known);
    const spec = row && specOfRow(row);
    if (known === undefined || row === undefined || spec === undefined) return [];
    const marking = known.number === undefined ? [] : [known.number];
    const said = `usual outline (${basisWords[row.basis]?.meaning ?? row.basis})`;
    return [{ spec: { ...spec, marking }, name, said }];
  };
  const old = drawn(oldPart(step, catalogue), 'old part');
  const fresh = drawn(newPart(step), 'new part');
  const isAlike = JSON.stringify(old[0]?.spec) === JSON.stringify(fresh[0]?.spec);
  return isAlike ? old.map((one) => ({ ...one, name: 'old and new part' })) : [...old, ...fresh];
};
