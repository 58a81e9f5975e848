import type { PositionId } from '../../engine/catalogue.ts';
import type { CircuitRow, CircuitSymbolRow } from '../../schemas/circuits.ts';
import { rowsOf } from '../../text/open-data.ts';
import type { Schematic } from './schematic.ts';
import { symbolMarks } from './symbols.ts';

export { schematicMarkup } from './schematic.ts';
export type { Schematic } from './schematic.ts';

const circuits = rowsOf('circuits.csv') as unknown as readonly CircuitRow[];
const symbols = Map.groupBy(
  rowsOf('circuit-symbols.csv') as unknown as readonly CircuitSymbolRow[],
  ({ position }) => position,
);

/** A circuit for each position. */
export const schematics: Readonly<Partial<Record<PositionId, Schematic>>> = Object.fromEntries(
  circuits.map(({ position, width, height, words }) => [
    position,
    { name: words, size: [width, height], draw: (symbols.get(position) ?? []).map(symbolMarks) },
  ]),
);
