import type { FindingId } from '../../catalogue.ts';
import type { DeviceModel } from '../model.ts';
import {
  biasDroop,
  dcError,
  inputCeiling,
  inputFloor,
  loadPhase,
  noise,
  ownCapacitor,
  reversal,
  slewing,
  speed,
  stableGain,
  supplyDraw,
  swing,
} from './amplifier.ts';
import { driveHigh, driveLow, givesHigh, givesLow, sameStages, sinks } from './logic.ts';
import { pins, pinsInDoubt, trimPins } from './pins.ts';
import { span, supplyHigh, supplyLow } from './supply.ts';
import { chargeStep, holdDroop, resistanceChange, seriesLossModel, settling } from './switch.ts';

/** Every finding about devices, by its id in `devices/findings.csv`. */
export const deviceModels: Readonly<Record<FindingId, DeviceModel>> = {
  'supply-high': supplyHigh,
  'supply-low': supplyLow,
  span,
  pins,
  'pins-in-doubt': pinsInDoubt,
  'trim-pins': trimPins,
  'series-loss': seriesLossModel,
  'resistance-change': resistanceChange,
  settling,
  'hold-droop': holdDroop,
  'charge-step': chargeStep,
  'drive-high': driveHigh,
  'drive-low': driveLow,
  'gives-high': givesHigh,
  'gives-low': givesLow,
  sinks,
  'same-stages': sameStages,
  'input-floor': inputFloor,
  'input-ceiling': inputCeiling,
  swing,
  reversal,
  'bias-droop': biasDroop,
  'dc-error': dcError,
  speed,
  slewing,
  'stable-gain': stableGain,
  'own-capacitor': ownCapacitor,
  'load-phase': loadPhase,
  'noise-with-source': noise,
  'supply-draw': supplyDraw,
};
