import { verdictMark } from '../components/verdict-shape.ts';
import { decidingFinding } from '../engine/index.ts';
import {
  shortenDesignators,
  standInWords,
  whyWords,
  type Order,
  type Plan,
  type PlannedLine,
} from '../job/index.ts';
import { h, type Element, type Markup } from '../markup/node.ts';
import { capital, sentence } from '../text/words.ts';
import { oldWords } from './old-words.ts';
import { orderMarkup } from './order-view.ts';
import { remarksOf, type RemarkWords } from './remarks.ts';
import { cardTable } from './table.ts';

const whyOf = (planned: PlannedLine, words: RemarkWords): string[] => [
  ...(planned.worked?.judgement.reasons.slice(0, 1).map(({ why }) => sentence(why)) ?? []),
  ...(planned.line.decisionReason === '' ? [] : [sentence(planned.line.decisionReason)]),
  ...remarksOf(planned, words).map(({ text }) => text),
];

const standInOf = ({ standIn, decision, part }: PlannedLine, words: RemarkWords): Markup[] => {
  if (standIn === undefined) return [''];
  const finding = decidingFinding(standIn);
  return [
    decision === 'replace' ? '' : 'if replaced: ',
    verdictMark(standIn.verdict),
    ` ${standInWords(standIn, words.typeName, words.habit)}. `,
    finding === undefined ? '' : sentence(whyWords(finding, part.family, words.habit)),
  ];
};

/** The plan and the order of a board as they stand, for readers without scripts. */
export const sampleMarkup = (plan: Plan, order: Order, words: RemarkWords): Element[] => [
  h('h3', {}, 'Plan'),
  cardTable(
    'Plan of the invented board',
    ['Parts', 'Old part', 'Decision', 'What goes in', 'Why'],
    plan.lines.map((planned) => {
      const { part, decision } = planned;
      return [
        shortenDesignators(part.designators),
        oldWords(planned, words.typeName),
        h('strong', {}, capital(decision)),
        h('span', {}, standInOf(planned, words)),
        whyOf(planned, words).join(' '),
      ];
    }),
  ),
  h('h3', {}, 'Order list'),
  ...orderMarkup(order),
];
