import { expandDesignators, isRatherTypeNumber } from '../model/designators.ts';
import { LARGEST_FILE } from '../model/job.ts';

/** Designators of one letter or group of letters, as lists begin their lines with. */
const FIRST = /^\s*(\p{L}{1,3})-?\d{1,4}[a-d]?(?![\p{L}\d_])/iu;

/** What may stand between designators and what is said of them. */
const BETWEEN = /^(?:\s*[:=]\s*|\s+[-–—]\s+|\s+)(?=[^\s,])/u;

/** Signs that only tables have; a quotation mark within a cell is one of inches or of a nickname. */
const TABLE = /[\t;|]|(?:^|,)\s*"/u;

/** Lines of lists are short; a longer one is not searched for what may stand anywhere in it. */
const LONGEST_LINE = 500;

/** Fewer figures behind a stroke are rather volts or a fraction, as in `C1/25`. */
const FIGURES_BEHIND_STROKE = 3;

/** Share of the lines which must begin with designators and say something of them. */
const ENOUGH = 0.7;

/** The designators of a line, and what it says of them. */
interface Cut {
  names: string;
  rest: string;
}

/** Designators with commas where people put strokes. */
const namesIn = (text: string): string => text.trim().replaceAll(/\s*\/\s*/gu, ', ');

/** The number at an end, and one behind a comma, with no unit of a value behind it. */
const NEXT_NUMBER =
  /(\d{1,4})(,(\d{1,4}))(?=[\s,:=])(?!\s*(?:[pnuµμm]?F|[kM]?(?:Ω|ohms?)|[kKMRV])(?![\p{L}\d]))/uy;

/** The end of designators with the numbers that follow at once, as in `TR5,6` and `C1,2,3`. */
const behindNext = (line: string, end: number): number => {
  const from = end - (/\d{1,4}$/u.exec(line.slice(0, end))?.[0].length ?? 0);
  NEXT_NUMBER.lastIndex = from;
  const [, number, more = '', next] = NEXT_NUMBER.exec(line) ?? [];
  return Number(next) === Number(number) + 1 ? behindNext(line, end + more.length) : end;
};

/** A line cut behind its designators; nothing for one that is no line of a list. */
const cutBefore = (line: string): Cut | undefined => {
  const [first, letters] = FIRST.exec(line) ?? [];
  if (first === undefined || letters === undefined || isRatherTypeNumber(first)) return undefined;
  // More of the same letters, a number of as many figures behind a stroke, or a range; a dash with gaps
  // before a number is one only where no value begins there. A type number has letters of its own.
  const figures = /\d+/u.exec(first)?.[0].length ?? 1;
  const more = new RegExp(
    [
      `^(?:\\s*[,/&]\\s*|\\s+(?:to\\s+)?|\\s*(?:[-–…]|\\.{2,3})\\s*)${letters}-?\\d{1,4}[a-d]?(?!\\w)`,
      `^\\s*&\\s*\\d{1,4}(?![\\p{L}\\d])`,
      `^/\\d{${String(Math.max(figures, FIGURES_BEHIND_STROKE))}}(?!\\w)`,
      `^(?:[-–…]|\\.{2,3})\\d{1,4}[a-d]?(?!\\w)`,
      `^\\s*(?:[-–…]|\\.{2,3})\\s*\\d{1,4}[a-d]?(?=\\s*(?:$|[:=,;]\\s|[-–—]\\s))`,
    ].join('|'),
    'iu',
  );
  let end = first.length;
  for (let next = more.exec(line.slice(end)); next !== null; next = more.exec(line.slice(end)))
    end += next[0].length;
  end = behindNext(line, end);
  const between = BETWEEN.exec(line.slice(end))?.[0];
  if (between === undefined) return undefined;
  return { names: namesIn(line.slice(0, end)), rest: line.slice(end + between.length).trim() };
};

/** What is printed on parts, then their designators, as in `100n: C1, C3` and `4k7  R1-R4`. */
const NAMED_LAST =
  /^(.*?\d.*?)(?:\s*[:=]\s*|\s+)(\p{L}{1,3}\d{1,4}[a-d]?(?:(?:\s*[,/–-]\s*|\s+)(?:\p{L}{1,3})?\d{1,4}[a-d]?)*)$/iu;

const cutBehind = (line: string): Cut | undefined => {
  if (line.length > LONGEST_LINE) return undefined;
  const [, rest, names] = NAMED_LAST.exec(line.trim()) ?? [];
  if (rest === undefined || names === undefined) return undefined;
  const { list, faults } = expandDesignators(namesIn(names));
  return faults.length > 0 || list.some(isRatherTypeNumber)
    ? undefined
    : { names: namesIn(names), rest };
};

const cutLine = (line: string): Cut | undefined => cutBefore(line) ?? cutBehind(line);

/** A number of parts before what they are, as in `2x 100 µF` and `4 pcs 10k`. */
const COUNTED = /^\s*(\d{1,3})\s*(?:[x×]|pcs\.?|off|stk\.?|stück)\s+(?=\S)/iu;

/** What was read of a part on the board, behind what it is: `10k, reads 3.2k`. */
const READ_BEFORE =
  /[\s,;]+((?:old reading|reading|reads?|measured|measures|was|set (?:at|to)|wiper)\b.*)$/iu;

