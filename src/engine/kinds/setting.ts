import {
  turnsToGo,
  finestStep,
  presetOf,
  type Preset,
  type TrimmerUse,
} from '../equations/trimmer.ts';
import { conditionOf, rangeOf } from '../findings/model.ts';
import type { KindCircumstances, KindPart } from './part.ts';

/** How the trimmer of a position is wired: as a divider, or with two terminals in use. */
export const useOf = ({ position }: Pick<KindCircumstances, 'position'>): TrimmerUse =>
  position.wiring === 'divider' ? 'divider' : 'rheostat';

/** The old setting carried over to a new part with a total (ohm) and so many turns. */
export const presetFor = (total: number, turns: number, circumstances: KindCircumstances): Preset =>
  presetOf({
    use: useOf(circumstances),
    reading: conditionOf(circumstances, 'old-setting').typ,
    oldTotal: conditionOf(circumstances, 'old-total').typ,
    total,
    turns,
  });

/** What is measured on the new trimmer itself, where it is; ohm and turns. */
export interface NewTrimmer {
  total?: number | undefined;
  turns?: number | undefined;
  /** What it reads now between the same two terminals, ohm. */
  now?: number | undefined;
}

/** The old setting carried over to one new trimmer. */
export interface CarriedSetting extends Omit<Preset, 'fromEnd' | 'perTurn'> {
  total: number;
  /** Whether it reaches so high. */
  reaches: boolean;
  turns?: number;
  /** Turns from the end in use. */
  fromEnd?: number;
  /** Ohm in a turn. */
  perTurn?: number;
  /** Turns to go from what it reads now; below zero towards the end in use. */
  toGo?: number;
  /** Finest step that a person can set, ohm. */
  step?: number;
}

/**
 * What a new trimmer has to read for the old setting, and how far that is, with what is measured on it
 * in place of its mark and of what is usual for its type.
 */
export const carriedSetting = (
  part: KindPart,
  circumstances: KindCircumstances,
  measured: NewTrimmer = {},
): CarriedSetting => {
  const total = measured.total ?? part.value ?? NaN;
  const turns = measured.turns ?? rangeOf(circumstances, part, 'turns')?.typ;
  const fineness = useOf(circumstances) === 'divider' ? 'adjust-divider' : 'adjust-rheostat';
  const share = rangeOf(circumstances, part, fineness)?.typ;
  const { set, ratio, newRatio, fromEnd, perTurn } = presetFor(total, turns ?? NaN, circumstances);
  return {
    set,
    ratio,
    newRatio,
    total,
    reaches: set <= total,
    ...(turns === undefined ? {} : { turns, fromEnd, perTurn }),
    ...(turns === undefined || measured.now === undefined
      ? {}
      : { toGo: turnsToGo(set, measured.now, perTurn) }),
    ...(share === undefined ? {} : { step: finestStep(share, total) }),
  };
};
