import { href } from '../../components/links.ts';
import type { Catalogue } from '../../engine/index.ts';
import { lineFieldsMarkup } from '../../job-view/line-fields-view.ts';
import {
  planDetail,
  planGroups,
  planRow,
  type PlanGroup,
  type PlanWords,
} from '../../job-view/plan-view.ts';
import { wantsAttention } from '../../job-view/remarks.ts';
import {
  choiceOf,
  firstAsk,
  pageQuery,
  questionsOf,
  withField,
  withSign,
  type Decision,
  type Line,
  type PlannedLine,
} from '../../job/index.ts';
import { toDom } from '../../markup/to-dom.ts';
import { countOf } from '../../text/words.ts';
import { habit } from '../kept/habits.ts';
import { byId } from '../page/by-id.ts';
import { fieldsOf } from './fields-of.ts';
import { drawAround, drawWhenFree, isTyping } from './kept-focus.ts';
import { longList } from './long-list.ts';
import { nameOf } from './names.ts';
import { answerOf, tellHowMany } from './questions-part.ts';
import { changeLines, current } from './state.ts';

/** The plan: what is to be done with every part, opened line by line. */

const DECISIONS: readonly Decision[] = ['judge', 'replace', 'test', 'leave'];

const list = byId('plan-lines', HTMLElement);
const onlyOpen = byId('only-attention', HTMLInputElement);
const rows = longList(list, {
  around: (draw) => {
    drawAround(list, draw);
  },
  holds: isTyping,
});
const open = new Set<string>();
let groups: readonly PlanGroup[] = [];
let lines: readonly PlannedLine[] = [];
let common: Catalogue | undefined;
/** Lines whose fields are open. */
const openFields = new Set<string>();

/** Where the stand-ins of a part in its place stand, by its family. */
const pathOf = ({ part }: PlannedLine): `/${string}` => {
  const [type, position] = [part.type ?? '', part.position ?? ''].map(encodeURIComponent);
  const place = `${type ?? ''}/in/${position ?? ''}/`;
  if (part.family === 'device') return `/devices/${place}`;
  const plural = common?.kinds[part.kind]?.plural;
  return part.family === 'kind' && plural !== undefined
    ? `/${plural}/${place}`
    : `/replace/${place}`;
};

/** The page of all findings, with all that is known of a line. */
const pageOf = (planned: PlannedLine): string => {
  const unit = common?.kinds[planned.part.kind]?.unit;
  const written = pageQuery(planned, current().whole, unit).toString();
  return href(pathOf(planned)) + (written === '' ? '' : `?${written}`);
};

const words = (): PlanWords => ({
  typeName: (id) => nameOf('type', id),
  askOf: (planned) => (common === undefined ? undefined : firstAsk(common, planned)),
  common,
  fieldsOf,
  pageOf,
  habit: habit(),
});

const groupOf = (target: EventTarget | null): PlanGroup | undefined => {
  const id = target instanceof Element ? target.closest<HTMLElement>('[data-group]') : null;
  return groups.find(({ planned }) => planned.line.id === id?.dataset.group);
};

/** Notes which lines stand open: the event that tells of one may come only after the line is drawn anew. */
const noteOpen = (): void => {
  for (const details of list.querySelectorAll<HTMLDetailsElement>('[data-group] > details')) {
    const id = details.parentElement?.dataset['group'] ?? '';
    if (details.open) open.add(id);
    else open.delete(id);
  }
};

/** How many lines there are, and in how many groups where some of them ask the same. */
const linesInWords = (all: number, grouped: number): string =>
  grouped === all
    ? countOf(all, 'line')
    : `${countOf(all, 'line')} in ${countOf(grouped, 'group')}`;

const drawNow = (): void => {
  noteOpen();
  const said = words();
  groups = planGroups(lines);
  const toLookAt = groups.filter(({ planned }) => wantsAttention(planned, said));
  const wanted = onlyOpen.checked ? toLookAt : groups;
  rows.show({
    count: wanted.length,
    at: (index) => {
      const group = wanted[index];
      if (group === undefined) throw new RangeError(`no group ${String(index)}`);
      const { id } = group.planned.line;
      const row = planRow(group, said, { isOpen: open.has(id), fieldsOpen: openFields.has(id) });
      return { key: JSON.stringify(row), make: () => toDom(row) };
    },
  });
  byId('plan-said', HTMLElement).textContent =
    lines.length === 0
      ? 'No parts yet.'
      : `${linesInWords(lines.length, groups.length)}, ${String(toLookAt.length)} to look at.`;
};

