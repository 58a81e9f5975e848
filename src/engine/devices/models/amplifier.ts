import {
  bandwidthLeft,
  noiseWithSource,
  phaseWithLoad,
  shareOfLimit,
  slewLeft,
  steadyError,
} from '../../equations/amplifier.ts';
import { droop } from '../../equations/leakage.ts';
import { formatQuantity, formatValue } from '../../quantities/index.ts';
import { exactly, type Range } from '../../quantities/range.ts';
import type { DeviceRow } from '../../../schemas/devices.ts';
import { deviceKnowledge, restingOn, type DeviceKnowledge } from '../known.ts';
import {
  byFigures,
  factAt,
  numberOf,
  type DeviceCircumstances,
  type DeviceModel,
  type Numbers,
} from '../model.ts';
import { shareOf } from './rating.ts';
import { warmWords, whenWarm } from './warm.ts';

/** Something of the part that a condition must leave room for. */
const room = (property: string, condition: string, words: string): DeviceModel =>
  byFigures({
    properties: [property],
    value: (numbers) => factAt(numbers, 0),
    working: (numbers) =>
      `${formatQuantity(factAt(numbers, 0), 'V')} needed, ${formatValue(numbers.of(condition), 'V')} ${words}`,
  });

export const inputFloor = room('input-floor', 'room-below', 'to the negative supply');
export const inputCeiling = room('input-ceiling', 'room-above', 'to the positive supply');
export const swing = room('swing-lost', 'output-room', 'to the supplies');

export const controlCurrent = shareOf('control-current-max', 'control-current', 'A');

/** Whether the output turns over where the input comes below its floor. */
export const reversal = byFigures({
  properties: ['reverses', 'input-floor'],
  value: (numbers) => {
    const beyond = numbers.of('room-below') < factAt(numbers, 1).typ;
    return exactly(beyond ? factAt(numbers, 0).typ : 0);
  },
  working: (numbers, value) => {
    if (value.typ > 0) return 'the input comes where the output turns over';
    return factAt(numbers, 0).typ > 0
      ? 'the input does not come where the output turns over'
      : 'the output does not turn over';
  },
});

/** What bias current follows from: its figure at 25 degC (A), and whether the input is one of FETs. */
interface Bias {
  bias: Range;
  fet: Range;
}

/** Whether bias current is the leakage of a junction; that of bipolar inputs hardly moves with warmth. */
export const isLeakage = (fet: Range): boolean => fet.typ > 0;

/** Bias current (A) at the temperature of the circuit. */
const warmBias = (numbers: Numbers, { bias, fet }: Bias): Range =>
  isLeakage(fet) ? whenWarm(numbers, bias) : bias;

const biasWords = (numbers: Numbers, { bias, fet }: Bias): string =>
  isLeakage(fet) ? warmWords(numbers, bias) : formatQuantity(bias, 'A');

/** How far the bias current moves a held voltage. */
export const biasDroop = byFigures({
  properties: ['bias-current', 'fet-input'],
  value: (numbers) =>
    droop(
      Infinity,
      numbers.of('hold-capacitor'),
      warmBias(numbers, { bias: factAt(numbers, 0), fet: factAt(numbers, 1) }),
      exactly(0),
      numbers.of('hold-time'),
    ).total,
  working: (numbers) =>
    `${biasWords(numbers, { bias: factAt(numbers, 0), fet: factAt(numbers, 1) })}, for ${formatValue(numbers.of('hold-time'), 's')} on ${formatValue(numbers.of('hold-capacitor'), 'F')}`,
});

/** Offset and bias current as they show at the output. */
export const dcError = byFigures({
  properties: ['offset', 'bias-current', 'fet-input'],
  value: (numbers) =>
    steadyError(
      factAt(numbers, 0),
      warmBias(numbers, { bias: factAt(numbers, 1), fet: factAt(numbers, 2) }),
      numbers.of('source-resistance'),
      numbers.of('noise-gain'),
    ),
  working: (numbers) =>
    `${formatQuantity(factAt(numbers, 0), 'V')} and ${biasWords(numbers, { bias: factAt(numbers, 1), fet: factAt(numbers, 2) })} in ${formatValue(numbers.of('source-resistance'), 'ohm')}, times ${formatValue(numbers.of('noise-gain'), 'number')}`,
});

const gainWords = (numbers: Numbers): string =>
  `at a gain of ${formatValue(numbers.of('noise-gain'), 'number')}`;

/** Bandwidth at the gain, as a multiple of the signal. */
export const speed = byFigures({
  properties: ['bandwidth'],
  value: (numbers) =>
    bandwidthLeft(factAt(numbers, 0), numbers.of('noise-gain'), numbers.of('signal-frequency')),
  working: (numbers) =>
    `${formatQuantity(factAt(numbers, 0), 'Hz')} ${gainWords(numbers)} against ${formatValue(numbers.of('signal-frequency'), 'Hz')}`,
});

/** Slew rate as a multiple of what the largest sine asks. */
export const slewing = byFigures({
  properties: ['slew'],
  value: (numbers) =>
    slewLeft(factAt(numbers, 0), numbers.of('signal-frequency'), numbers.of('output-peak')),
  working: (numbers) =>
    `${formatQuantity(factAt(numbers, 0), 'V/s')} against a sine of ${formatValue(numbers.of('output-peak'), 'V')} peak at ${formatValue(numbers.of('signal-frequency'), 'Hz')}`,
});

