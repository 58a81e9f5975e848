import type { Catalogue } from '../engine/index.ts';
import type { Ask } from './ask.ts';
import { askKind } from './kinds.ts';
import type { PlannedLine } from './planned.ts';

/** One question, with every line that it is asked of. */
export interface Question extends Ask {
  key: string;
  lines: readonly { id: string; designators: string }[];
}

/**
 * What is asked of a line first: later answers follow from it, as the type is often told by the
 * marking. Nothing where the line is understood.
 * @param catalogue with the letters of designators
 */
export const firstAsk = (catalogue: Catalogue, { part, line }: PlannedLine): Ask | undefined =>
  part.kind === '' && line.marking + line.value + line.type + line.designators !== ''
    ? (part.asks?.find(({ about }) => about === 'marking') ?? askKind(catalogue, part.designators))
    : part.asks?.[0];

/** Questions of all lines, those that are alike asked once. */
export const questionsOf = (
  catalogue: Catalogue,
  lines: readonly PlannedLine[],
): readonly Question[] => {
  const asked = new Map<string, { ask: Ask; lines: { id: string; designators: string }[] }>();
  for (const planned of lines) {
    const ask = firstAsk(catalogue, planned);
    if (ask === undefined) continue;
    const key = JSON.stringify(ask);
    const { id, designators } = planned.line;
    const alike = asked.get(key) ?? { ask, lines: [] };
    alike.lines.push({ id, designators });
    asked.set(key, alike);
  }
  return [...asked].map(([key, { ask, lines: of }]) => ({ ...ask, key, lines: of }));
};
