import type { PartToPrint } from '../../../src/engine/printed/index.ts';
import { valuesPrinted } from '../../../src/engine/printed/values.ts';
import type { ValuePiece } from '../../../src/engine/printed/way.ts';
import { markings } from '../markings/tables.ts';

/** A tolerance of so much each way. */
export const within = (share: number) => ({ minus: share, plus: share, unit: 'fraction' as const });

/** A value as its text, its use, what it means, and the bodies that bear it, if not all. */
export type Short = [text: string, use: ValuePiece['use'], means: string, bodies?: string];

const short = ({ text, use, means, bodies }: ValuePiece): Short =>
  bodies.length === 0 ? [text, use, means] : [text, use, means, bodies.join()];

/** How a value is printed in some writings. */
export const printed = (
  part: PartToPrint,
  writings: readonly ValuePiece['writing'][],
  common = true,
): Short[] =>
  valuesPrinted(markings, part, common)
    .filter(({ writing }) => writings.includes(writing))
    .map(short);
