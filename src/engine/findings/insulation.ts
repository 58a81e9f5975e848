import { leakageOfWhole, singleParts } from '../assessment/made.ts';
import type { Part } from '../assessment/parts.ts';
import { leakageOfPart } from '../equations/leakage.ts';
import { REFERENCE_CELSIUS } from '../equations/reference.ts';
import type { PropertyId } from '../catalogue.ts';
import { exactly, type Range } from '../quantities/range.ts';
import { ruleOf } from '../rule-of-thumb.ts';
import { conditionOr, rangeOf, type Circumstances } from './model.ts';

/** Leakage of a part in its circumstances, and what it was worked out from. */
export interface Leak {
  /** A */
  current: Range;
  /** Insulation resistance at the highest temperature, ohm. */
  insulation: Range;
  properties: PropertyId[];
}

const leakOfSingle = (
  part: Part,
  circumstances: Circumstances,
  voltage: number,
): Leak | undefined => {
  const cold = rangeOf(circumstances, part, 'insulation-rc');
  if (cold === undefined) return undefined;
  const halving = rangeOf(circumstances, part, 'insulation-halving');
  const floor = rangeOf(circumstances, part, 'leakage-floor');
  const cap = rangeOf(circumstances, part, 'insulation-cap');
  const { current, insulation } = leakageOfPart(
    {
      constant: cold,
      most: cap,
      halving: halving ?? exactly(ruleOf(circumstances.catalogue, 'halving')),
      floor: floor?.max,
    },
    part.capacitance,
    voltage,
    conditionOr(circumstances, 't-max', REFERENCE_CELSIUS).max,
  );
  return {
    current,
    insulation,
    properties: [
      'insulation-rc',
      ...(cap === undefined ? [] : ['insulation-cap']),
      ...(halving === undefined ? [] : ['insulation-halving']),
      ...(floor === undefined ? [] : ['leakage-floor']),
    ],
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
