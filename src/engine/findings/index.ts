import type { FindingId } from '../catalogue.ts';
import { acVoltage } from './alternating.ts';
import { corner, distortion, phase } from './coupling.ts';
import { ageing, balancedDrift, drift, pitchDrift } from './drift.ts';
import { body, height, leadPitch, leadWire, side } from './fit.ts';
import { rippleHeating } from './heating.ts';
import { absorption, droop } from './hold.ts';
import { inrush } from './inrush.ts';
import { keptValue } from './kept-value.ts';
import { leakageCurrent, leakageOffset, leakageShare } from './leakage.ts';
import { levelShift } from './level.ts';
import { life } from './life.ts';
import { loss } from './loss.ts';
import { discharge, residualVoltage, touchCurrent } from './mains.ts';
import type { FindingModel } from './model.ts';
import { pulse } from './pulse.ts';
import { selfResonance } from './resonance.ts';
import { regulatorDump } from './regulator-dump.ts';
import { reverseVoltage } from './reverse.ts';
import { rippleCurrent } from './ripple-current.ts';
import { rippleVoltage } from './ripple.ts';
import { acquisition, holdStep } from './sampling.ts';
import { esrWindow, impedance } from './series-elements.ts';
import { filterShift, timeShift, tuningShift } from './shift.ts';
import { shelf } from './shelf.ts';
import { ownSurge } from './surge.ts';
import { availability, microphony, polarity, safetyClass, signKnown } from './suitability.ts';
import { settable } from './set-by-hand.ts';
import { temperature } from './temperature.ts';
import { tolerance, toleranceKept, value } from './value.ts';
import { ratedVoltage, voltageMargin } from './voltage.ts';

/** How each finding of findings.csv is worked out; the data check holds the two together. */
export const findingModels: Readonly<Record<FindingId, FindingModel>> = {
  'rated-voltage': ratedVoltage,
  'voltage-margin': voltageMargin,
  temperature,
  value,
  tolerance,
  'tolerance-kept': toleranceKept,
  drift,
  'balanced-drift': balancedDrift,
  'pitch-drift': pitchDrift,
  ageing,
  absorption,
  droop,
  'leakage-offset': leakageOffset,
  'leakage-share': leakageShare,
  'leakage-current': leakageCurrent,
  loss,
  corner,
  distortion,
  polarity,
  'sign-known': signKnown,
  'safety-class': safetyClass,
  settable,
  availability,
  'esr-window': esrWindow,
  impedance,
  microphony,
  pulse,
  'lead-pitch': leadPitch,
  body,
  height,
  side,
  'lead-wire': leadWire,
  inrush,
  'own-surge': ownSurge,
  'regulator-dump': regulatorDump,
  'ripple-voltage': rippleVoltage,
  'ripple-heating': rippleHeating,
  'ripple-current': rippleCurrent,
  life,
  shelf,
  'filter-shift': filterShift,
  'tuning-shift': tuningShift,
  'time-shift': timeShift,
  'level-shift': levelShift,
  'kept-value': keptValue,
  'hold-step': holdStep,
  acquisition,
  phase,
  'touch-current': touchCurrent,
  discharge,
  'residual-voltage': residualVoltage,
  'reverse-voltage': reverseVoltage,
  'ac-voltage': acVoltage,
  'self-resonance': selfResonance,
};
