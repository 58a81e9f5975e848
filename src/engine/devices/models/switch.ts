import { droop } from '../../equations/leakage.ts';
import { holdStep, settlingTime } from '../../equations/sampling.ts';
import { gainChange, seriesLoss } from '../../equations/switch.ts';
import { formatQuantity, formatValue } from '../../quantities/index.ts';
import { exactly, scale } from '../../quantities/range.ts';
import type { DeviceRow } from '../../../schemas/devices.ts';
import { deviceKnowledge, type DeviceKnowledge } from '../known.ts';
import {
  byFigures,
  factAt,
  numberOf,
  type DeviceCircumstances,
  type DeviceModel,
} from '../model.ts';
import { warmWords, whenWarm } from './warm.ts';

const NONE = exactly(0);

/** Share of the signal that stays in the closed switch. */
export const seriesLossModel = byFigures({
  properties: ['on-resistance'],
  at: 'supply',
  value: (numbers) => seriesLoss(factAt(numbers, 0), numbers.of('load')),
  working: (numbers) =>
    `${formatQuantity(factAt(numbers, 0), 'ohm')} before ${formatValue(numbers.of('load'), 'ohm')}`,
});

/** How much the gain moves over the span of the signal. */
export const resistanceChange = byFigures({
  properties: ['on-resistance', 'on-resistance-at-rail'],
  at: 'supply',
  value: (numbers) => gainChange(factAt(numbers, 0), factAt(numbers, 1), numbers.of('load')),
  working: (numbers) =>
    `${formatQuantity(factAt(numbers, 0), 'ohm')} at its highest, ${formatQuantity(factAt(numbers, 1), 'ohm')} at the rail, before ${formatValue(numbers.of('load'), 'ohm')}`,
});

/** Time to charge the hold capacitor through the switch. */
export const settling = byFigures({
  properties: ['on-resistance'],
  at: 'supply',
  value: (numbers) =>
    settlingTime(
      scale(factAt(numbers, 0), numbers.of('hold-capacitor')),
      numbers.of('signal-span'),
      numbers.of('hold-error'),
    ),
  working: (numbers) =>
    `${formatQuantity(factAt(numbers, 0), 'ohm')} with ${formatValue(numbers.of('hold-capacitor'), 'F')}, from ${formatValue(numbers.of('signal-span'), 'V')} to within ${formatValue(numbers.of('hold-error'), 'V')}`,
});

/** How far leakage of the open switch moves the held voltage. */
export const holdDroop = byFigures({
  properties: ['off-leakage'],
  value: (numbers) =>
    droop(
      Infinity,
      numbers.of('hold-capacitor'),
      whenWarm(numbers, factAt(numbers, 0)),
      NONE,
      numbers.of('hold-time'),
    ).total,
  working: (numbers) =>
    `${warmWords(numbers, factAt(numbers, 0))}, for ${formatValue(numbers.of('hold-time'), 's')} on ${formatValue(numbers.of('hold-capacitor'), 'F')}`,
});

/** Charge (C) that opening the switch injects, by what it couples where no charge is given. */
export const injectedCharge = (
  device: DeviceRow,
  circumstances: DeviceCircumstances,
): (DeviceKnowledge & { property: string }) | undefined => {
  const { catalogue } = circumstances;
  const charge = deviceKnowledge(catalogue, device, 'charge-injection');
  if (charge !== undefined) return { ...charge, property: 'charge-injection' };
  const coupling = deviceKnowledge(catalogue, device, 'feedthrough-capacitance');
  return (
    coupling && {
      ...coupling,
      range: scale(coupling.range, numberOf(circumstances, 'supply')),
      property: 'feedthrough-capacitance',
    }
  );
};

/** The step that opening the switch makes on the hold capacitor. */
export const chargeStep: DeviceModel = {
  measure: (device, circumstances) => {
    const known = injectedCharge(device, circumstances);
    if (known === undefined) return { status: 'unknown', missing: ['charge-injection'] };
    const { range, property, sources, basis } = known;
    const farad = exactly(numberOf(circumstances, 'hold-capacitor'));
    return {
      status: 'known',
      value: {
        min: holdStep(range.min, farad).min,
        typ: holdStep(range.typ, farad).typ,
        max: holdStep(range.max, farad).max,
      },
      properties: [property],
      sources,
      bases: [basis],
    };
  },
  working: (device, circumstances) => {
    const charge = deviceKnowledge(circumstances.catalogue, device, 'charge-injection');
    const coupling = deviceKnowledge(circumstances.catalogue, device, 'feedthrough-capacitance');
    const onto = `on ${formatValue(numberOf(circumstances, 'hold-capacitor'), 'F')}`;
    if (charge !== undefined) return `${formatQuantity(charge.range, 'C')} ${onto}`;
    return `${formatQuantity(coupling?.range ?? NONE, 'F')} times ${formatValue(numberOf(circumstances, 'supply'), 'V')} of control ${onto}`;
  },
};
