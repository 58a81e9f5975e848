import type { Catalogue, Reading } from '../../engine/index.ts';
import type { RowReading } from '../../reading/colours/row.ts';
import { coloursAlone } from '../../reading/colours/typed.ts';
import type { Line } from '../model/job.ts';

/** Reads colours in a row; a page fetches it with its tables once a line has colours. */
export type ReadColourRow = (colours: readonly string[]) => readonly RowReading[];

type Named = Pick<Catalogue, 'markings'>;

/** The colours that the marking of a line consists of; nothing for any other marking. */
export const coloursOf = ({ markings }: Named, { marking }: Line): string[] | undefined =>
  coloursAlone(markings.colours, marking);

/** Whether the marking of a line among these is a row of colours. */
export const haveColours = (catalogue: Named, lines: readonly Line[]): boolean => {
  // Of thousands of lines many are marked alike.
  const markings = new Map(lines.map((line) => [line.marking, line]));
  return [...markings.values()].some((line) => coloursOf(catalogue, line) !== undefined);
};

const SURE: readonly Reading['sure'][] = ['sure', 'likely', 'possible'];

/**
 * What a row of colours says on parts of a kind, the surest first. Where the type is known and some
 * of them are of that type, they are the ones.
 * @param kind `capacitor` or `resistor`; nothing for either
 */
export const readingsOfColours = (
  rows: readonly RowReading[],
  kind: string,
  type: string,
): Reading[] => {
  const all = rows
    .flatMap(({ readings }) => readings)
    .filter((reading) => kind === '' || reading.kind === kind)
    .toSorted((a, b) => SURE.indexOf(a.sure) - SURE.indexOf(b.sure));
  const own = all.filter(({ types }) => types.includes(type));
  return own.length > 0 ? own : all;
};
