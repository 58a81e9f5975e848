import { lineName, type Order } from '../job/index.ts';
import { h, type Element } from '../markup/node.ts';
import { countOf, sentence } from '../text/words.ts';
import { designatorsMarkup } from './designators-view.ts';
import { cardTable } from './table.ts';

const HEADS = ['Buy', 'What', 'Value', 'Rating', 'Size', 'For', 'Notes'];

/** The list of what to buy, above it what of the spares is not understood, and below it what is not settled yet. */
export const orderMarkup = ({ groups, unsettled, rule }: Order): Element[] => [
  ...rule.faults.map((fault) => h('p', { class: 'fault' }, fault)),
  groups.length === 0
    ? h('p', {}, 'Nothing is to be ordered yet: no line of the plan says replace and has its part.')
    : cardTable(
        'What to buy',
        HEADS,
        groups.map((group) => [
          `${String(group.total)} (${String(group.needed)} + ${countOf(group.spares, 'spare')})`,
          group.what,
          [group.value, group.tolerance].filter((text) => text !== '').join(' '),
          [group.volts, group.power].filter((text) => text !== '').join(', '),
          [
            group.style,
            group.pitch && `pitch ${group.pitch}`,
            group.height && `height at most ${group.height}`,
            group.details,
          ]
            .filter((text) => text !== '')
            .join(', '),
          designatorsMarkup(group.designators),
          group.notes.join('; '),
        ]),
      ),
  ...(unsettled.length === 0
    ? []
    : [
        h('h3', {}, 'Not settled yet'),
        h(
          'ul',
          {},
          unsettled.map(({ planned, reason }) =>
            h('li', {}, `${lineName(planned.line)}: ${sentence(reason)}`),
          ),
        ),
      ]),
];
