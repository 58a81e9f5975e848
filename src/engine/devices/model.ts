import type { DeviceRow, UseRow } from '../../schemas/devices.ts';
import type { Catalogue, PropertyId } from '../catalogue.ts';
import type { Outcome } from '../findings/model.ts';
import type { Range } from '../quantities/range.ts';
import { ruleOf, type RuleOfThumb } from '../rule-of-thumb.ts';
import { deviceKnowledge, restingOn, type DeviceKnowledge } from './known.ts';

/** What a finding about a device is worked out from. */
export interface DeviceCircumstances {
  catalogue: Catalogue;
  use: UseRow;
  /** Every number of the use, SI. */
  conditions: Readonly<Record<string, Range>>;
  /** The device that is being replaced. */
  original: DeviceRow;
}

/** How one kind of finding about a device is worked out. */
export interface DeviceModel {
  measure: (device: DeviceRow, circumstances: DeviceCircumstances) => Outcome;
  /** The numbers put into the equation, in words that a technician can check. */
  working: (device: DeviceRow, circumstances: DeviceCircumstances, value: Range) => string;
}

/**
 * The typical number of a condition, SI.
 * @throws when the use lacks it, which the data check rules out
 */
export const numberOf = ({ conditions, use }: DeviceCircumstances, id: string): number => {
  const range = conditions[id];
  if (range === undefined) throw new Error(`use ${use.id} has no condition ${id}`);
  return range.typ;
};

/** Numbers that a model reads. */
export interface Numbers {
  /** What is known of each property that it asked for, in that order. */
  facts: DeviceKnowledge[];
  /** The typical number of a condition, SI. */
  of: (condition: string) => number;
  /** A rule of thumb, SI. */
  rule: (id: RuleOfThumb) => number;
}

interface Spec {
  /** Properties without which nothing can be said. */
  properties: readonly PropertyId[];
  /** The condition that figures of these properties are read at. */
  at?: string;
  value: (numbers: Numbers) => Range;
  working: (numbers: Numbers, value: Range) => string;
}

/** What is known where a property is missing; only for the working of a part that is known. */
const nothing: DeviceKnowledge = {
  range: { min: 0, typ: 0, max: 0 },
  basis: 'memory',
  sources: [],
};

/** The range of one of the facts that a model asked for. */
export const factAt = ({ facts }: Numbers, index: number): Range => (facts[index] ?? nothing).range;

/** A finding that needs some properties and conditions and nothing else. */
export const byFigures = ({ properties, at, value, working }: Spec): DeviceModel => {
  const read = (
    device: DeviceRow,
    circumstances: DeviceCircumstances,
  ): { numbers: Numbers; missing: PropertyId[] } => {
    const point = at === undefined ? undefined : circumstances.conditions[at]?.typ;
    const found = properties.map((property) =>
      deviceKnowledge(circumstances.catalogue, device, property, point),
    );
    return {
      numbers: {
        facts: found.map((one) => one ?? nothing),
        of: (condition) => numberOf(circumstances, condition),
        rule: (id) => ruleOf(circumstances.catalogue, id),
      },
      missing: properties.filter((_, index) => found[index] === undefined),
    };
  };
  return {
    measure: (device, circumstances) => {
      const { numbers, missing } = read(device, circumstances);
      if (missing.length > 0) return { status: 'unknown', missing };
      return {
        status: 'known',
        value: value(numbers),
        properties: [...properties],
        ...restingOn(numbers.facts),
      };
    },
    working: (device, circumstances, result) =>
      working(read(device, circumstances).numbers, result),
  };
};
