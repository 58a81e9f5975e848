import type { PositionId } from '../../engine/catalogue.ts';
import { audioSchematics } from './audio.ts';
import { filterSchematics } from './filters.ts';
import { holdSchematics } from './hold.ts';
import { instrumentSchematics } from './instruments.ts';
import { powerSchematics } from './power.ts';
import { potSchematics } from './pots.ts';
import { resistorSchematics } from './resistors.ts';
import type { Schematic } from './schematic.ts';
import { supplySchematics } from './supply.ts';
import { timingSchematics } from './timing.ts';
import { trimmerSchematics } from './trimmers.ts';

export { schematicMarkup } from './schematic.ts';
export type { Schematic } from './schematic.ts';

/** A circuit for each position that has one. */
export const schematics: Readonly<Partial<Record<PositionId, Schematic>>> = {
  ...holdSchematics,
  ...timingSchematics,
  ...filterSchematics,
  ...audioSchematics,
  ...supplySchematics,
  ...powerSchematics,
  ...instrumentSchematics,
  ...resistorSchematics,
  ...trimmerSchematics,
  ...potSchematics,
};
