import type { DeviceRow } from '../../../schemas/devices.ts';
import { adjustedOutput } from '../../equations/regulator.ts';
import { formatQuantity, formatValue } from '../../quantities/index.ts';
import { exactly, mapFalling, overPositive, type Range } from '../../quantities/range.ts';
import { deviceKnowledge, restingOn } from '../known.ts';
import {
  byFigures,
  factAt,
  numberOf,
  type DeviceCircumstances,
  type DeviceModel,
} from '../model.ts';
import { figureOf, shareOf } from './rating.ts';

export const headroom = shareOf('dropout', 'headroom-low', 'V', 'load-current');
export const differenceLimit = shareOf('input-max', 'headroom-high', 'V');
export const load = shareOf('load-max', 'load-current', 'A');
export const outputCapacitor = shareOf('output-capacitor-min', 'output-capacitor', 'F');
export const outputEsr = figureOf('output-esr-min', 'ohm');
export const outputEsrMost = shareOf('output-esr-max', 'output-esr', 'ohm');
export const discharge = shareOf('discharge-safe', 'output-capacitor', 'F');
export const leastLoad = figureOf('load-min', 'A');

/** Highest input, which is output and difference, as a share of what the part takes. */
export const inputLimit = byFigures({
  properties: ['input-max', 'output-voltage'],
  value: (numbers) => {
    const input = factAt(numbers, 1).typ + numbers.of('headroom-high');
    return mapFalling(factAt(numbers, 0), (most) => input / most);
  },
  working: (numbers) =>
    `${formatValue(factAt(numbers, 1).typ, 'V')} and ${formatValue(numbers.of('headroom-high'), 'V')} above it, of ${formatQuantity(factAt(numbers, 0), 'V')}`,
});

interface SetOutput {
  output: Range;
  reference: Range;
}

/** What a part gives with the two resistors of the circuit. */
const setBy = (device: DeviceRow, circumstances: DeviceCircumstances): SetOutput | undefined => {
  const [reference, adjust] = (['reference', 'adjust-current'] as const).map(
    (property) => deviceKnowledge(circumstances.catalogue, device, property)?.range,
  );
  if (reference === undefined || adjust === undefined) return undefined;
  const lower = numberOf(circumstances, 'divider-lower');
  const upper = numberOf(circumstances, 'divider-upper');
  const at = (end: keyof Range): number =>
    adjustedOutput(reference[end], lower, upper, adjust[end]);
  return { output: { min: at('min'), typ: at('typ'), max: at('max') }, reference };
};

/** Output by the resistors of the circuit against the old part's. */
export const setOutput: DeviceModel = {
  measure: (device, circumstances) => {
    const { catalogue, original } = circumstances;
    const [own, old] = [device, original].map((one) => setBy(one, circumstances));
    if (own === undefined || old === undefined)
      return { status: 'unknown', missing: ['reference', 'adjust-current'] };
    const known = [device, original].flatMap((one) =>
      ['reference', 'adjust-current'].flatMap((property) => {
        const fact = deviceKnowledge(catalogue, one, property);
        return fact === undefined ? [] : [fact];
      }),
    );
    return {
      status: 'known',
      value: overPositive(own.output, exactly(old.output.typ)),
      properties: ['reference', 'adjust-current'],
      ...restingOn(known),
    };
  },
  working: (device, circumstances) => {
    const [own, old] = [device, circumstances.original].map((one) => setBy(one, circumstances));
    const said = (set: SetOutput | undefined): string =>
      set === undefined ? 'an unknown voltage' : formatQuantity(set.output, 'V');
    return (
      `${said(own)} instead of ${said(old)} with ${formatValue(numberOf(circumstances, 'divider-lower'), 'ohm')} ` +
      `and ${formatValue(numberOf(circumstances, 'divider-upper'), 'ohm')}`
    );
  },
};
