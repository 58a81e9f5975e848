import type { Part } from '../assessment/parts.ts';
import { peakOfSine } from '../equations/sine.ts';
import { reactiveCurrent, timeToFall, voltageLeft } from '../equations/mains.ts';
import { formatQuantity, formatValue } from '../quantities/index.ts';
import { mapRising, timesPositive, type Range } from '../quantities/range.ts';
import { conditionOf, type Circumstances, type FindingModel } from './model.ts';
import { capacitanceAsBought } from './service-capacitance.ts';

/** Current that a person feels who touches what the part connects to the mains. */
export const touchCurrent: FindingModel = {
  measure: (part, circumstances) => {
    const hertz = conditionOf(circumstances, 'f-work').max;
    const voltage = conditionOf(circumstances, 'vac');
    const farad = capacitanceAsBought(part);
    return {
      status: 'known',
      value: {
        min: reactiveCurrent(hertz, farad, voltage.min).min,
        typ: reactiveCurrent(hertz, farad, voltage.typ).typ,
        max: reactiveCurrent(hertz, farad, voltage.max).max,
      },
      properties: [],
    };
  },
  working: (part, circumstances, value) =>
    `2π × ${formatValue(conditionOf(circumstances, 'f-work').max, 'Hz')} × ` +
    `${formatQuantity(capacitanceAsBought(part), 'F')} × ` +
    `${formatQuantity(conditionOf(circumstances, 'vac'), 'V')} = ${formatQuantity(value, 'A')}`,
};

/** Time constant of part and discharge resistor, s. */
const timeConstantOf = (part: Part, circumstances: Circumstances): Range =>
  timesPositive(conditionOf(circumstances, 'bleeder'), capacitanceAsBought(part));

/** Time in which the discharge resistor brings the part down to 37 %. */
export const discharge: FindingModel = {
  measure: (part, circumstances) => ({
    status: 'known',
    value: timeConstantOf(part, circumstances),
    properties: [],
  }),
  working: (part, circumstances, value) =>
    `${formatQuantity(conditionOf(circumstances, 'bleeder'), 'ohm')} × ` +
    `${formatQuantity(capacitanceAsBought(part), 'F')} = ${formatQuantity(value, 's')} to 37 %, ` +
    `${formatQuantity(
      mapRising(value, (tau) => timeToFall(10, 1, tau)),
      's',
    )} to a tenth`,
};

/** Voltage left on the pins of the plug. */
export const residualVoltage: FindingModel = {
  measure: (part, circumstances) => {
    const tau = timeConstantOf(part, circumstances);
    const peak = mapRising(conditionOf(circumstances, 'vac'), peakOfSine);
    const time = conditionOf(circumstances, 'discharge-time').typ;
    return {
      status: 'known',
      value: {
        min: voltageLeft(peak.min, time, tau.min),
        typ: voltageLeft(peak.typ, time, tau.typ),
        max: voltageLeft(peak.max, time, tau.max),
      },
      properties: [],
    };
  },
  working: (part, circumstances, value) => {
    const tau = timeConstantOf(part, circumstances);
    const peak = peakOfSine(conditionOf(circumstances, 'vac').max);
    const allowed = conditionOf(circumstances, 'residual-allowed').typ;
    const time = conditionOf(circumstances, 'discharge-time').typ;
    return (
      `${formatValue(peak, 'V')} × exp(−${formatValue(time, 's')} / ${formatValue(tau.max, 's')}) = ` +
      `${formatValue(value.max, 'V')} at worst; down to ${formatValue(allowed, 'V')} in ` +
      formatValue(timeToFall(peak, allowed, tau.max), 's')
    );
  },
};
