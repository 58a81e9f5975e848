import { LARGEST_FILE } from './file.ts';

/** Designators of one letter or group of letters, as lists begin their lines with. */
const FIRST = /^\s*([A-Z]{1,3})\d{1,4}[a-d]?(?!\w)/iu;

/** What may stand between designators and what is said of them. */
const BETWEEN = /^(?:\s*[:=]\s*|\s+[-–—]\s+|\s+)(?=[^\s,])/u;

/** Signs that only tables have. */
const TABLE = /[\t;|"]/u;

/** Share of the lines which must begin with designators and say something of them. */
const ENOUGH = 0.7;

/** A line cut behind its designators; nothing for one that is no line of a list. */
const cutLine = (line: string): { names: string; rest: string } | undefined => {
  const [first, letters] = FIRST.exec(line) ?? [];
  if (first === undefined || letters === undefined) return undefined;
  // More of the same letters, or a range; a type number has letters of its own.
  const more = new RegExp(
    `^(?:(?:\\s*,\\s*|\\s+(?:to\\s+)?|\\s*(?:[-–…]|\\.{2,3})\\s*)${letters}|\\s*(?:[-–…]|\\.{2,3})\\s*)\\d{1,4}[a-d]?(?!\\w)`,
    'iu',
  );
  let end = first.length;
  for (let next = more.exec(line.slice(end)); next !== null; next = more.exec(line.slice(end)))
    end += next[0].length;
  const between = BETWEEN.exec(line.slice(end))?.[0];
  if (between === undefined) return undefined;
  return { names: line.slice(0, end).trim(), rest: line.slice(end + between.length).trim() };
};

/**
 * A list that people type, such as `C1 10 µF 25 V` in each line, as a table of designators and of what is
 * printed on the parts; nothing for a text that is none.
 */
export const tableOfList = (text: string): string | undefined => {
  if (text.length > LARGEST_FILE || TABLE.test(text)) return undefined;
  const lines = text.split(/\r?\n/u).filter((line) => line.trim() !== '');
  const cut = lines.map(cutLine);
  const found = cut.filter((one) => one !== undefined).length;
  if (found < 2 || found < lines.length * ENOUGH) return undefined;
  const rows = cut.map((one, at) =>
    one === undefined ? `\t${lines[at] ?? ''}` : `${one.names}\t${one.rest}`,
  );
  return ['Designators\tMarking', ...rows].join('\n');
};
