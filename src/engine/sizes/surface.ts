import type { CoreRiseRow } from '../../schemas/sizes.ts';
import type { Catalogue, TypeId } from '../catalogue.ts';
import { boxSurface, canDiameter, canSurface, cylinderSurface } from '../equations/surface.ts';
import { mapRising, type Range } from '../quantities/range.ts';
import { MILLIMETRE } from '../quantities/si.ts';
import { ruleOf, type WithRules } from '../rule-of-thumb.ts';
import type { Body } from './body.ts';
import { TABLE_ROUNDING } from './interpolate.ts';

/** Surface (m2) that cools a body of three sides (m), by its shape; the side on the board counts not. */
const surfaceOf = ({ shape }: Body, length: number, width: number, height: number): number => {
  switch (shape) {
    case 'can':
      return cylinderSurface(length, height, 1);
    case 'tube':
      return cylinderSurface(width, length, 2);
    case 'disc':
      return cylinderSurface(length, width, 2);
    default:
      return boxSurface(length, width, height);
  }
};

/** Diameter (m) of a round body; of one whose volume alone is known, that of a usual can; else none. */
const diameterOf = (
  rules: WithRules,
  { shape, length, width, volume }: Body,
): number | undefined => {
  switch (shape) {
    case 'can':
      return length.typ;
    case 'tube':
      return width.typ;
    case undefined:
      return canDiameter(volume.typ, ruleOf(rules, 'can-shape'));
    default:
      return undefined;
  }
};

/** The row that says how much more the core of a can of a type and diameter (m) warms than its surface. */
export const coreRiseOfCan = (
  { coreRises }: Pick<Catalogue, 'coreRises'>,
  type: TypeId,
  diameter: number,
): CoreRiseRow | undefined => {
  const rising = coreRises
    .filter(({ types }) => types.includes(type))
    .toSorted((a, b) => a.diameter_mm - b.diameter_mm);
  const wide = diameter / MILLIMETRE;
  return (
    rising.find(({ diameter_mm: most }) => wide <= most * (1 + TABLE_ROUNDING)) ?? rising.at(-1)
  );
};

/** The same of a body; nothing for one that is not round. */
export const coreRiseOf = (
  catalogue: Catalogue,
  type: TypeId,
  body: Body,
): CoreRiseRow | undefined => {
  const diameter = diameterOf(catalogue, body);
  return diameter === undefined ? undefined : coreRiseOfCan(catalogue, type, diameter);
};

/**
 * Surface (m2) that cools a part, from its listed sides; of a body of which only the volume is
 * known, that of a can of the usual shape.
 */
export const coolingSurface = (rules: WithRules, body: Body): Range => {
  const { shape, length, width, height, volume } = body;
  return shape === undefined
    ? mapRising(volume, (one) => canSurface(one, ruleOf(rules, 'can-shape')))
    : {
        min: surfaceOf(body, length.min, width.min, height.min),
        typ: surfaceOf(body, length.typ, width.typ, height.typ),
        max: surfaceOf(body, length.max, width.max, height.max),
      };
};
