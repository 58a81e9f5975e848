import type { Sum } from '../sum.ts';
import { electrolyticLife } from './electrolytic-life.ts';
import { filmAc } from './film-ac.ts';
import { reforming } from './reforming.ts';
import { rippleCurrents } from './ripple-current.ts';
import { tantalumResistance } from './tantalum-resistance.ts';
import { workingVoltage } from './working-voltage.ts';
import { pulseEdge } from './pulse-edge.ts';
import { rippleHeating } from './ripple-heating.ts';

/** Sums of ratings and life. */
export const ratingSums: readonly Sum[] = [
  workingVoltage,
  filmAc,
  electrolyticLife,
  pulseEdge,
  rippleCurrents,
  rippleHeating,
  tantalumResistance,
  reforming,
];
