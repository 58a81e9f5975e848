import { verdictMark } from '../components/verdict-shape.ts';
import { decidingFinding } from '../engine/index.ts';
import {
  foundOf,
  presetOf,
  shortenDesignators,
  standInWords,
  whyWords,
  type LineFields,
  type PlannedLine,
} from '../job/index.ts';
import { h, type Element } from '../markup/node.ts';
import { capital, sentence } from '../text/words.ts';
import { answersMarkup } from './answers-view.ts';
import { lineFieldsMarkup } from './line-fields-view.ts';
import { oldWords } from './old-words.ts';
import { remarksOf, type RemarkWords } from './remarks.ts';

/** Lines of a plan that are alike in all that matters. */
export interface PlanGroup {
  ids: readonly string[];
  designators: readonly string[];
  planned: PlannedLine;
}

const keyOf = ({ line, part, decision, standIn, doubled }: PlannedLine): string =>
  JSON.stringify([
    { ...line, id: '', designators: '', note: '', fitted: {}, rest: {} },
    // What kind of part it is, is asked by its letters.
    part.kind === '' ? part.designators[0] : '',
    foundOf(line, part.designators),
    // Trimmers that were read apart are set apart.
    presetOf(line, part.designators),
    decision,
    standIn?.candidate,
    doubled,
  ]);

/** Equal parts together, in the order of the first of each. */
export const planGroups = (lines: readonly PlannedLine[]): PlanGroup[] =>
  [...Map.groupBy(lines, keyOf).values()].flatMap((alike) => {
    const [planned] = alike;
    if (planned === undefined) return [];
    const designators = alike.flatMap(({ part }) => part.designators);
    return [{ ids: alike.map(({ line }) => line.id), designators, planned }];
  });

/** What a plan is put into words with. */
export interface PlanWords extends RemarkWords {
  /** Address of the substitution page with the numbers of this line. */
  pageOf: (planned: PlannedLine) => string;
  /** What may be said of the line besides; nothing where its position is not known. */
  fieldsOf: (planned: PlannedLine) => LineFields | undefined;
}

const DECISIONS = [
  ['judge', 'as the rules say'],
  ['replace', 'replace'],
  ['test', 'test'],
  ['leave', 'leave'],
] as const;

const alternatives = (
  { planned }: PlanGroup,
  { typeName, habit }: PlanWords,
): Element | undefined => {
  const all = planned.worked?.rest().standIns ?? [];
  // Values on offer would be those of a usual part in such a place, not of this one.
  if (all.length === 0 || planned.missing.includes('value')) return undefined;
  return h(
    'ol',
    { class: 'rows' },
    all.map((one, index) => {
      const finding = decidingFinding(one);
      return h(
        'li',
        {},
        verdictMark(one.verdict),
        ` ${standInWords(one, typeName, habit)}. `,
        finding === undefined ? '' : `${sentence(whyWords(finding, planned.part.family, habit))} `,
        h('button', { type: 'button', 'data-take': index }, 'Take this'),
      );
    }),
  );
};

/** What is asked of a line first, with the answers that are offered. */
const askMarkup = ({ planned }: PlanGroup, { askOf }: PlanWords): Element | undefined => {
  const ask = askOf(planned);
  return ask === undefined
    ? undefined
    : h('div', {}, h('p', {}, h('strong', {}, ask.question)), answersMarkup(ask));
};

/** Fields of a line; a script makes them when they are opened. */
const fieldsMarkup = (
  { planned }: PlanGroup,
  { fieldsOf }: PlanWords,
  isOpen: boolean,
): Element | undefined => {
  const fields = fieldsOf(planned);
  return fields === undefined
    ? undefined
    : h(
        'details',
        { 'data-fields': true, open: isOpen },
        h('summary', {}, 'Voltages, conditions and readings of these parts'),
        isOpen && lineFieldsMarkup(fields),
      );
};

/** All that an opened line of the plan shows, with what can be decided there. */
export const planDetail = (group: PlanGroup, words: PlanWords, fieldsOpen: boolean): Element => {
  const { line, worked, state, chosenBy } = group.planned;
  const key = line.id;
  return h(
    'div',
    { class: 'plan-detail' },
    worked?.judgement.reasons.map(({ why, working }) =>
      h('p', { class: 'small' }, sentence(working === '' ? why : `${why} (${working})`)),
    ),
    askMarkup(group, words),
    h(
      'div',
      { class: 'actions' },
      h(
        'label',
        {},
        'Decision ',
        h(
          'select',
          { 'data-set': 'decision' },
          DECISIONS.map(([id, name]) =>
            h('option', { value: id, selected: line.decision === id }, name),
          ),
        ),
      ),
      h(
        'label',
        {},
        'Reason ',
        h('input', {
          'data-set': 'decisionReason',
          id: `reason-${key}`,
          value: line.decisionReason || undefined,
        }),
      ),
    ),
    line.choice !== null &&
      h(
        'div',
        { class: 'actions' },
        h(
          'label',
          {},
          'Why this part ',
          h('input', { 'data-set': 'choiceReason', value: line.choice.reason || undefined }),
        ),
        h(
          'label',
          { class: 'tick' },
          h('input', { type: 'checkbox', 'data-set': 'locked', checked: line.choice.locked }),
          ' Keep it whatever ranks first',
        ),
        h('button', { type: 'button', 'data-drop': 'choice' }, 'Back to what ranks first'),
      ),
    chosenBy === 'visitor' && h('p', { class: 'small' }, 'Chosen by you.'),
    alternatives(group, words),
    fieldsMarkup(group, words, fieldsOpen),
    state === 'assessed' &&
      h('p', {}, h('a', { href: words.pageOf(group.planned) }, 'All findings, with these numbers')),
  );
};

/** One line of the plan: what is there, what to do, what goes in, and the finding that decides. */
export const planRow = (
  group: PlanGroup,
  words: PlanWords,
  { isOpen, fieldsOpen }: { isOpen: boolean; fieldsOpen: boolean },
): Element => {
  const { line, part, decision, standIn, state, missing } = group.planned;
  const finding = standIn === undefined ? undefined : decidingFinding(standIn);
  return h(
    'li',
    { class: 'plan-line', 'data-group': line.id },
    h(
      'details',
      { open: isOpen },
      h(
        'summary',
        {},
        h(
          'strong',
          {},
          shortenDesignators(group.designators) || line.designators || 'No designator',
        ),
        ' ',
        h('span', { class: 'quiet' }, oldWords(group.planned, words.typeName)),
        ' ',
        h('span', { class: 'decision' }, capital(decision)),
        standIn === undefined
          ? decision === 'replace' &&
              state === 'assessed' &&
              !missing.includes('value') && [' ', verdictMark('keep-out', 'nothing serves here')]
          : [
              decision === 'replace' ? ' ' : h('span', { class: 'quiet' }, '; if replaced: '),
              verdictMark(standIn.verdict),
              ` ${standInWords(standIn, words.typeName, words.habit)}`,
            ],
      ),
      isOpen ? planDetail(group, words, fieldsOpen) : '',
    ),
    finding !== undefined &&
      h('p', { class: 'small quiet' }, sentence(whyWords(finding, part.family, words.habit))),
    remarksOf(group.planned, words).map(({ text, acts }) =>
      h('p', { class: acts ? 'small remark' : 'small quiet' }, text),
    ),
  );
};
