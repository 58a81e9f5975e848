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
import { drop, forward, recovery, reverse, reverseLeakage, surge } from './diode.ts';
import { driveHigh, driveLow, givesHigh, givesLow, sinks } from './logic.ts';
import { pins, pinsInDoubt, trimPins } from './pins.ts';
import { sameIdss, sameOutput, samePitch, sameRows, sameStages } from './ratio.ts';
import {
  differenceLimit,
  discharge,
  headroom,
  inputLimit,
  leastLoad,
  load,
  outputCapacitor,
  outputEsr,
} from './regulator.ts';
import { builtInCapacitor, contact, seatHeight } from './socket.ts';
import { span, supplyHigh, supplyLow } from './supply.ts';
import { chargeStep, holdDroop, resistanceChange, seriesLossModel, settling } from './switch.ts';
import { amplifies, carries, fastEnough, stands } from './transistor.ts';

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
  'same-output': sameOutput,
  headroom,
  'input-limit': inputLimit,
  'difference-limit': differenceLimit,
  load,
  'output-capacitor': outputCapacitor,
  'output-esr': outputEsr,
  discharge,
  'least-load': leastLoad,
  reverse,
  forward,
  surge,
  drop,
  recovery,
  'reverse-leakage': reverseLeakage,
  stands,
  carries,
  amplifies,
  'fast-enough': fastEnough,
  'same-idss': sameIdss,
  'same-rows': sameRows,
  'same-pitch': samePitch,
  'seat-height': seatHeight,
  contact,
  'built-in-capacitor': builtInCapacitor,
};
