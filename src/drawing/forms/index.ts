import { airVariable } from './air-variable.ts';
import { axialBead } from './axial-bead.ts';
import { axialCan } from './axial-can.ts';
import { axial } from './axial.ts';
import { bead } from './bead.ts';
import { box } from './box.ts';
import { button } from './button.ts';
import { can } from './can.ts';
import { chipCan } from './chip-can.ts';
import { chip } from './chip.ts';
import { coin } from './coin.ts';
import { compressionTrimmer } from './compression-trimmer.ts';
import { dip } from './dip.ts';
import { dipped } from './dipped.ts';
import { disc } from './disc.ts';
import { doorknob } from './doorknob.ts';
import { envelope } from './envelope.ts';
import { feedThrough } from './feed-through.ts';
import { filmTube } from './film-tube.ts';
import { flatPack } from './flat-pack.ts';
import type { Form } from './form.ts';
import { glassBlock } from './glass-block.ts';
import { micaSheet } from './mica-sheet.ts';
import { moulded } from './moulded.ts';
import { multiCan } from './multi-can.ts';
import { oilCan } from './oil-can.ts';
import { openPreset } from './open-preset.ts';
import { pistonTrimmer } from './piston-trimmer.ts';
import { plateStack } from './plate-stack.ts';
import { plate } from './plate.ts';
import { cement, metalClad } from './power-resistors.ts';
import { composition, resistor } from './resistor.ts';
import { multiTurn, singleTurn } from './presets.ts';
import { rotaryTrimmer } from './rotary-trimmer.ts';
import { screwCan } from './screw-can.ts';
import { sealedTube } from './sealed-tube.ts';
import { singleInLine } from './single-in-line.ts';
import { snapIn } from './snap-in.ts';
import { stacked } from './stacked.ts';
import { tabbedCan } from './tabbed-can.ts';
import { tabbed } from './tabbed.ts';
import { flatSided, metalCan } from './transistor.ts';
import { waxTube } from './wax-tube.ts';
import { ceramicTube, rodResistor } from './wire-wrapped.ts';
import { wrapped } from './wrapped.ts';

/** Every form that can be drawn; its id is its name here. */
export const forms = {
  disc,
  plate,
  dipped,
  box,
  stacked,
  bead,
  can,
  'snap-in': snapIn,
  'screw-can': screwCan,
  'tabbed-can': tabbedCan,
  'multi-can': multiCan,
  'chip-can': chipCan,
  'axial-can': axialCan,
  axial,
  wrapped,
  'wax-tube': waxTube,
  'film-tube': filmTube,
  'sealed-tube': sealedTube,
  'oil-can': oilCan,
  moulded,
  button,
  'ceramic-tube': ceramicTube,
  doorknob,
  'feed-through': feedThrough,
  'glass-block': glassBlock,
  'axial-bead': axialBead,
  chip,
  coin,
  'rotary-trimmer': rotaryTrimmer,
  'compression-trimmer': compressionTrimmer,
  'piston-trimmer': pistonTrimmer,
  'air-variable': airVariable,
  'multi-turn': multiTurn,
  'single-turn': singleTurn,
  'open-preset': openPreset,
  resistor,
  composition,
  'rod-resistor': rodResistor,
  cement,
  'metal-clad': metalClad,
  'single-in-line': singleInLine,
  dip,
  'flat-sided': flatSided,
  'metal-can': metalCan,
  tabbed,
  'flat-pack': flatPack,
  'plate-stack': plateStack,
  'mica-sheet': micaSheet,
  envelope,
} as const satisfies Record<string, Form>;

export type FormId = keyof typeof forms;

/** Whether a table names a form that is drawn; the check of the data reports others. */
export const isForm = (form: string): form is FormId => Object.hasOwn(forms, form);
