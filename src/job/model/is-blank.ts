import { emptyLine, type Line } from './job.ts';

const BLANK = JSON.stringify(emptyLine(''));

/** Whether nothing was said of a line yet but perhaps what kind of part it is. */
export const isBlank = (line: Line): boolean =>
  JSON.stringify({ ...line, id: '', kind: '' }) === BLANK;

/** Whether a line has nothing but a note, as the headings of a list become: no part stands in it. */
export const isNoteAlone = (line: Line): boolean =>
  line.note.trim() !== '' && line.kind === '' && isBlank({ ...line, note: '' });
