import type { MarkingTables } from '../../../schemas/markings.ts';
import type { BodyNames, Names } from './names.ts';

type Tied<Row> = Row & { bodyBits: number; originBits: number };

/** A row with its bodies and origins as bits. */
const tied =
  (bodies: Names, origins: Names) =>
  <Row extends { bodies: string[]; origins: string[] }>(row: Row): Tied<Row> => ({
    ...row,
    bodyBits: bodies.bitsOf(row.bodies),
    originBits: origins.bitsOf(row.origins),
  });

export type ValueForm = Tied<MarkingTables['valueForms'][number]>;
export type MultiplierRow = Tied<MarkingTables['multipliers'][number]>;
export type PointLetterRow = Tied<MarkingTables['pointLetters'][number]>;
export type MantissaRow = Tied<MarkingTables['mantissaLetters'][number]>;

/** The rows that values without a unit are read by, under what they are looked up by. */
export interface ValueRows {
  forms: Record<ValueForm['shape'], readonly ValueForm[]>;
  /** By figure. */
  multipliers: ReadonlyMap<string, readonly MultiplierRow[]>;
  /** By figure, behind a letter. */
  chipMultipliers: ReadonlyMap<string, readonly MultiplierRow[]>;
  /** By letter. */
  points: ReadonlyMap<string, readonly PointLetterRow[]>;
  /** By letter. */
  mantissas: ReadonlyMap<string, readonly MantissaRow[]>;
}

/** Sorts the rows for values by what they are looked up by. */
export const valueRowsOf = (
  tables: MarkingTables,
  bodies: BodyNames,
  origins: Names,
): ValueRows => {
  const tie = tied(bodies.capacitor, origins);
  const tieResistor = tied(bodies.resistor, origins);
  const forms = tables.valueForms.map(tie);
  const multipliers = tables.multipliers.map(tie);
  const ofShape = (shape: ValueForm['shape']) => forms.filter((form) => form.shape === shape);
  const ofScheme = (scheme: MultiplierRow['scheme']) =>
    Map.groupBy(
      multipliers.filter((row) => row.scheme === scheme),
      (row) => row.figure,
    );
  const points = tables.pointLetters.map((row) =>
    row.quantity === 'capacitance' ? tie(row) : tieResistor(row),
  );
  return {
    forms: {
      multiplier: ofShape('multiplier'),
      'behind-style': ofShape('behind-style'),
      plain: ofShape('plain'),
      decimal: ofShape('decimal'),
      sections: ofShape('sections'),
      range: ofShape('range'),
      span: ofShape('span'),
      filter: ofShape('filter'),
    },
    multipliers: ofScheme('figures'),
    chipMultipliers: ofScheme('letter-figure'),
    points: Map.groupBy(points, (row) => row.letter),
    mantissas: Map.groupBy(tables.mantissaLetters.map(tie), (row) => row.letter),
  };
};