/** Whether a line without designators heads those below it or is a remark: it names no value. */
const isHeading = (line: string): boolean => !/\d/u.test(line) || /:\s*$/u.test(line);

/** Two words of a sentence, or figures that are none but a year. */
const TITLE = /\p{L}{4}[^\p{L}\d]+(?:\p{L}+[^\p{L}\d]+)*\p{L}{4}|^\D*(?:19|20)\d\d\D*$/u;

/** A number with the unit of a value. */
const VALUE = /\d\s*(?:[pnuµμ]F?|[kKM]|mF|MFD?|[kM]?(?:Ω|ohms?))(?![\p{L}\d])/iu;

/** Whether a line above a list names it, as `Guitar amplifier, 1966` does: words, and no value. */
const isTitle = (line: string): boolean => TITLE.test(line) && !VALUE.test(line);

/** What a line says, by the columns of the table that the list becomes. */
interface Said {
  Quantity: string;
  Designators: string;
  Marking: string;
  Note: string;
}

const COLUMNS = ['Quantity', 'Designators', 'Marking', 'Note'] as const;

const NOTHING: Said = { Quantity: '', Designators: '', Marking: '', Note: '' };

/** What is printed on a part, and what was read of it. */
const partSaid = (text: string): Pick<Said, 'Marking' | 'Note'> => {
  const [, read = ''] = text.length > LONGEST_LINE ? [] : (READ_BEFORE.exec(text) ?? []);
  const marking = read === '' ? text : text.slice(0, text.length - read.length);
  return { Marking: marking.replace(/[\s,;]+$/u, ''), Note: read };
};

const saidBy = (line: string, isAbove: boolean): Said => {
  const text = line.trim();
  const cut = cutLine(text);
  if (cut !== undefined) return { ...NOTHING, Designators: cut.names, ...partSaid(cut.rest) };
  if (isHeading(text) || (isAbove && isTitle(text))) return { ...NOTHING, Note: text };
  const [before = '', count = ''] = COUNTED.exec(text) ?? [];
  return { ...NOTHING, Quantity: count, ...partSaid(text.slice(before.length)) };
};

const isCounted = (line: string): boolean => COUNTED.test(line);

/** Whether most lines that head nothing are of a form, and what they say tells a part from a title. */
const areMostly = (lines: readonly string[], isOf: (line: string) => boolean): boolean => {
  const found = lines.filter(isOf).length;
  return found > 0 && found >= lines.length * ENOUGH && lines.some((line) => /\d\D+\d/u.test(line));
};

/** A sign or number before each line, as in `- C1 100n` and `2. C1 100n`. */
const BULLET = /^\s*(?:[-*•–]|\d{1,3}[.)])\s+(?=\S)/u;

/** A line without the sign or number before it, where designators stand behind that. */
const withoutBullet = (line: string): string => {
  const bare = line.replace(BULLET, '');
  return cutBefore(bare) === undefined ? line : bare;
};

/** Where the next of several parts in one line begins, as in `C1=100n, C2=10u`. */
const NEXT_PART = /[,;]\s*(?=\p{L}{1,3}\d{1,4}[a-d]?\s*=)/gu;

/** The rows between which a table in Markdown has dashes. */
const DASHES = /^[\s|:-]+$/u;

/** A table with strokes at both ends of each row, as Markdown has them, by tabs; nothing for others. */
const fromMarkdown = (lines: readonly string[]): string | undefined =>
  lines.length > 1 && lines.every((line) => /^\s*\|.*\|\s*$/u.test(line))
    ? lines
        .filter((line) => !DASHES.test(line))
        .map((line) => line.trim().slice(1, -1).split('|'))
        .map((cells) => cells.map((cell) => cell.trim()).join('\t'))
        .join('\n')
    : undefined;

/**
 * A list that people type, such as `C1 10 µF 25 V` or `2x 100 µF` in each line, as a table of numbers,
 * designators, what is printed on the parts, and notes; nothing for a text that is none. Lines that head
 * others become notes of their own.
 */
export const tableOfList = (text: string): string | undefined => {
  if (text.length > LARGEST_FILE) return undefined;
  const rows = text.split(/\r?\n/u).filter((line) => line.trim() !== '');
  const table = fromMarkdown(rows);
  if (table !== undefined) return table;
  const lines = rows.flatMap((line) => line.split(NEXT_PART)).map(withoutBullet);
  if (lines.some((line) => TABLE.test(line))) return undefined;
  const isOf = (line: string): boolean => cutLine(line) !== undefined;
  const first = lines.findIndex(isOf);
  const parts = lines.filter(
    (line, at) => isOf(line) || !(isHeading(line) || (at < first && isTitle(line))),
  );
  if (!areMostly(parts, isOf) && !areMostly(parts, isCounted)) return undefined;
  const said = lines.map((line, at) => saidBy(line, at < first));
  const columns = COLUMNS.filter((column) => said.some((row) => row[column] !== ''));
  return [columns, ...said.map((row) => columns.map((column) => row[column]))]
    .map((cells) => cells.join('\t'))
    .join('\n');
};
