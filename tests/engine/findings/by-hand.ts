import { expect } from 'vitest';
import type { Made, OfferedPart } from '../../../src/engine/assessment/parts.ts';
import { findingModels } from '../../../src/engine/findings/index.ts';
import type { Circumstances, FindingModel, Outcome } from '../../../src/engine/findings/model.ts';
import type { Range } from '../../../src/engine/quantities/range.ts';
import { circumstancesOf } from '../assessment/setting.ts';
import { PROBE, probeIn, type Spoiling } from './probe.ts';

/** Findings of invented parts in invented circuits, held to figures that were worked out by hand. */

/** What stands round the probe where a case says nothing else: a place without pitch or mains. */
export const base = circumstancesOf({
  original: { type: 'pet-metallized' },
  position: 'interstage-coupling',
});

export const span = (min: number, typ: number, max: number): Range => ({ min, typ, max });

/** One of the parts that a stand-in is made of. */
export const single: OfferedPart = {
  type: PROBE,
  capacitance: 1e-3,
  tolerance: { minus: 0, plus: 0 },
  ratedVoltage: 20,
  voltageKind: 'dc',
  style: 'radial can',
  pitch: [5],
  series: 'E6',
};

/** A stand-in that is made of parts; of the one above and something more, unless said. */
export const made = (
  more: Omit<Made, 'why' | 'parts'>,
  parts: OfferedPart[] = [single],
): NonNullable<Spoiling['part']> => ({ ...single, made: { parts, why: '', ...more } });

export const modelOf = (id: string): FindingModel => {
  const model = findingModels[id];
  if (model === undefined) throw new Error(`no finding ${id}`);
  return model;
};

/** Every number of a working in its order, with its unit, so that sentences may be put otherwise. */
export const figuresIn = (working: string): string =>
  (
    working.match(
      /[−+±]?\d(?:[\d.]|\u00A0(?=\d{3}))*(?:(?:–| to )−?[\d.]+)?(?:\u00A0[^\s,;:()\d]+|°)?(?![\dπ])/gu,
    ) ?? []
  )
    .join(', ')
    .replaceAll('\u00A0', ' ');

export interface Tried {
  outcome: Outcome;
  /** With plain spaces between numbers and units. */
  working: string;
  figures: string;
  circumstances: Circumstances;
}

/** One finding for the probe, spoilt as a case says. */
export const tryOut = (id: string, spoiling: Spoiling): Tried => {
  const model = modelOf(id);
  const { part, circumstances } = probeIn(base, spoiling);
  const outcome = model.measure(part, circumstances);
  const value = outcome.status === 'known' ? outcome.value : span(NaN, NaN, NaN);
  const working = model.working(part, circumstances, value);
  return {
    outcome,
    working: working.replaceAll('\u00A0', ' '),
    figures: figuresIn(working),
    circumstances,
  };
};

/** A case of a table: its title tells the arithmetic. */
export interface ByHand {
  finding: string;
  spoiling: Spoiling;
  value: [min: number, typ: number, max: number];
  /** The numbers of the working; left out where it has none that matter. */
  figures?: string;
  /** Words that the working must have besides. */
  words?: string;
  /** What the finding rests on: properties, and sources and bases besides theirs. */
  properties: string[];
  sources?: string[];
  bases?: string[];
}

const near = (found: number, wanted: number): void => {
  expect(Math.abs(found - wanted), `${String(found)} for ${String(wanted)}`).toBeLessThanOrEqual(
    Math.abs(wanted) * 1e-3,
  );
};

/** Holds a finding to a case, its numbers within a thousandth. */
export const holdTo = (wanted: ByHand): void => {
  const { outcome, working, figures } = tryOut(wanted.finding, wanted.spoiling);
  if (outcome.status === 'unknown') throw new Error(`unknown: ${outcome.missing.join()}`);
  const { value, properties, sources, bases } = outcome;
  [value.min, value.typ, value.max].forEach((each, index) => {
    near(each, wanted.value[index] ?? NaN);
  });
  if (wanted.figures !== undefined) expect(figures).toBe(wanted.figures);
  expect(working).toContain(wanted.words ?? '');
  expect(working).not.toMatch(/NaN|undefined/u);
  expect(properties).toEqual(wanted.properties);
  expect(sources ?? []).toEqual(wanted.sources ?? []);
  expect([...new Set(bases)]).toEqual(wanted.bases ?? []);
};

/** Holds a finding to not being known for want of some properties. */
export const holdUnknown = (id: string, spoiling: Spoiling, missing: string[]): void => {
  expect(tryOut(id, spoiling).outcome).toEqual({ status: 'unknown', missing });
};
