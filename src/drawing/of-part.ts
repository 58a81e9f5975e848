import {
  bodyOf,
  volumeOf,
  type Basis,
  type Body,
  type Catalogue,
  type Shape,
  type Sized,
  type SourceId,
  type TypeId,
} from '../engine/index.ts';
import { MILLIMETRE } from '../engine/quantities/si.ts';
import type { TypeLookRow } from '../schemas/drawings.ts';
import { specOfRow } from './of-row.ts';
import { printedOn, type Printed } from './printed-on.ts';
import { mayHaveShape, shapeOf } from './side-words.ts';
import { withSides, withVolume } from './sides.ts';
import type { PartSpec } from './spec.ts';

/** A part of which a drawing is asked: type, value (F), rated voltage (V) and what else is marked. */
export type PartToDraw = Sized & Printed;

/** A part ready to draw. */
export interface DrawnPart {
  spec: PartSpec;
  /** How its sides are known, from best to worst. */
  sides: 'listed' | 'between' | 'estimated' | 'usual';
  /** Where the sides come from; nothing for an estimate. */
  source: SourceId | undefined;
  basis: Basis;
}

/** Whether a look may have the sides of a tabulated body. */
export const lookMayHave = (look: TypeLookRow, shape: Shape | undefined): boolean => {
  const spec = specOfRow(look);
  return spec !== undefined && shape !== undefined && mayHaveShape(spec, shape);
};

/** The look of a style of a type in a shape; else of the type as it is mostly met. */
const lookFor = (
  looks: readonly TypeLookRow[],
  type: TypeId,
  style?: string,
  shape?: Shape,
): TypeLookRow | undefined => {
  const own = looks.filter((look) => look.type === type);
  const styled = own.filter((look) => look.style === style);
  return styled.find((look) => lookMayHave(look, shape)) ?? styled[0] ?? own[0];
};

const sidesOf = (look: TypeLookRow, spec: PartSpec, body: Body | undefined): DrawnPart => {
  const usual = { spec, sides: 'usual', source: look.source, basis: look.basis } as const;
  if (body === undefined || body.from === 'together') return usual;
  const [row] = body.rows;
  if (body.row !== undefined && row !== undefined) {
    return {
      spec: withSides(spec, body),
      sides: body.from === 'between' ? 'between' : 'listed',
      source: row.source,
      basis: body.bases.includes('memory') ? 'memory' : row.basis,
    };
  }
  const volume = volumeOf({ ...look, shape: shapeOf(spec) });
  return {
    spec: withVolume(spec, volume, body.volume.typ / MILLIMETRE ** 3),
    sides: 'estimated',
    source: undefined,
    basis: 'memory',
  };
};

/** A look as a part with such a body, its own marking printed on it. */
export const drawnAs = (
  catalogue: Catalogue,
  look: TypeLookRow,
  part: PartToDraw,
  body: Body | undefined,
): DrawnPart | undefined => {
  const spec = specOfRow(look);
  if (spec === undefined) return undefined;
  const marking = printedOn(catalogue, look.marking, part);
  return sidesOf(look, { ...spec, marking }, body);
};

/**
 * A part as it usually looks: in the form of its style, with the sides of its tabulated body where
 * there is one, else grown to the volume that its type needs. Nothing where nothing says how the
 * type looks.
 */
export const drawingOfPart = (catalogue: Catalogue, part: PartToDraw): DrawnPart | undefined => {
  const body = bodyOf(catalogue, part);
  const style = body?.row?.style ?? part.style;
  const look = lookFor(catalogue.typeLooks, part.type, style, body?.row?.shape);
  return look && drawnAs(catalogue, look, part, body);
};

/**
 * An old part as it is mostly met: in the first look of its type where that has a tabulated body
 * for the part, else as any part of the type.
 */
export const drawingOfOldPart = (catalogue: Catalogue, part: PartToDraw): DrawnPart | undefined => {
  const look = lookFor(catalogue.typeLooks, part.type);
  const styled = { ...part, style: look?.style };
  const body = look && bodyOf(catalogue, styled);
  return look && body?.row !== undefined
    ? drawnAs(catalogue, look, styled, body)
    : drawingOfPart(catalogue, part);
};
