import type { FindingId } from '../../catalogue.ts';
import { temperature } from '../../findings/temperature.ts';
import type { KindModel } from '../part.ts';
import {
  duty,
  kindAvailability,
  markedValue,
  partTolerance,
  ratingKept,
  toleranceKept,
} from './common.ts';
import {
  flammability,
  overloadVoltage,
  resistorPower,
  resistorVoltage,
  surgeDuty,
} from './load.ts';
import {
  endResistance,
  pinPattern,
  rotationShare,
  settingDrift,
  settingReach,
  settingShift,
  settingTransfer,
  wiperLoad,
  wiperNoise,
} from './trimmer.ts';
import { dividerCurrent, settingUnderLoad, wiperJump } from './wiper.ts';
import {
  gainShift,
  lifeDrift,
  partNoise,
  resistanceDrift,
  selfInductance,
  voltageShift,
} from './signal.ts';

/** How each finding about parts besides capacitors is worked out. */
export const kindModels: Readonly<Record<FindingId, KindModel>> = {
  temperature,
  availability: kindAvailability,
  'marked-value': markedValue,
  'part-tolerance': partTolerance,
  'tolerance-kept': toleranceKept,
  'rating-kept': ratingKept,
  duty,
  'resistor-power': resistorPower,
  'power-practice': resistorPower,
  'resistor-voltage': resistorVoltage,
  'overload-voltage': overloadVoltage,
  'surge-duty': surgeDuty,
  flammability,
  'resistance-drift': resistanceDrift,
  'voltage-shift': voltageShift,
  'life-drift': lifeDrift,
  'gain-shift': gainShift,
  'part-noise': partNoise,
  'self-inductance': selfInductance,
  'setting-transfer': settingTransfer,
  'setting-reach': settingReach,
  'end-resistance': endResistance,
  'setting-drift': settingDrift,
  'setting-shift': settingShift,
  'wiper-load': wiperLoad,
  'wiper-noise': wiperNoise,
  'divider-current': dividerCurrent,
  'setting-under-load': settingUnderLoad,
  'contact-jump': wiperJump,
  'pin-pattern': pinPattern,
  'rotation-share': rotationShare,
};
