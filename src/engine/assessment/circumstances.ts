import type { Catalogue } from '../catalogue.ts';
import { DEFAULT_GUIDELINE } from '../equations/derating.ts';
import type { Circumstances } from '../findings/model.ts';
import { resolveSituation } from './conditions.ts';
import { rowNamed } from './original.ts';
import type { Request } from './parts.ts';

/**
 * What the findings of a request are worked out from.
 * @throws RangeError for a type or position that the catalogue does not have
 */
export const circumstancesOf = (catalogue: Catalogue, request: Request): Circumstances => {
  const { original, conditions } = resolveSituation(catalogue, request);
  const isTight = catalogue.types[original.type]?.old_ample_below === undefined;
  const isMeasured = request.conditions?.['vdc'] !== undefined;
  const isMarked = request.original.ratedVoltage !== undefined && original.voltageKind === 'dc';
  return {
    catalogue,
    position: rowNamed(catalogue.positions, request.position, 'position'),
    conditions: Object.fromEntries(conditions.map(({ id, range }) => [id, range])),
    guideline: request.guideline ?? DEFAULT_GUIDELINE,
    original,
    ...(isTight && isMarked && !isMeasured ? { kept: original.ratedVoltage } : {}),
  };
};
