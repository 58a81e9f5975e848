import { shareOfBorne } from '../../equations/beyond-telling.ts';
import { driftBySlope } from '../../equations/drift.ts';
import { greaterOf } from '../../equations/trimmer.ts';
import { conditionOf, plain } from '../../findings/model.ts';
import { formatQuantity, formatValue } from '../../quantities/index.ts';
import { mapFalling, type Range } from '../../quantities/range.ts';
import type { KindCircumstances, KindModel, KindPart } from '../part.ts';
import { presetFor, useOf } from '../setting.ts';
import { carried, fromProperties, spreadOf, valueOf, warmingSpan } from './of-part.ts';

/** So many turns, as printed: a single one where that is what it has. */
const turnsSaid = (turns: number): string =>
  `${formatValue(turns, 'number')} ${turns === 1 ? 'turn' : 'turns'}`;

/** What the new part has to read for the old setting, for every total that it may have (ohm). */
const settingOf = (part: KindPart, circumstances: KindCircumstances): Range => {
  const { min, typ, max } = spreadOf(part);
  const set = (total: number): number => presetFor(total, 1, circumstances).set;
  return { min: set(min), typ: set(typ), max: set(max) };
};

/** One way of working out for a rheostat, another for a divider. */
const byWiring = (rheostat: KindModel, divider: KindModel): KindModel => {
  const modelFor = (circumstances: KindCircumstances): KindModel =>
    useOf(circumstances) === 'divider' ? divider : rheostat;
  return {
    measure: (part, circumstances) => modelFor(circumstances).measure(part, circumstances),
    working: (part, circumstances, value) =>
      modelFor(circumstances).working(part, circumstances, value),
  };
};

const transfer = (property: 'adjust-rheostat' | 'adjust-divider'): KindModel =>
  fromProperties(
    [property, 'turns'],
    ({ [property]: fine }, part, circumstances) => {
      const { min, typ, max } = spreadOf(part);
      const share = (step: number, total: number): number =>
        shareOfBorne(step, presetFor(total, 1, circumstances).newRatio);
      return { min: share(fine.min, min), typ: share(fine.typ, typ), max: share(fine.max, max) };
    },
    ({ [property]: fine, turns }, part, circumstances, value) => {
      const old = `old one reads ${formatValue(conditionOf(circumstances, 'old-setting').typ, 'ohm')} of ${formatValue(conditionOf(circumstances, 'old-total').typ, 'ohm')}`;
      const preset = presetFor(valueOf(part), turns.typ, circumstances);
      const way =
        useOf(circumstances) === 'divider'
          ? `set the same ratio, ${formatValue(preset.ratio, 'fraction')} of its own total (${formatQuantity(settingOf(part, circumstances), 'ohm')})`
          : `set the same ${formatValue(preset.set, 'ohm')} between the same two terminals`;
      return (
        `${old}; ${way}: ${formatValue(preset.fromEnd, 'number')} of ${turnsSaid(turns.typ)} from that end, ` +
        `${formatValue(preset.perTurn, 'ohm')} a turn; it can be set to ${formatValue(fine.typ, 'fraction')} of its total, ` +
        `${formatValue(value.typ, 'fraction')} of the setting`
      );
    },
  );

/** How exactly the setting of the old part can be carried over. */
export const settingTransfer = byWiring(transfer('adjust-rheostat'), transfer('adjust-divider'));

/** The setting as a share of the total that the new part has at least. */
export const settingReach: KindModel = {
  measure: (part, circumstances) => {
    const { min, typ, max } = spreadOf(part);
    const share = (total: number): number => presetFor(total, 1, circumstances).newRatio;
    return {
      status: 'known',
      value: { min: share(max), typ: share(typ), max: share(min) },
      properties: [],
    };
  },
  working: (part, circumstances, value) =>
    `${formatQuantity(settingOf(part, circumstances), 'ohm')} of ${formatQuantity(spreadOf(part), 'ohm')}: ` +
    formatQuantity(value, 'fraction'),
};

/** Resistance that is left at the end, as a share of the setting. */
export const endResistance: KindModel = fromProperties(
  ['end-share', 'end-ohm'],
  ({ 'end-share': share, 'end-ohm': ohm }, part, circumstances) => {
    const set = settingOf(part, circumstances);
    const total = spreadOf(part);
    return {
      min: 0,
      typ: shareOfBorne(greaterOf(share.typ, ohm.typ, total.typ), set.typ),
      max: shareOfBorne(greaterOf(share.max, ohm.max, total.max), set.min),
    };
  },
  ({ 'end-share': share, 'end-ohm': ohm }, part, circumstances) =>
    `at the stop up to ${formatValue(greaterOf(share.typ, ohm.typ, valueOf(part)), 'ohm')} are left ` +
    `(${formatValue(share.typ, 'fraction')} or ${formatValue(ohm.typ, 'ohm')}, whichever is greater); ` +
    `${formatValue(settingOf(part, circumstances).typ, 'ohm')} are wanted`,
);

