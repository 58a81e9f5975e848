import type { Hints } from '../../../src/engine/markings/index.ts';
import { parsesOf, type Parse } from '../../../src/engine/markings/ways/parse.ts';
import { markingOf } from '../../../src/engine/markings/text/text.ts';
import type { Content } from '../../../src/engine/markings/meanings/token.ts';
import { weights } from '../../../src/engine/markings/meanings/weights.ts';
import { lexiconFor } from './scans.ts';

/** Weights by which something is believed more or less, named one by one. */
export type WeightName = {
  [Name in keyof typeof weights]: (typeof weights)[Name] extends number ? Name : never;
}[keyof typeof weights];

/** What named weights come to. */
export const sumOf = (names: readonly WeightName[]): number =>
  names.reduce((sum, name) => sum + weights[name], 0);

/** The stretches that a way takes, in their order. */
export const stretchesOf = ({ taken }: Parse, text: string): string[] =>
  taken.map(({ at, end }) => text.slice(at, end));

/** What a way that is looked for takes, and what its value is. */
export interface Sought {
  /** The stretches that it takes, and no others. */
  taken: readonly string[];
  says?: Content['says'];
  /** F or ohm. */
  value?: number;
  /** What the first character of the value that cannot be read is made up as. */
  madeUpAs?: string;
  hints?: Hints;
}

const isSought = (
  parse: Parse,
  text: string,
  { taken, says, value, madeUpAs }: Sought,
): boolean => {
  const content = parse.value?.meaning.content;
  const size = content !== undefined && 'value' in content ? content.value : undefined;
  return (
    stretchesOf(parse, text).join('|') === taken.join('|') &&
    (says === undefined || content === undefined || content.says === says) &&
    (value === undefined || Math.abs((size ?? NaN) / value - 1) < 1e-9) &&
    (madeUpAs === undefined || parse.value?.assumed[0]?.as === madeUpAs)
  );
};

/**
 * The best way through a marking that is as it is asked for.
 * @throws if there is none
 */
export const wayOf = (text: string, sought: Sought): Parse => {
  const { parses } = parsesOf(lexiconFor(sought.hints), markingOf(text));
  const found = parses.find((parse) => isSought(parse, text, sought));
  if (found === undefined) throw new Error(`no way takes ${sought.taken.join(', ')} of ${text}`);
  return found;
};
