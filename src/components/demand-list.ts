import { h, type Markup } from '../markup/node.ts';
import type { DemandRow } from '../schemas/positions.ts';
import { sentence } from '../text/words.ts';
import { basisMark } from './basis-mark.ts';
import { link } from './link.ts';

/** What a list of demands says of one, beside its own words. */
export interface Told {
  /** Anchor on the page. */
  id: string;
  name: string;
  /** Where its finding is reckoned. */
  path: `/${string}`;
  limit: string;
}

const WEIGHTS = [
  ['hard', 'Must'],
  ['strong', 'Should'],
  ['mild', 'Better if'],
] as const satisfies [DemandRow['weight'], string][];

const demandItem = ({ why, note, basis, source }: DemandRow, told: Told): Markup =>
  h(
    'li',
    { id: told.id },
    h('strong', {}, link(told.path, told.name)),
    // Spaces part the words for those that read the text alone.
    ' ',
    h('span', {}, told.limit),
    ' ',
    h(
      'span',
      {},
      sentence(why),
      ' ',
      note !== '' && [h('span', { class: 'quiet' }, sentence(note)), ' '],
      basisMark({ basis, source }),
    ),
  );

/** Everything that a place asks of a part, the weightiest first; each leads to how it is reckoned. */
export const demandList = (
  demands: readonly DemandRow[],
  tell: (demand: DemandRow) => Told,
): Markup[] =>
  WEIGHTS.flatMap(([weight, words]) => {
    const own = demands.filter((demand) => demand.weight === weight);
    return own.length === 0
      ? []
      : h(
          'div',
          {},
          h('h3', {}, words),
          h(
            'ul',
            { class: 'triples' },
            own.map((demand) => demandItem(demand, tell(demand))),
          ),
        );
  });