const LEAST_GAIN = 'least-gain';
const COMPENSATED_GAIN = 'compensated-gain';

/**
 * The lowest gain at which a part is stable with a capacitor at its compensation pins, where a circuit
 * must have that already: it runs the old part at less gain than that bears without. With all facts
 * that tell so.
 */
const gainAsBuilt = (
  device: DeviceRow,
  { catalogue, original }: DeviceCircumstances,
  gain: number,
): { range: Range; facts: DeviceKnowledge[] } | undefined => {
  const [own, old] = [device, original].map((one) =>
    deviceKnowledge(catalogue, one, COMPENSATED_GAIN),
  );
  const bare = deviceKnowledge(catalogue, original, LEAST_GAIN);
  if (own === undefined || old === undefined || bare === undefined) return undefined;
  return bare.range.typ > gain ? { range: own.range, facts: [own, old, bare] } : undefined;
};

/** What a capacitor outside would do about a gain that is too low; nothing where none is due. */
const capacitorWords = (
  device: DeviceRow,
  circumstances: DeviceCircumstances,
  gain: number,
): string => {
  const { catalogue } = circumstances;
  const bare = deviceKnowledge(catalogue, device, LEAST_GAIN);
  const fitted = deviceKnowledge(catalogue, device, COMPENSATED_GAIN);
  const capacitor = deviceKnowledge(catalogue, device, 'compensation-capacitor');
  if (fitted === undefined || capacitor === undefined) return '';
  if (bare === undefined || bare.range.typ <= gain) return '';
  const farad = formatValue(capacitor.range.typ, 'F');
  const words = `; with ${farad} at its compensation pins from a gain of ${formatValue(fitted.range.typ, 'number')}`;
  return gainAsBuilt(device, circumstances, gain) === undefined
    ? `${words}: add that, and it is stable here`
    : `${words}, which the circuit of the old one must have: leave it in`;
};

const bareGain = byFigures({
  properties: [LEAST_GAIN],
  value: (numbers) => shareOfLimit(factAt(numbers, 0), numbers.of('noise-gain')),
  working: (numbers) =>
    `stable from a gain of ${formatValue(factAt(numbers, 0).typ, 'number')}, ${gainWords(numbers)}`,
});

/** Lowest stable gain as a share of the gain of the circuit. */
export const stableGain: DeviceModel = {
  measure: (device, circumstances) => {
    const bare = bareGain.measure(device, circumstances);
    const gain = numberOf(circumstances, 'noise-gain');
    const built = gainAsBuilt(device, circumstances, gain);
    if (bare.status !== 'known' || built === undefined) return bare;
    return {
      status: 'known',
      value: shareOfLimit(built.range, gain),
      properties: [COMPENSATED_GAIN],
      ...restingOn(built.facts),
    };
  },
  working: (device, circumstances, value) => {
    const gain = numberOf(circumstances, 'noise-gain');
    return (
      bareGain.working(device, circumstances, value) + capacitorWords(device, circumstances, gain)
    );
  },
};

/** Phase that the load leaves. */
export const loadPhase = byFigures({
  properties: ['bandwidth', 'output-resistance'],
  value: (numbers) =>
    phaseWithLoad(
      factAt(numbers, 0),
      factAt(numbers, 1),
      numbers.of('noise-gain'),
      numbers.of('load-capacitance'),
    ),
  working: (numbers) =>
    `${formatQuantity(factAt(numbers, 0), 'Hz')} ${gainWords(numbers)}, ${formatQuantity(factAt(numbers, 1), 'ohm')} into ${formatValue(numbers.of('load-capacitance'), 'F')}`,
});

/** Noise of amplifier and source together. */
export const noise = byFigures({
  properties: ['noise', 'bias-current'],
  value: (numbers) =>
    noiseWithSource(factAt(numbers, 0), factAt(numbers, 1), numbers.of('source-resistance')),
  working: (numbers) =>
    `${formatQuantity(factAt(numbers, 0), 'V')} of its own in a band of 1 Hz, ${formatQuantity(factAt(numbers, 1), 'A')} and the noise of ${formatValue(numbers.of('source-resistance'), 'ohm')}`,
});

/** What the body draws. */
export const supplyDraw = byFigures({
  properties: ['supply-current'],
  value: (numbers) => factAt(numbers, 0),
  working: (numbers) => `${formatQuantity(factAt(numbers, 0), 'A')} without load`,
});

const NEEDS = 'needs-capacitor';

/** Whether a part needs a capacitor that the old one did not have. */
export const ownCapacitor: DeviceModel = {
  measure: (device, { catalogue, original }) => {
    const [own, old] = [device, original].map((one) => deviceKnowledge(catalogue, one, NEEDS));
    if (own === undefined || old === undefined) return { status: 'unknown', missing: [NEEDS] };
    const missing = own.range.typ > 0 && old.range.typ === 0;
    return {
      status: 'known',
      value: exactly(missing ? 1 : 0),
      properties: [NEEDS],
      ...restingOn([own, old]),
    };
  },
  working: (_device, _circumstances, value) =>
    value.typ > 0
      ? 'it needs a capacitor outside, which the circuit does not have'
      : 'nothing is missing',
};
