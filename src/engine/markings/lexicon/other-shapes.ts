import type { MarkingTables } from '../../../schemas/markings.ts';

/** The form of a type of another kind of part, such as `##D###` of varistors. */
export interface OtherShape {
  row: MarkingTables['otherMarks'][number];
  /** Sticky: matched from an index on. */
  pattern: RegExp;
}

const signs: Readonly<Record<string, string>> = {
  '#': String.raw`\d`,
  '~': String.raw`\d{1,2}(?:[.,]\d{1,2})?`,
  '*': '[FGJKLM]',
  '.': String.raw`\.`,
};

const patternOf = (shape: string): RegExp =>
  new RegExp(
    shape
      .split('')
      .map((sign) => signs[sign] ?? sign)
      .join(''),
    'y',
  );

/** The forms of types of other kinds of parts, by the sign that they begin with. */
export type OtherShapes = ReadonlyMap<string, readonly OtherShape[]>;

export const otherShapesOf = (tables: MarkingTables): OtherShapes =>
  Map.groupBy(
    tables.otherMarks
      .filter(({ form }) => form === 'shape')
      .map((row) => ({ row, pattern: patternOf(row.written) })),
    ({ row }) => row.written.charAt(0),
  );
