import { valuesOf, type TableName, type Tables, tableNames } from '../catalogue/read-folder.ts';
import type { Basis } from '../engine/catalogue.ts';
import type { SoughtDeviceRow, SoughtRow } from '../schemas/sought.ts';
import type { FigureRow, PropertyRow, TypeRow } from '../schemas/types.ts';

/** How many rows of a table are known in which way; tables without a basis are not counted. */
export interface RowsByBasis extends Record<Basis, number> {
  table: TableName;
}

/** What a decisive property of a type rests on. */
export interface Decisive {
  type: string;
  property: string;
  /** Named publishers of used figures that were seen: two of them hold each other up. */
  publishers: string[];
  /** Used figures of all bases. */
  figures: number;
  stands: 'on two' | 'on one' | 'on practice' | 'on memory' | 'not known' | 'not applicable';
}

/** Figures of one property of one type that lie apart, and how that was settled. */
export interface Disagreement {
  type: string;
  property: string;
  settled: string;
  source: string;
  used: boolean;
}

/** A figure of which nobody has seen the source yet. */
export interface Remembered {
  type: string;
  property: string;
  source: string;
  note: string;
  used: boolean;
}

/** What the data rest on, said about the data themselves. */
export interface Evidence {
  rows: RowsByBasis[];
  decisive: Decisive[];
  /** Where figures that want a source were looked for in vain. */
  sought: SoughtRow[];
  soughtDevices: SoughtDeviceRow[];
  disagreements: Disagreement[];
  remembered: Remembered[];
}

const rowsByBasis = (tables: Tables): RowsByBasis[] =>
  tableNames.flatMap((table) => {
    const { rows } = tables[table];
    if (!rows.some(({ cells }) => 'basis' in cells)) return [];
    const of = (basis: Basis): number =>
      rows.filter(({ cells }) => cells['basis'] === basis).length;
    return [
      {
        table,
        published: of('published'),
        'common-practice': of('common-practice'),
        memory: of('memory'),
      },
    ];
  });

/** Publishers whose name was not seen: one of them may be any other. */
const NAMELESS = /\bnot named\b|^unknown\b|^unnamed\b|^various$|^distributor$/;

/** Publishers that cannot be each other: all named ones, or one of the nameless where none is. */
const apart = (publishers: readonly string[]): string[] => {
  const all = [...new Set(publishers)].sort();
  const named = all.filter((publisher) => !NAMELESS.test(publisher));
  return named.length > 0 ? named : all.slice(0, 1);
};

const standsOn = (
  figures: readonly FigureRow[],
  publishers: readonly string[],
): Decisive['stands'] => {
  const used = figures.filter(({ status, use }) => status === 'known' && use === 'used');
  if (publishers.length > 1) return 'on two';
  if (publishers.length === 1) return 'on one';
  if (used.some(({ basis }) => basis === 'common-practice')) return 'on practice';
  if (used.length > 0) return 'on memory';
  const absent = figures.length > 0 && figures.every(({ status }) => status === 'not-applicable');
  return absent ? 'not applicable' : 'not known';
};

/** Every decisive property of every type that is made today, unions left to their members. */
const decisiveOf = (tables: Tables): Decisive[] => {
  const publisherOf = new Map(
    valuesOf(tables, 'sources.csv').map(({ id, publisher }) => [id, publisher]),
  );
  const figures = valuesOf(tables, 'figures.csv');
  const properties = valuesOf(tables, 'properties.csv').filter(
    ({ decisive }) => decisive === 'yes',
  );
  const isMade = ({ market, union_of: members }: TypeRow): boolean =>
    market !== 'none' && market !== 'old-stock' && members.length === 0;
  const one = (type: TypeRow, property: PropertyRow): Decisive => {
    const own = figures.filter(
      (figure) => figure.type === type.id && figure.property === property.id,
    );
    const used = own.filter(({ status, use }) => status === 'known' && use === 'used');
    const publishers = apart(
      used
        .filter(({ basis }) => basis === 'published')
        .map(({ source }) => publisherOf.get(source) || source),
    );
    return {
      type: type.id,
      property: property.id,
      publishers,
      figures: used.length,
      stands: standsOn(own, publishers),
    };
  };
  return valuesOf(tables, 'types.csv')
    .filter(isMade)
    .flatMap((type) => properties.map((property) => one(type, property)));
};

/** What the tables say of how well each of their figures is known. */
export const evidenceOf = (tables: Tables): Evidence => {
  const figures = valuesOf(tables, 'figures.csv');
  return {
    rows: rowsByBasis(tables),
    decisive: decisiveOf(tables),
    sought: valuesOf(tables, 'sought.csv'),
    soughtDevices: valuesOf(tables, 'sought-devices.csv'),
    disagreements: figures
      .filter(({ disagreement }) => disagreement !== '')
      .map(({ type, property, disagreement, source, use }) => ({
        type,
        property,
        settled: disagreement,
        source,
        used: use === 'used',
      })),
    remembered: figures
      .filter(({ basis, status }) => basis === 'memory' && status === 'known')
      .map(({ type, property, source, note, use }) => ({
        type,
        property,
        source,
        note,
        used: use === 'used',
      })),
  };
};
