import { loadCatalogue } from '../../../src/catalogue/index.ts';
import type { Request } from '../../../src/engine/assessment/parts.ts';
import { rowNamed } from '../../../src/engine/assessment/original.ts';
import type { Catalogue, Knowledge, TypeId } from '../../../src/engine/catalogue.ts';
import type { Circumstances } from '../../../src/engine/findings/model.ts';
import { DEFAULT_GUIDELINE, resolveSituation } from '../../../src/engine/index.ts';
import { exactly, type Range } from '../../../src/engine/quantities/range.ts';

/** The catalogue of this project, for every test of the assessment. */
export const catalogue: Catalogue = loadCatalogue();

/** What a request comes to before any part is judged, as the assessment itself sets it up. */
export const circumstancesOf = (request: Request, from: Catalogue = catalogue): Circumstances => {
  const { original, conditions } = resolveSituation(from, request);
  return {
    catalogue: from,
    position: rowNamed(from.positions, request.position, 'position'),
    conditions: Object.fromEntries(conditions.map(({ id, range }) => [id, range])),
    guideline: request.guideline ?? DEFAULT_GUIDELINE,
    original,
  };
};

/** A figure that is known, for made-up catalogues. */
export const known = (range: Range | number): Knowledge => ({
  status: 'known',
  range: typeof range === 'number' ? exactly(range) : range,
  basis: 'common-practice',
  sources: ['trade'],
});

export const notKnown: Knowledge = { status: 'unknown', sources: [] };

/** A copy of a catalogue that knows other things about one type. */
export const knowing = (
  from: Catalogue,
  type: TypeId,
  figures: Record<string, Knowledge>,
): Catalogue => ({
  ...from,
  knowledge: { ...from.knowledge, [type]: { ...from.knowledge[type], ...figures } },
});

/** Conditions of single values, in SI. */
export const given = (values: Record<string, number>): Record<string, Range> =>
  Object.fromEntries(Object.entries(values).map(([id, value]) => [id, exactly(value)]));
