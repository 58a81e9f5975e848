import { weakestOf } from '../engine/assessment/basis.ts';
import type { Knowledge, PropertyId, TypeId } from '../engine/catalogue.ts';
import { recoveryDecades, type AbsorptionTimes } from '../engine/equations/absorption.ts';
import { hull, type Range } from '../engine/quantities/range.ts';
import type { AbsorptionTestRow, FigureRow, PropertyRow, TypeRow } from '../schemas/types.ts';
import { toSi, type Units } from './to-si.ts';

/** The tables that settling needs; `absorptionTests` in the order of their table. */
export interface SettlingTables {
  types: readonly Pick<TypeRow, 'id' | 'union_of'>[];
  properties: readonly PropertyRow[];
  figures: readonly FigureRow[];
  absorptionTests: readonly AbsorptionTestRow[];
  units: Units;
}

/** What is known, by type and property. */
export type KnowledgeTable = Record<TypeId, Record<PropertyId, Knowledge>>;

const distinct = <Item>(items: readonly Item[]): Item[] => [...new Set(items)];

const timesOf = ({ soak_s, short_s, open_s }: AbsorptionTestRow): AbsorptionTimes => ({
  soak: soak_s,
  short: short_s,
  open: open_s,
});

/**
 * The factor that brings an absorption figure from its own test to the reference test, which is the
 * first of the table. One for a figure without a test.
 */
export const toReferenceTest = (
  test: string,
  absorptionTests: readonly AbsorptionTestRow[],
): number => {
  const own = absorptionTests.find((row) => row.id === test);
  const reference = absorptionTests[0];
  if (own === undefined || reference === undefined) return 1;
  return recoveryDecades(timesOf(reference)) / recoveryDecades(timesOf(own));
};

/** Least, typical and greatest number of one figure in SI, whichever it gives. */
export const figureInSi = (
  figure: FigureRow,
  tables: Pick<SettlingTables, 'absorptionTests' | 'units'>,
): { min?: number; typ?: number; max?: number } => {
  const factor = toReferenceTest(figure.test, tables.absorptionTests);
  const convert = (value: number | undefined): number | undefined =>
    value === undefined ? undefined : toSi(value * factor, figure.unit, tables.units);
  const [min, typ, max] = [convert(figure.min), convert(figure.typ), convert(figure.max)];
  return {
    ...(min === undefined ? {} : { min }),
    ...(typ === undefined ? {} : { typ }),
    ...(max === undefined ? {} : { max }),
  };
};

/** The middle of two numbers: geometric where the property is drawn in decades. */
const middle = (low: number, high: number, scale: PropertyRow['scale']): number =>
  scale === 'log' && low > 0 && high > 0 ? Math.sqrt(low * high) : (low + high) / 2;

const median = (values: readonly number[], scale: PropertyRow['scale']): number | undefined => {
  const sorted = [...values].sort((a, b) => a - b);
  const half = (sorted.length - 1) / 2;
  const [low, high] = [sorted[Math.floor(half)], sorted[Math.ceil(half)]];
  return low === undefined || high === undefined ? undefined : middle(low, high, scale);
};

/** The range that several figures of one property come to; nothing where none has a number. */
const join = (
  figures: readonly FigureRow[],
  property: PropertyRow,
  tables: SettlingTables,
): Range | undefined => {
  const inSi = figures.map((figure) => figureInSi(figure, tables));
  const numbers = inSi.flatMap((figure) => Object.values(figure));
  if (numbers.length === 0) return undefined;
  const min = Math.min(...numbers);
  const max = Math.max(...numbers);
  const typical = inSi.flatMap(({ typ }) => (typ === undefined ? [] : [typ]));
  return { min, typ: median(typical, property.scale) ?? middle(min, max, property.scale), max };
};

/** What the figures of one type about one property come to. */
export const settleOne = (
  figures: readonly FigureRow[],
  property: PropertyRow,
  tables: SettlingTables,
): Knowledge => {
  const used = figures.filter((figure) => figure.status === 'known' && figure.use === 'used');
  const range = join(used, property, tables);
  if (range !== undefined) {
    const sources = distinct(used.map((figure) => figure.source));
    return {
      status: 'known',
      range,
      basis: weakestOf(used.map((figure) => figure.basis)),
      sources,
    };
  }
  const said = figures.filter((figure) => figure.status !== 'known');
  const sources = distinct(said.map((figure) => figure.source));
  const absent = said.length > 0 && said.every((figure) => figure.status === 'not-applicable');
  return { status: absent ? 'not-applicable' : 'unknown', sources };
};

/** What is known of a part that may be any of several types: known only if all of them are. */
const settleUnion = (members: readonly Knowledge[]): Knowledge => {
  const sources = distinct(members.flatMap((member) => member.sources));
  if (members.length === 0 || members.some((member) => member.status === 'unknown')) {
    return { status: 'unknown', sources };
  }
  const known = members.flatMap((member) => (member.status === 'known' ? [member] : []));
  const [first, ...others] = known.map((member) => member.range);
  if (first === undefined) return { status: 'not-applicable', sources };
  const basis = weakestOf(known.map((member) => member.basis));
  return { status: 'known', range: hull([first, ...others]), basis, sources };
};

/**
 * What the figures come to, in SI units, for every type and every property.
 *
 * Used figures of one type and property are joined: the least and the greatest of their numbers, the
 * median of their typical values, the weakest of their bases. A union takes the hull of its members.
 * What no figure speaks of is unknown.
 */
export const settle = (tables: SettlingTables): KnowledgeTable => {
  const byTypeAndProperty = Map.groupBy(
    tables.figures,
    (figure) => `${figure.type} ${figure.property}`,
  );
  const knowledge: KnowledgeTable = {};
  const plain = tables.types.filter((type) => type.union_of.length === 0);
  const unions = tables.types.filter((type) => type.union_of.length > 0);
  for (const type of plain) {
    knowledge[type.id] = Object.fromEntries(
      tables.properties.map((property) => {
        const figures = byTypeAndProperty.get(`${type.id} ${property.id}`) ?? [];
        return [property.id, settleOne(figures, property, tables)];
      }),
    );
  }
  for (const type of unions) {
    knowledge[type.id] = Object.fromEntries(
      tables.properties.map((property) => {
        const members = type.union_of.map(
          (member): Knowledge =>
            knowledge[member]?.[property.id] ?? { status: 'unknown', sources: [] },
        );
        return [property.id, settleUnion(members)];
      }),
    );
  }
  return knowledge;
};