const draw = drawWhenFree(list, drawNow);

/** Shows a plan. */
export const showPlan = (planned: readonly PlannedLine[], catalogue: Catalogue): void => {
  lines = planned;
  common = catalogue;
  const asked = questionsOf(catalogue, planned).length;
  tellHowMany(byId('plan-asks', HTMLElement), asked, 'to answer, all in one place');
  draw();
};

const settle = (target: HTMLInputElement | HTMLSelectElement, line: Line): Line => {
  const { value, dataset } = target;
  if (dataset.set === 'decision') {
    return { ...line, decision: DECISIONS.find((one) => one === value) ?? 'judge' };
  }
  if (dataset.set === 'decisionReason') return { ...line, decisionReason: value };
  if (line.choice === null) return line;
  if (dataset.set === 'choiceReason') return { ...line, choice: { ...line.choice, reason: value } };
  const locked = target instanceof HTMLInputElement && target.checked;
  return dataset.set === 'locked' ? { ...line, choice: { ...line.choice, locked } } : line;
};

/** The fields of a line are drawn when they are opened, and gone when they are closed. */
const onFields = (fields: HTMLDetailsElement, { planned }: PlanGroup): void => {
  const { id } = planned.line;
  if (!fields.open) {
    openFields.delete(id);
    for (const fieldset of fields.querySelectorAll('fieldset')) fieldset.remove();
    return;
  }
  openFields.add(id);
  const known = fieldsOf(planned);
  if (known !== undefined && fields.querySelector('fieldset') === null)
    fields.append(...lineFieldsMarkup(known).map((one) => toDom(one)));
};

/** So is what is said of a line: a closed row may stay for long, and is filled afresh when it is opened. */
const onDetail = (row: HTMLDetailsElement, group: PlanGroup): void => {
  const { id } = group.planned.line;
  if (!row.open) {
    open.delete(id);
    row.querySelector('.plan-detail')?.remove();
    return;
  }
  open.add(id);
  if (row.querySelector('.plan-detail') === null)
    row.append(toDom(planDetail(group, words(), openFields.has(id))));
};

const onToggle = ({ target }: Event): void => {
  const group = groupOf(target);
  if (group === undefined || !(target instanceof HTMLDetailsElement)) return;
  if (target.dataset['fields'] === undefined) onDetail(target, group);
  else onFields(target, group);
};

/** A line with what was written, ticked or chosen of it in the plan. */
const written = (target: HTMLInputElement | HTMLSelectElement, line: Line): Line => {
  const { fieldKey, sign } = target.dataset;
  if (fieldKey !== undefined) return withField(line, fieldKey, target.value);
  return sign !== undefined && target instanceof HTMLInputElement
    ? withSign(line, sign, target.checked)
    : settle(target, line);
};

const onChange = ({ target }: Event): void => {
  const group = groupOf(target);
  if (group === undefined) return;
  if (!(target instanceof HTMLInputElement || target instanceof HTMLSelectElement)) return;
  changeLines(new Set(group.ids), (line) => written(target, line));
};

/** An answer, a choice that is let go, a stand-in that is taken. */
const onClick = ({ target }: Event): void => {
  const group = groupOf(target);
  if (group === undefined || !(target instanceof HTMLButtonElement)) return;
  const set = (own: (line: Line) => Partial<Line>): void => {
    changeLines(new Set(group.ids), (line) => ({ ...line, ...own(line) }));
  };
  const ask = words().askOf(group.planned);
  const answer = ask === undefined ? undefined : answerOf(target, ask);
  if (answer !== undefined) set(() => answer.set);
  if (target.dataset.drop !== undefined) set(() => ({ choice: null }));
  const taken = group.planned.worked?.rest().standIns[Number(target.dataset.take ?? 'none')];
  if (taken !== undefined)
    set(({ choice }) => ({ choice: choiceOf(taken, choice?.reason ?? '', false) }));
};

/** Makes the plan work. */
export const startPlan = (): void => {
  onlyOpen.addEventListener('change', draw);
  list.addEventListener('toggle', onToggle, true);
  list.addEventListener('change', onChange);
  list.addEventListener('click', onClick);
};
