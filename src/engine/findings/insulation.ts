import { leakageOfWhole, singleParts } from '../assessment/made.ts';
import type { Part } from '../assessment/parts.ts';
import { leakageOfPart } from '../equations/leakage.ts';
import { REFERENCE_CELSIUS } from '../equations/reference.ts';
import type { PropertyId } from '../catalogue.ts';
import { insulatorOf } from '../insulator-of.ts';
import type { Range } from '../quantities/range.ts';
import { conditionOr, rangeOf, type Circumstances } from './model.ts';

/** Leakage of a part in its circumstances, and what it was worked out from. */
export interface Leak {
  /** A */
  current: Range;
  /** Insulation resistance at the highest temperature, ohm. */
  insulation: Range;
  properties: PropertyId[];
}

/** Properties that a leakage may follow from. */
const INSULATING = ['insulation-rc', 'insulation-cap', 'insulation-halving', 'leakage-floor'];

const leakOfSingle = (
  part: Part,
  circumstances: Circumstances,
  voltage: number,
): Leak | undefined => {
  const known = (property: PropertyId): Range | undefined => rangeOf(circumstances, part, property);
  const insulator = insulatorOf(known, circumstances.catalogue);
  if (insulator === undefined) return undefined;
  const { current, insulation } = leakageOfPart(
    insulator,
    part.capacitance,
    voltage,
    conditionOr(circumstances, 't-max', REFERENCE_CELSIUS).max,
  );
  return {
    current,
    insulation,
    properties: INSULATING.filter((property) => known(property) !== undefined),
  };
};

/**
 * Leakage current of a part at a voltage (V) and the highest temperature of the position: of one
 * that is made of two, that of both together and of what lies across them.
 */
export const leakOf = (
  part: Part,
  circumstances: Circumstances,
  voltage: number,
): Leak | undefined => {
  const [first = part] = singleParts(part);
  const leak = leakOfSingle(first, circumstances, voltage);
  if (leak === undefined || part.made === undefined) return leak;
  const current = leakageOfWhole(
    part,
    voltage,
    (single, across) => leakOfSingle(single, circumstances, across)?.current,
  );
  return current && { ...leak, current };
};
