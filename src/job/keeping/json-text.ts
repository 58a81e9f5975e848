/** An object of a JSON text, of which nothing is known yet. */
export type Raw = Readonly<Record<string, unknown>>;

/** Whether a value of a JSON text is an object. */
export const isObject = (value: unknown): value is Raw =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Deepest nesting that a job needs, with room to spare. */
const DEEPEST = 30;

/** What a look at a JSON text, without reading it, tells. */
interface Outline {
  tooDeep: boolean;
  /** Length up to the end of the last complete item of the list that the text breaks off in. */
  whole: number;
  /** What closes the brackets that are open there. */
  closing: string;
}

/** Follows the brackets only, so that a hostile text is known before it is read. */
const outlineOf = (text: string): Outline => {
  const open: string[] = [];
  let [whole, closing, inString] = [0, '', false];
  for (let at = 0; at < text.length; at++) {
    const sign = text[at];
    if (inString) {
      if (sign === '\\') at++;
      else if (sign === '"') inString = false;
    } else if (sign === '"') inString = true;
    else if (sign === '{' || sign === '[') {
      open.push(sign === '{' ? '}' : ']');
      if (open.length > DEEPEST) return { tooDeep: true, whole, closing };
    } else if (sign === '}' || sign === ']') {
      open.pop();
      // A line stands in a list that stands in the job.
      if (open.length <= 2 && open.length > 0) {
        whole = at + 1;
        closing = open.toReversed().join('');
      }
    }
  }
  return { tooDeep: false, whole, closing };
};

const parse = (text: string): { value: unknown } | undefined => {
  try {
    return { value: JSON.parse(text) as unknown };
  } catch {
    return undefined;
  }
};

/** What JSON text holds; where it breaks off, what stands complete before that. Never throws. */
export const readJson = (
  text: string,
): { value: unknown; isCut: boolean } | { message: string } => {
  const { tooDeep, whole, closing } = outlineOf(text);
  if (tooDeep) return { message: 'This file is nested deeper than any job; nothing is opened.' };
  const read = parse(text);
  if (read !== undefined) return { ...read, isCut: false };
  const salvaged = whole === 0 ? undefined : parse(text.slice(0, whole) + closing);
  return salvaged === undefined
    ? { message: 'This is not a job file: its text is not JSON.' }
    : { ...salvaged, isCut: true };
};
