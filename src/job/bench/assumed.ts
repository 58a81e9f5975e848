import type { Catalogue, Range, ResolvedCondition, Unit } from '../../engine/index.ts';
import type { Trigger } from '../../substitution/cautions.ts';

/** A number that nobody typed and that brings a caution up all the same. */
export interface Assumed {
  /** What it is the number of: `DC voltage across it`. */
  name: string;
  /** SI */
  range: Range;
  unit: Unit;
  /** From which value on the caution counts, SI. */
  from: number;
  /** Usual in such a place, or worked out from the old part. */
  how: 'default' | 'derived';
  designators: readonly string[];
  /** How many lines it is the highest of. */
  lines: number;
}

/** The number that brings a caution up, where nobody typed it; nothing where it was typed. */
export const assumedBy = (
  { condition, from = 0 }: Trigger,
  conditions: readonly ResolvedCondition[],
  { conditionDefinitions, units }: Catalogue,
): Assumed | undefined => {
  const found = conditions.find(({ id }) => id === condition);
  const row = found === undefined ? undefined : conditionDefinitions[found.id];
  if (found === undefined || row === undefined || found.from === 'given') return undefined;
  return {
    name: row.name,
    range: found.range,
    unit: (units[row.unit]?.si ?? row.unit) as Unit,
    from,
    how: found.from,
    designators: [],
    lines: 1,
  };
};

/** Of several the highest, as of so many lines. */
export const highestAssumed = (all: readonly Assumed[]): Assumed | undefined => {
  const [highest] = all.toSorted((a, b) => b.range.max - a.range.max);
  return highest === undefined ? undefined : { ...highest, lines: all.length };
};
