import { addedResistance, inThePath, singleParts } from '../assessment/made.ts';
import type { Part } from '../assessment/parts.ts';
import type { Basis, Catalogue, FindingId, PropertyId, SourceId } from '../catalogue.ts';
import { lossResistance } from '../equations/loss.ts';
import { formatValue } from '../quantities/index.ts';
import { add, exactly, type Range } from '../quantities/range.ts';
import { esrOf, RESISTANCE, TABLE_FREQUENCY } from '../sizes/esr-of.ts';
import { nearestLoss } from './loss.ts';
import type { Circumstances } from './model.ts';
import { capacitanceAsBought } from './service-capacitance.ts';

/** Findings that ask for a series resistance: what a slice of the catalogue needs its rows for. */
export const FINDINGS_OF_RESISTANCE: readonly FindingId[] = [
  'esr-window',
  'impedance',
  'inrush',
  'own-surge',
  'ripple-heating',
  'ripple-current',
  'life',
  'acquisition',
  'level-shift',
];

/** Series resistance (ohm) of a part at a frequency, and what it rests on. */
export interface PartResistance {
  range: Range;
  /** Rows for its value and voltage; the span of its type; the loss of its type at its value. */
  by: 'value' | 'type' | 'loss';
  properties: PropertyId[];
  sources: SourceId[];
  bases: Basis[];
}

/** By the published loss nearest to the frequency, taken as steady. */
const byLoss = (
  part: Part,
  circumstances: Pick<Circumstances, 'catalogue'>,
  hertz: number,
): PartResistance | undefined => {
  const loss = nearestLoss(part, circumstances, hertz);
  if (loss === undefined) return undefined;
  const farad = capacitanceAsBought(part);
  return {
    range: {
      min: lossResistance(loss.range.min, hertz, farad.max),
      typ: lossResistance(loss.range.typ, hertz, farad.typ),
      max: lossResistance(loss.range.max, hertz, farad.min),
    },
    by: 'loss',
    properties: [loss.property],
    sources: [],
    bases: [],
  };
};

const ofSingle = (
  part: Part,
  circumstances: Pick<Circumstances, 'catalogue'>,
  hertz: number,
): PartResistance | undefined => {
  const tabulated = esrOf(circumstances.catalogue, part, hertz);
  if (tabulated === undefined) return byLoss(part, circumstances, hertz);
  const { range, by, sources, bases } = tabulated;
  return {
    range,
    by,
    properties: by === 'type' ? [RESISTANCE] : [],
    sources: [...sources],
    bases: [...bases],
  };
};

const WEAKEST_FIRST = ['loss', 'type', 'value'] as const;

const findResistance = (
  part: Part,
  circumstances: Pick<Circumstances, 'catalogue'>,
  hertz: number,
): PartResistance | undefined => {
  if (part.made === undefined) return ofSingle(part, circumstances, hertz);
  const each = new Map(
    singleParts(part).map((single) => [single, ofSingle(single, circumstances, hertz)]),
  );
  const path = inThePath(part, (single) => each.get(single)?.range);
  if (path === undefined) return undefined;
  const known = [...each.values()].filter((one) => one !== undefined);
  return {
    range: add(path, exactly(addedResistance(part))),
    by: WEAKEST_FIRST.find((by) => known.some((one) => one.by === by)) ?? 'value',
    properties: [...new Set(known.flatMap(({ properties }) => properties))],
    sources: [...new Set(known.flatMap(({ sources }) => sources))],
    bases: known.flatMap(({ bases }) => bases),
  };
};

/** What has been found, by frequency: several findings ask for the same of each part. */
const found = new WeakMap<Catalogue, WeakMap<Part, Map<number, PartResistance | undefined>>>();

const foundFor = (catalogue: Catalogue, part: Part): Map<number, PartResistance | undefined> => {
  const all = found.get(catalogue) ?? new WeakMap<Part, Map<number, PartResistance | undefined>>();
  found.set(catalogue, all);
  const own = all.get(part) ?? new Map<number, PartResistance | undefined>();
  all.set(part, own);
  return own;
};

/**
 * Series resistance of a part at a frequency (Hz), the one that every finding uses: by its value and
 * voltage where rows cover it; near 100 kHz that of its type; else by the loss of its type. Of a
 * part that is made of two, or of one and a resistor, that of the whole. Nothing where nothing is
 * known.
 */
export const resistanceOf = (
  part: Part,
  circumstances: Pick<Circumstances, 'catalogue'>,
  hertz: number,
): PartResistance | undefined => {
  const own = foundFor(circumstances.catalogue, part);
  const known = own.get(hertz);
  if (known !== undefined || own.has(hertz)) return known;
  const fresh = findResistance(part, circumstances, hertz);
  own.set(hertz, fresh);
  return fresh;
};

/** The same near 100 kHz, where regulators, bypasses and anything sudden meet it. */
export const highFrequencyResistance = (
  part: Part,
  circumstances: Pick<Circumstances, 'catalogue'>,
): PartResistance | undefined => resistanceOf(part, circumstances, TABLE_FREQUENCY);

/** Where a series resistance is from, for a working. */
export const originOf = ({ by }: PartResistance, hertz: number): string => {
  switch (by) {
    case 'value':
      return 'for its value and voltage';
    case 'type':
      return 'as of its type, whatever the value';
    case 'loss':
      return `by the loss of its type at ${formatValue(hertz, 'Hz')}`;
  }
};
