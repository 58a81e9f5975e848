import {
  bodyOf,
  bodyOfRow,
  readTolerance,
  volumeOf,
  type Body,
  type Catalogue,
  type TypeId,
} from '../engine/index.ts';
import type { TypeLookRow } from '../schemas/drawings.ts';
import type { BodyRow } from '../schemas/sizes.ts';
import { drawnAs, lookMayHave, type DrawnPart, type PartToDraw } from './of-part.ts';

/** One way in which parts of a type look, drawn as a part of usual value. */
export interface DrawnLook extends DrawnPart {
  look: TypeLookRow;
}

/** The part that a look is the usual look of. */
const partOf = (look: TypeLookRow): PartToDraw => ({
  type: look.type,
  style: look.style,
  capacitance: look.capacitance,
  ratedVoltage: look.volts ?? 0,
  tolerance: look.tolerance === '' ? undefined : readTolerance(look.tolerance),
});

/** A tabulated body of the very style; what is estimated says less than the look itself. */
const bodyOfLook = (
  catalogue: Catalogue,
  look: TypeLookRow,
  part: PartToDraw,
): Body | undefined => {
  const styled = catalogue.bodies.some(
    ({ type, style }) => type === look.type && style === look.style,
  );
  const body = styled ? bodyOf(catalogue, part) : undefined;
  return body?.from === 'listed' || body?.from === 'covering' ? body : undefined;
};

/** Every way in which parts of a type look, the commonest in old equipment first. */
export const looksOfType = (catalogue: Catalogue, type: TypeId): DrawnLook[] =>
  catalogue.typeLooks
    .filter((look) => look.type === type)
    .flatMap((look) => {
      const part = partOf(look);
      const drawn = drawnAs(catalogue, look, part, bodyOfLook(catalogue, look, part));
      return drawn === undefined ? [] : [{ ...drawn, look }];
    });

/** A tabulated size of a type, drawn, with the row that it is. */
export interface DrawnSize extends DrawnPart {
  row: BodyRow;
}

/** The smallest and the largest tabulated body of a style of a type, where they differ. */
export const sizesOfLook = (catalogue: Catalogue, look: TypeLookRow): DrawnSize[] => {
  const rows = catalogue.bodies
    .filter(({ type, style }) => type === look.type && style === look.style)
    .filter(({ shape }) => lookMayHave(look, shape))
    .toSorted((a, b) => volumeOf(a) - volumeOf(b));
  const [small, large] = [rows[0], rows.at(-1)];
  if (small === undefined || large === undefined || volumeOf(small) === volumeOf(large)) return [];
  return [small, large].flatMap((row) => {
    const part = {
      ...partOf(look),
      capacitance: row.c_max,
      ratedVoltage: row.voltage,
    };
    const drawn = drawnAs(catalogue, look, part, bodyOfRow(row, 'listed'));
    return drawn === undefined ? [] : [{ ...drawn, row }];
  });
};
