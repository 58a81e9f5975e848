import type { Catalogue, Reading, TypeId } from '../engine/index.ts';
import type { TypeLookRow } from '../schemas/drawings.ts';
import { drawnAs } from './of-part.ts';
import type { PartSpec } from './spec.ts';

/** A reading drawn as the part that it may be. */
export interface DrawnReading {
  spec: PartSpec;
  look: TypeLookRow;
}

/** Types that a reading leaves open; where it names none, those of the body that one saw. */
const typesOf = (
  { markings }: Pick<Catalogue, 'markings'>,
  { types }: Reading,
  body: string,
): readonly TypeId[] =>
  types.length > 0 ? types : (markings.bodies.find(({ id }) => id === body)?.types ?? []);

/**
 * A reading of a marking as a part of its likeliest type, in the usual size of that type, with the
 * marking as the visitor wrote it. Nothing where neither the reading nor the body says what it may
 * be.
 * @param body id in `markings/bodies.csv`, or empty
 */
export const drawingOfReading = (
  catalogue: Catalogue,
  reading: Reading,
  marking: string,
  body = '',
): DrawnReading | undefined => {
  const types = typesOf(catalogue, reading, body);
  const look = types
    .map((id) => catalogue.typeLooks.find(({ type }) => type === id))
    .find((row) => row !== undefined);
  if (look === undefined || reading.capacitance === undefined) return undefined;
  const part = { type: look.type, capacitance: reading.capacitance.typ, ratedVoltage: 0 };
  const drawn = drawnAs(catalogue, look, part, undefined);
  if (drawn === undefined) return undefined;
  const lines = marking.split('\n').map((line) => line.trim());
  // What one reads in print is not on a body that is marked in colours.
  const spec = { ...drawn.spec, marking: lines, bands: [], dots: [] };
  return { spec, look };
};
