import type { PositionRow } from '../../schemas/positions.ts';
import type { TypeRow } from '../../schemas/types.ts';
import type { Catalogue, PositionId, TypeId } from '../catalogue.ts';
import { formatValue, type Unit } from '../quantities/index.ts';

/** Why a type is not met in a position. */
interface NotMet {
  met: false;
  why: string;
  /** Where it is for the values: those that the type was made in, those that the position takes. */
  apart?: { made: string; taken: string };
}

/** Whether a type is met in a position in practice, and if not, why. */
export type Pairing = { met: true } | NotMet;

const span = ([low, high]: readonly [number, number], unit: Unit): string =>
  `${formatValue(low, unit)} to ${formatValue(high, unit)}`;

/** That a type was made in other values than a position takes, each from least to most. */
export const valuesApart = (
  old: readonly [number, number],
  usual: readonly [number, number],
  unit: Unit,
): NotMet | undefined => {
  if (old[1] >= usual[0] && old[0] <= usual[1]) return undefined;
  const made = span(old, unit);
  const taken = span(usual, unit);
  const why = `made from ${made}, while this position takes ${taken}`;
  return { met: false, why, apart: { made, taken } };
};

const wrongPolarity = (type: TypeRow, position: PositionRow): NotMet | undefined =>
  type.polarity === 'polar' && position.voltage_sense !== 'one sign'
    ? { met: false, why: 'a polar part, and the voltage here takes both signs' }
    : undefined;

type Noted = ReadonlyMap<string, NotMet>;

const sorted = new WeakMap<Catalogue['unlikelyPairs'], Noted>();

const notedPairs = ({ unlikelyPairs }: Catalogue): Noted => {
  const known = sorted.get(unlikelyPairs);
  if (known !== undefined) return known;
  const pairs = unlikelyPairs.map(({ type, position, why }) => {
    return [`${type} ${position}`, { met: false, why }] as const;
  });
  const noted = new Map(pairs);
  sorted.set(unlikelyPairs, noted);
  return noted;
};

/** That a type is noted as not met in a position. */
export const notedAsUnmet = (
  catalogue: Catalogue,
  type: TypeId,
  position: PositionId,
): NotMet | undefined => notedPairs(catalogue).get(`${type} ${position}`);

/** Whether a type is met as the old part in a position. */
export const pairing = (catalogue: Catalogue, type: TypeRow, position: PositionRow): Pairing => {
  const noted = notedAsUnmet(catalogue, type.id, position.id);
  if (noted !== undefined) return noted;
  const made = [type.old_c_min, type.old_c_max] as const;
  const taken = [position.usual_c_min, position.usual_c_max] as const;
  return valuesApart(made, taken, 'F') ?? wrongPolarity(type, position) ?? { met: true };
};

/** Every type with every position, and whether they are met together. */
export const allPairings = (
  catalogue: Catalogue,
): { type: TypeId; position: PositionId; pairing: Pairing }[] =>
  Object.values(catalogue.types).flatMap((type) =>
    Object.values(catalogue.positions).map((position) => ({
      type: type.id,
      position: position.id,
      pairing: pairing(catalogue, type, position),
    })),
  );
