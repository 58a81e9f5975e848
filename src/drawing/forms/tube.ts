import { wire, wireOf } from '../lead.ts';
import type { Path, Point } from '../path.ts';
import type { Note, Shape, View } from '../shape.ts';
import type { PartSpec } from '../spec.ts';

/** How far the leads of a lying part are drawn, mm. */
const lyingLead = (spec: PartSpec): number => Math.min(12, Math.max(6, spec.length * 0.35));

/** The leads of a lying part, from its ends outwards. */
export const lyingLeads = (spec: PartSpec, inset = 0): Shape[] => {
  const [half, y, out] = [spec.length / 2, -spec.width / 2, lyingLead(spec)];
  return [-1, 1].map((side) => wire(spec, [side * (half - inset), y], [side * (half + out), y]));
};

/**
 * A lying round part from the side that a lead comes out of.
 * @param shapes what its end is made of, by its radius and that of the lead, about its middle
 */
export const roundEnd = (
  spec: PartSpec,
  shapes: (middle: Point, radius: number, wireRadius: number) => readonly Shape[],
): View => {
  const radius = spec.width / 2;
  return {
    name: 'side',
    from: -radius,
    shapes: shapes([0, -radius], radius, (spec.leadWire ?? 0.8) / 2),
  };
};

/** Where the end of a lead of a lying part is, on its left or right. */
const leadEnd = (spec: PartSpec, side: -1 | 1): Point => [
  side * (spec.length / 2 + lyingLead(spec)),
  -spec.width / 2,
];

/** Where bands lie along a part: from one end, evenly, and so wide. */
export interface BandPlace {
  x: number;
  width: number;
}

/**
 * Places for so many bands between two ends: close together from the first end, the last one set
 * apart where there are three or more, so that one sees where to begin.
 */
export const bandPlaces = (count: number, from: number, to: number): BandPlace[] => {
  const slots = count + (count > 2 ? 0.9 : 0.4);
  const step = (to - from) / slots;
  const width = Math.min(step * 0.56, 2.4);
  return Array.from({ length: count }, (_, i) => ({
    x: from + step * (i + 0.5 + (count > 2 && i === count - 1 ? 0.7 : 0)) - width / 2,
    width,
  }));
};

/** A band round a tube of equal thickness. */
export const ring = ({ x, width }: BandPlace, thickness: number): Path => [
  ['M', [x, -thickness]],
  ['L', [x + width, -thickness]],
  ['L', [x + width, 0]],
  ['L', [x, 0]],
  ['Z'],
];

/** Words above the lead at one end, from the body outwards. */
export const endNote = (spec: PartSpec, side: -1 | 1, text: string): Note => ({
  text,
  at: [(side * spec.length) / 2, -spec.width / 2 - wireOf(spec) / 2],
  side: side < 0 ? 'above-left' : 'above-right',
});

/** Says at which end the outer foil is. */
export const foilNote = (spec: PartSpec, side: -1 | 1): Note => endNote(spec, side, 'outer foil');

/** Says which end of a lying part is plus, here always the left one. */
export const endSigns = (spec: PartSpec): Note[] =>
  ([-1, 1] as const).map((side) => {
    const [x, y] = leadEnd(spec, side);
    return { text: side < 0 ? '+' : '−', at: [x - side, y - wireOf(spec) / 2], side: 'above' };
  });
