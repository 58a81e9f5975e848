import { exactly } from '../quantities/range.ts';
import { rippleVoltage } from './ripple.ts';

/** A rectifier and what it feeds. */
interface Rectifier {
  /** RMS voltage of the winding, V. */
  rms: number;
  /** Drop of all diodes in the path, V. */
  drop: number;
  /** Current drawn, A. */
  current: number;
  /** Frequency of the mains, Hz. */
  mains: number;
  /** Reservoir, F. */
  farad: number;
  /** Pulses in a cycle: two behind a full-wave rectifier, one behind a single diode. */
  pulses: 1 | 2;
}

/** What a rectifier and its reservoir do, taken as ideal but for the drop of the diodes. */
export interface Rectified {
  /** V, at the peak. */
  peak: number;
  /** V, peak to peak. */
  ripple: number;
  /** V, at the trough. */
  trough: number;
  /** Share of the time in which the diodes conduct, 0 to 1. */
  conduction: number;
  /** A, at the highest of a charging pulse taken as a triangle that falls from its start. */
  pulse: number;
}

/**
 * Reservoir behind a rectifier.
 *
 * Ripple I/(f*C) errs on the high side, for it takes the pulses as short. Diodes conduct from
 * where the sine is as high as the trough up to its peak: acos(1 - V_r/V_p) of the circle, once or twice
 * a cycle. The charge between two pulses, I/f, goes through in that time; a pulse that falls from its start in a
 * straight line is twice its mean. Worked out from these identities; resistance of transformer and
 * diodes lowers and lengthens the pulse.
 */
export const rectified = ({ rms, drop, current, mains, farad, pulses }: Rectifier): Rectified => {
  const peak = Math.max(0, rms * Math.SQRT2 - drop);
  const ripple = Math.min(peak, rippleVoltage(current, pulses * mains, exactly(farad)).typ);
  const angle = peak === 0 ? Math.PI / 2 : Math.acos(1 - ripple / peak);
  const conduction = (pulses * angle) / (2 * Math.PI);
  const mean = conduction === 0 ? current : current / conduction;
  return { peak, ripple, trough: peak - ripple, conduction, pulse: 2 * mean };
};
