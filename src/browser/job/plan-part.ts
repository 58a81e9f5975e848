import { href } from '../../components/links.ts';
import { choiceOf, type PlannedLine } from '../../job/index.ts';
import type { Decision, Line } from '../../job/model.ts';
import {
  planDetail,
  planGroups,
  planRow,
  wantsAttention,
  type PlanGroup,
  type PlanWords,
} from '../../job-view/plan-view.ts';
import { toDom } from '../../markup/to-dom.ts';
import { guidelineKey, partKeys } from '../../substitution/address.ts';
import { countOf } from '../../text/words.ts';
import { byId } from '../by-id.ts';
import { habit } from '../habits.ts';
import { nameOf } from './names.ts';
import { changeLines, current } from './state.ts';

/** The plan: what is to be done with every part, opened line by line. */

const MOST_SHOWN = 300;
const DECISIONS: readonly Decision[] = ['judge', 'replace', 'test', 'leave'];

const list = byId('plan-lines', HTMLElement);
const onlyOpen = byId('only-attention', HTMLInputElement);
const open = new Set<string>();
let groups: readonly PlanGroup[] = [];
let lines: readonly PlannedLine[] = [];

/** The substitution page with all that is said of a line. */
const pageOf = ({ line }: PlannedLine): string => {
  const { whole } = current();
  const query = new URLSearchParams(
    Object.entries({
      [partKeys.capacitance]: line.value,
      [partKeys.tolerance]: line.tolerance,
      [partKeys.ratedVoltage]: line.volts,
      [partKeys.age]: line.found.age,
      [guidelineKey]: whole.guideline,
      ...whole.conditions,
      ...line.conditions,
    }).filter(([, text]) => text.trim() !== ''),
  );
  return `${href(`/replace/${encodeURIComponent(line.type)}/in/${encodeURIComponent(line.position)}/`)}?${query.toString()}`;
};

const words = (): PlanWords => ({
  typeName: (id) => nameOf('type', id),
  pageOf,
  habit: habit(),
});

const groupOf = (target: EventTarget | null): PlanGroup | undefined => {
  const id = target instanceof Element ? target.closest<HTMLElement>('[data-group]') : null;
  return groups.find(({ planned }) => planned.line.id === id?.dataset.group);
};

const draw = (): void => {
  groups = planGroups(lines);
  const wanted = onlyOpen.checked
    ? groups.filter(({ planned }) => wantsAttention(planned))
    : groups;
  const focused = document.activeElement;
  // What is being typed in may not be replaced; the plan is drawn once it is left.
  if (focused instanceof HTMLInputElement && list.contains(focused) && focused.type !== 'checkbox')
    return;
  list.replaceChildren(
    ...wanted
      .slice(0, MOST_SHOWN)
      .map((group) => toDom(planRow(group, words(), open.has(group.planned.line.id)))),
  );
  const attention = groups.filter(({ planned }) => wantsAttention(planned)).length;
  const more = wanted.length - MOST_SHOWN;
  byId('plan-said', HTMLElement).textContent =
    lines.length === 0
      ? 'No parts yet.'
      : `${countOf(lines.length, 'line')} in ${countOf(groups.length, 'group')}, ${String(attention)} to look at.` +
        (more > 0
          ? ` The first ${String(MOST_SHOWN)} groups stand here; ${String(more)} more are planned as well.`
          : '');
};

/** Shows a plan. */
export const showPlan = (planned: readonly PlannedLine[]): void => {
  lines = planned;
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

/** Makes the plan work. */
export const startPlan = (): void => {
  onlyOpen.addEventListener('change', draw);
  list.addEventListener(
    'toggle',
    ({ target }) => {
      const group = groupOf(target);
      if (group === undefined || !(target instanceof HTMLDetailsElement)) return;
      const { id } = group.planned.line;
      if (target.open) {
        open.add(id);
        if (target.querySelector('.plan-detail') === null)
          target.append(toDom(planDetail(group, words())));
      } else open.delete(id);
    },
    true,
  );
  list.addEventListener('change', ({ target }) => {
    const group = groupOf(target);
    if (group === undefined) return;
    if (!(target instanceof HTMLInputElement || target instanceof HTMLSelectElement)) return;
    changeLines(new Set(group.ids), (line) => settle(target, line));
  });
  list.addEventListener('click', ({ target }) => {
    const group = groupOf(target);
    if (group === undefined || !(target instanceof HTMLButtonElement)) return;
    if (target.dataset.drop !== undefined) {
      changeLines(new Set(group.ids), (line) => ({ ...line, choice: null }));
    }
    const taken = group.planned.worked?.standIns[Number(target.dataset.take ?? 'none')];
    if (taken !== undefined)
      changeLines(new Set(group.ids), (line) => ({
        ...line,
        choice: choiceOf(taken, line.choice?.reason ?? '', false),
      }));
  });
  list.addEventListener('focusout', () => {
    setTimeout(draw);
  });
};
