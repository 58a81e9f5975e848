import { shareOfBorne } from '../../equations/beyond-telling.ts';
import {
  atWiper,
  contactJump,
  greaterOf,
  type AtWiper,
  type WiperLoad,
} from '../../equations/trimmer.ts';
import { conditionOf, type Outcome } from '../../findings/model.ts';
import { formatQuantity, formatValue } from '../../quantities/index.ts';
import type { Range } from '../../quantities/range.ts';
import type { KindCircumstances, KindModel, KindPart } from '../part.ts';
import { presetFor } from '../setting.ts';
import { carried, rmsVoltage, fromProperties, spreadOf, valueOf } from './of-part.ts';

/** The circuit round a divider, for a total (ohm) that a part may have. */
const hungOn = (total: number, circumstances: KindCircumstances): WiperLoad => ({
  total,
  setting: Math.min(1, presetFor(total, 1, circumstances).newRatio),
  voltage: rmsVoltage(circumstances),
  load: conditionOf(circumstances, 'load').min,
  bias: conditionOf(circumstances, 'other-leakage').max,
});

/** What a number comes to for the smallest, the marked and the largest total; they need not rise. */
const overTotals = (part: KindPart, reckon: (total: number) => number): Range => {
  const { min, typ, max } = spreadOf(part);
  const [low, middle, high] = [reckon(min), reckon(typ), reckon(max)];
  return { min: Math.min(low, middle, high), typ: middle, max: Math.max(low, middle, high) };
};

const loadWords = ({ load, bias }: WiperLoad): string =>
  `${formatValue(load, 'ohm')}${bias > 0 ? ` and ${formatValue(bias, 'A')}` : ''} at the wiper`;

const largestOf = ({ track, current }: AtWiper): number => Math.max(track, current);

/** Current in the track and the wiper of a divider against what they carry. */
export const dividerCurrent: KindModel = fromProperties(
  ['full-power-to', 'no-power-from'],
  (_known, part, circumstances) =>
    overTotals(part, (total) =>
      shareOfBorne(
        largestOf(atWiper(hungOn(total, circumstances))),
        carried(part, total, circumstances),
      ),
    ),
  (_known, part, circumstances, value) => {
    const hung = hungOn(valueOf(part), circumstances);
    const { track, current } = atWiper(hung);
    return (
      `${formatValue(hung.voltage, 'V')} across ${formatValue(hung.total, 'ohm')} with ${loadWords(hung)}: ` +
      `${formatValue(track, 'A')} in the track, ${formatValue(current, 'A')} in the wiper; it carries ` +
      `${formatValue(carried(part, hung.total, circumstances), 'A')}: ${formatValue(value.typ, 'fraction')}`
    );
  },
);

/** How far load and bias current pull the voltage at the wiper from its setting. */
export const settingUnderLoad: KindModel = {
  measure: (part, circumstances): Outcome => ({
    status: 'known',
    value: overTotals(part, (total) => atWiper(hungOn(total, circumstances)).shift),
    properties: [],
  }),
  working: (part, circumstances, value) => {
    const hung = hungOn(valueOf(part), circumstances);
    const { ideal, out, source } = atWiper(hung);
    return (
      `set to ${formatValue(hung.setting, 'fraction')} it looks like ${formatValue(source, 'ohm')}; ` +
      `${loadWords(hung)} leave ${formatValue(out, 'V')} of ${formatValue(ideal, 'V')}: ` +
      formatQuantity(value, 'fraction')
    );
  },
};

/** The jump as a share of the voltage that stands there; of the resistances where none does. */
const jumpShare = (
  total: number,
  share: number,
  ohm: number,
  circumstances: KindCircumstances,
): number => {
  const hung = hungOn(total, circumstances);
  const at = atWiper(hung);
  const contact = greaterOf(share, ohm, total);
  return at.out > 0
    ? contactJump(at, hung, contact) / at.out
    : contact / (at.source + hung.load + contact);
};

/** How far the voltage at the wiper jumps as its contact varies, as a share of it. */
export const wiperJump: KindModel = fromProperties(
  ['contact-share', 'contact-ohm'],
  ({ 'contact-share': share, 'contact-ohm': ohm }, part, circumstances) => {
    const most = overTotals(part, (total) => jumpShare(total, share.max, ohm.max, circumstances));
    return { min: 0, typ: most.typ / 2, max: most.max };
  },
  ({ 'contact-share': share, 'contact-ohm': ohm }, part, circumstances) => {
    const hung = hungOn(valueOf(part), circumstances);
    const at = atWiper(hung);
    const contact = greaterOf(share.max, ohm.max, hung.total);
    return (
      `the contact varies by up to ${formatValue(contact, 'ohm')} in ${formatValue(at.source, 'ohm')} + ` +
      `${formatValue(hung.load, 'ohm')}: up to ${formatValue(contactJump(at, hung, contact), 'V')} of ` +
      `${formatValue(at.out, 'V')}, ${formatValue(jumpShare(hung.total, share.max, ohm.max, circumstances), 'fraction')}`
    );
  },
);
