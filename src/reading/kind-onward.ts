import { link } from '../components/link.ts';
import { exactly, writeQuantity, type Catalogue, type Reading } from '../engine/index.ts';
import { h, type Markup } from '../markup/node.ts';
import type { KindRow, KindTypeRow } from '../schemas/kinds.ts';
import { kindPartKeys } from '../substitution/keys.ts';
import { toleranceTold } from '../substitution/told-by-marking.ts';
import { writeTolerance } from '../substitution/typed-numbers.ts';
import { chips } from './chips.ts';

/** The query that carries a reading to the pages about resistors and trimmers; nothing without a value. */
export const kindQuery = (reading: Reading): string => {
  const { resistance, power } = reading;
  if (resistance === undefined) return '';
  const query = new URLSearchParams();
  query.set(kindPartKeys.value, writeQuantity(exactly(resistance.typ), 'ohm'));
  const tolerance = toleranceTold(reading);
  if (tolerance !== undefined) query.set(kindPartKeys.tolerance, writeTolerance(tolerance));
  // Ratings are spoken of in watts, whatever their size.
  if (power !== undefined) query.set(kindPartKeys.rating, String(Number(power.typ.toPrecision(6))));
  return `?${query.toString()}`;
};

/** Types of a kind that were made in a value. */
const typesOf = ({ kindTypes }: Catalogue, kind: KindRow, value: number): KindTypeRow[] =>
  Object.values(kindTypes).filter(
    (type) =>
      type.kind === kind.id && value >= (type.old_min ?? 0) && value <= (type.old_max ?? Infinity),
  );

/** What a marked resistance may be made of; each leads on with its value filled in. */
export const kindOnward = (catalogue: Catalogue, reading: Reading): Markup | undefined => {
  const { resistance } = reading;
  if (resistance === undefined) return undefined;
  const query = kindQuery(reading);
  const lists = Object.values(catalogue.kinds)
    .filter(({ unit }) => unit === 'ohm')
    .map((kind) => ({ kind, types: typesOf(catalogue, kind, resistance.typ) }))
    .filter(({ types }) => types.length > 0);
  if (lists.length === 0) return undefined;
  return h(
    'div',
    { class: 'onward' },
    h('p', {}, 'What stands in for it depends on what it is made of and where it sits. Choose:'),
    ...lists.flatMap(({ kind, types }) => [
      h('p', { class: 'small quiet' }, `As a ${kind.name}:`),
      chips(types.map((type) => link(`/types/${type.id}/${query}#positions`, type.short_name))),
    ]),
  );
};
