import { emptyLine, type Line } from './model.ts';

const BLANK = JSON.stringify(emptyLine(''));

/** Whether nothing was said of a line yet but perhaps what kind of part it is. */
export const isBlank = (line: Line): boolean =>
  JSON.stringify({ ...line, id: '', kind: '' }) === BLANK;
