import { axialCan } from './axial-can.ts';
import { axial } from './axial.ts';
import { bead } from './bead.ts';
import { box } from './box.ts';
import { can } from './can.ts';
import { chip } from './chip.ts';
import { dip } from './dip.ts';
import { dipped } from './dipped.ts';
import { disc } from './disc.ts';
import type { Form } from './form.ts';
import { composition, resistor } from './resistor.ts';

/** Every form that can be drawn; its id is its name here. */
export const forms = {
  disc,
  dipped,
  box,
  bead,
  can,
  'axial-can': axialCan,
  axial,
  resistor,
  composition,
  chip,
  dip,
} as const satisfies Record<string, Form>;

export type FormId = keyof typeof forms;
