import type { Fault } from './fault.ts';

const BYTE_ORDER_MARK = '\uFEFF';

/** Characters from the start of a line up to its end. */
const lengthOf = (line: string): number => [...line].length;

/**
 * The lines of a file, and the faults of the file as a whole. What is at fault here is taken out of
 * the lines, so that it is not found again in each of them; bytes that are not UTF-8 stay as U+FFFD.
 */
export const readText = (file: string, bytes: Uint8Array): { lines: string[]; faults: Fault[] } => {
  const faults: Fault[] = [];
  let text = new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes);
  if (text.startsWith(BYTE_ORDER_MARK)) {
    faults.push({
      file,
      line: 1,
      column: 1,
      rule: 'byte-order-mark',
      wrong: 'the file starts with a byte order mark',
      got: BYTE_ORDER_MARK,
      expected: 'the first column name at once',
    });
    text = text.slice(BYTE_ORDER_MARK.length);
  }
  const returns = text.split('\r').length - 1;
  if (returns > 0) {
    const before = text.slice(0, text.indexOf('\r')).split('\n');
    faults.push({
      file,
      line: before.length,
      column: lengthOf(before.at(-1) ?? '') + 1,
      rule: 'line-ending',
      wrong: `a carriage return, first of ${returns}`,
      got: '\r',
      expected: 'lines that end in a line feed alone',
    });
    text = text.replaceAll('\r', '');
  }
  const lines = text.split('\n');
  const last = lines.pop() ?? '';
  if (last !== '') {
    faults.push({
      file,
      line: lines.length + 1,
      column: lengthOf(last) + 1,
      rule: 'end-of-file',
      wrong: 'the last line is not ended',
      got: last,
      expected: 'a line feed at the end of the file',
    });
    lines.push(last);
  }
  return { lines, faults };
};
