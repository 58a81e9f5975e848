import type { View } from '../shape.ts';
import type { PartSpec } from '../spec.ts';

/** A shape that parts come in: pure geometry. */
export interface Form {
  /** As one says it: `disc`, `dipped lozenge`. */
  name: string;
  /** Round about which axis, for its size in words; nothing for what has three sides. */
  round?: 'upright' | 'lying' | 'facing';
  /** The views that help to recognise it, the one with the marking first. */
  views: (spec: PartSpec) => readonly View[];
}