const driftOf = (property: 'resistance-tc' | 'ratio-tc', words: string): KindModel =>
  fromProperties(
    [property],
    ({ [property]: slope }, _part, circumstances) =>
      driftBySlope(slope, warmingSpan(circumstances)),
    ({ [property]: slope }, _part, circumstances, value) =>
      `${words}: ${formatQuantity(slope, '1/K')} over ${formatValue(warmingSpan(circumstances), 'K')}, ` +
      formatQuantity(value, 'fraction'),
  );

/** Change of the setting from the coldest to the warmest. */
export const settingDrift = byWiring(
  driftOf('resistance-tc', 'two terminals, so the whole slope counts'),
  driftOf('ratio-tc', 'three terminals, so only the slope of the ratio counts'),
);

/** Shift of the setting by shaking and knocks. */
export const settingShift: KindModel = fromProperties(
  ['setting-stability'],
  ({ 'setting-stability': shift }) => shift,
  (_known, _part, _circumstances, value) =>
    `the wiper moves by ${formatQuantity(value, 'fraction')} when shaken`,
);

/** Current through the wiper against what the whole element allows at any setting. */
export const wiperLoad: KindModel = fromProperties(
  ['full-power-to', 'no-power-from'],
  (_known, part, circumstances) => {
    const ampere = conditionOf(circumstances, 'wiper-current').max;
    const { min, typ, max } = spreadOf(part);
    const share = (ohm: number): number => shareOfBorne(ampere, carried(part, ohm, circumstances));
    return { min: share(min), typ: share(typ), max: share(max) };
  },
  (_known, part, circumstances, value) => {
    const ampere = conditionOf(circumstances, 'wiper-current').max;
    return (
      `${formatValue(ampere, 'A')} of ${formatValue(carried(part, valueOf(part), circumstances), 'A')}, which ` +
      `${formatValue(part.rating ?? NaN, 'W')} in the whole ${formatValue(valueOf(part), 'ohm')} allow at any setting when warm: ` +
      formatValue(value.typ, 'fraction')
    );
  },
);

/** Changes at the wiper as it moves, as a share of the setting. */
export const wiperNoise: KindModel = fromProperties(
  ['contact-share', 'contact-ohm'],
  ({ 'contact-share': share, 'contact-ohm': ohm }, part, circumstances) => {
    const set = settingOf(part, circumstances);
    const most = shareOfBorne(greaterOf(share.max, ohm.max, valueOf(part)), set.typ);
    return { min: 0, typ: most / 2, max: most };
  },
  ({ 'contact-share': share, 'contact-ohm': ohm }, part, circumstances, value) =>
    `up to ${formatValue(greaterOf(share.max, ohm.max, valueOf(part)), 'ohm')} at the wiper of ` +
    `${formatValue(settingOf(part, circumstances).typ, 'ohm')}: up to ${formatValue(value.max, 'fraction')}`,
);

const pitchesOf = (type: string, { catalogue }: KindCircumstances): number[] => [
  ...new Set(
    catalogue.kindOffers.filter((offer) => offer.type === type).flatMap((offer) => offer.pitch_mm),
  ),
];

/** Whether the pins lie as those of the old part do. */
export const pinPattern: KindModel = {
  measure: ({ type }, circumstances) => {
    const old = pitchesOf(circumstances.original.type, circumstances);
    const own = pitchesOf(type, circumstances);
    if (old.length === 0 || own.length === 0) return { status: 'unknown', missing: ['lead-pitch'] };
    return plain(own.some((pitch) => old.includes(pitch)) ? 0 : 1);
  },
  working: ({ type }, circumstances, value) => {
    const said = (id: string): string => {
      const pitches = pitchesOf(id, circumstances);
      return pitches.length === 0 ? 'at an unknown distance' : `${pitches.join(' or ')} mm apart`;
    };
    return value.typ > 0
      ? `pins ${said(type)}, those of the old one ${said(circumstances.original.type)}: bend or wire it, and check which pin is the wiper`
      : `pins ${said(type)} as those of the old one: check which pin is the wiper`;
  },
};

/** Turns of the shaft over the years as a share of those that the track lasts. */
export const rotationShare: KindModel = fromProperties(
  ['rotation-life'],
  ({ 'rotation-life': life }, _part, circumstances) => {
    const turns = conditionOf(circumstances, 'rotations').max;
    return mapFalling(life, (lasts) => turns / lasts);
  },
  ({ 'rotation-life': life }, _part, circumstances, value) =>
    `${formatValue(conditionOf(circumstances, 'rotations').max, 'number')} of ${formatQuantity(life, 'number')} turns: ` +
    formatQuantity(value, 'fraction'),
);
