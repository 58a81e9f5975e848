import type { Catalogue } from '../../engine/index.ts';
import type { Line } from '../model/job.ts';
import { lineName } from '../model/line-name.ts';
import type { Ask, AskChoice } from '../understanding/ask.ts';
import { askKind, isKnownKind, usualKind } from '../understanding/kinds.ts';
import type { PlannedLine } from './planned.ts';

/** One question, with every line that it is asked of. */
export interface Question extends Ask {
  key: string;
  /** Each with what is printed on its part, or said of it in place of that. */
  lines: readonly { id: string; name: string; marked: string }[];
}

/**
 * Whether the letters of the designators usually stand for another kind than that which the marking
 * alone tells: `100k` at RV1 is read as a resistor, and is a trimmer. What the list itself says holds.
 */
const contradicts = (
  catalogue: Catalogue,
  { part, line }: Pick<PlannedLine, 'part' | 'line'>,
): boolean => {
  const usual = usualKind(catalogue, part.designators);
  return (
    !part.isKindSaid && line.kind + line.type === '' && usual !== undefined && usual !== part.kind
  );
};

/**
 * What is asked of a line first: later answers follow from it, as the type is often told by the
 * marking. Nothing where the line is understood.
 * @param catalogue with the letters of designators
 */
export const firstAsk = (catalogue: Catalogue, { part, line }: PlannedLine): Ask | undefined => {
  // A board has hundreds of resistors; what is left alone needs no stand-in, so nothing is asked.
  const isLeft = line.decision === 'leave' && part.family !== 'capacitor' && part.kind !== '';
  if (isLeft) return undefined;
  const isSilent = line.marking + line.value + line.type + line.designators === '';
  if (part.kind === '' && !isSilent) {
    const usual = usualKind(catalogue, part.designators);
    // Where a marking may be one of another kind than is usual, the kind says how it is read.
    const isUsual = ({ set }: AskChoice): boolean => usual === undefined || set.kind === usual;
    const marking = part.asks?.find(({ about }) => about === 'marking');
    return marking?.choices.every(isUsual) === true
      ? marking
      : askKind(catalogue, part.designators);
  }
  if (!isSilent && contradicts(catalogue, { part, line }))
    return askKind(catalogue, part.designators);
  return part.kind === '' || isKnownKind(catalogue, part.kind)
    ? part.asks?.[0]
    : askKind(catalogue, part.designators, part.kind);
};

/** Questions that share this are asked once; of types the likeliest has to be the same. */
const keyOf = ({ about, question, choices }: Ask): string =>
  JSON.stringify(about === 'type' ? [question, choices[0]?.set] : [question, choices]);

/** What is printed on a part, or else its value, unless the line is called by it. */
const marked = (line: Line): string => {
  const said = line.marking.trim() === '' ? line.value : line.marking;
  return said === lineName(line) ? '' : said;
};

/** The answers that may be given for either. */
const shared = (one: Ask, other: Ask): Ask => {
  const labels = new Set(other.choices.map(({ label }) => label));
  return { ...one, choices: one.choices.filter(({ label }) => labels.has(label)) };
};

/** Questions of all lines, those that are alike asked once. */
export const questionsOf = (
  catalogue: Catalogue,
  lines: readonly PlannedLine[],
): readonly Question[] => {
  const asked = new Map<string, { ask: Ask; lines: Question['lines'][number][] }>();
  for (const planned of lines) {
    const ask = firstAsk(catalogue, planned);
    if (ask === undefined) continue;
    const key = keyOf(ask);
    const alike = asked.get(key) ?? { ask, lines: [] };
    const { line } = planned;
    alike.lines.push({ id: line.id, name: lineName(line), marked: marked(line) });
    asked.set(key, { ask: shared(alike.ask, ask), lines: alike.lines });
  }
  return [...asked].map(([key, { ask, lines: of }]) => ({ ...ask, key, lines: of }));
};
