import {
  carriedSetting,
  formatValue,
  useOf,
  type Assessment,
  type CarriedSetting,
  type Habit,
  type KindCircumstances,
  type KindPart,
  type NewTrimmer,
} from '../engine/index.ts';
import { h, type Markup } from '../markup/node.ts';
import { typeRowOf } from './any-kind.ts';
import type { Shown } from './shown.ts';

/** Digits of a resistance that is set with a meter. */
const AS_READ = 4;

/** Digits of how finely a trimmer is set, and of what a turn of it makes: no two are alike. */
const ROUGHLY = 2;

const ohms = (ohm: number, habit?: Habit): string =>
  formatValue(ohm, 'ohm', { ...habit, digits: AS_READ });

const someOhms = (ohm: number, habit?: Habit): string =>
  formatValue(ohm, 'ohm', { ...habit, digits: ROUGHLY });

const turnsOf = (turns: number | undefined, habit?: Habit): string =>
  turns === undefined ? 'not known' : formatValue(turns, 'number', habit);

/** Which way to turn, and how far, from what the new one reads now. */
const goWords = ({ toGo }: CarriedSetting, habit?: Habit): string => {
  if (toGo === undefined) return '';
  const way = toGo < 0 ? 'towards the end in use' : 'away from the end in use';
  return `${turnsOf(Math.abs(toGo), habit)} ${way}`;
};

const COLUMNS = ['Trimmer', 'Total', 'Set it to read', 'Turns from that end', 'Ohms a turn'];

const row = (
  name: string,
  carried: CarriedSetting,
  more: { habit?: Habit | undefined; withGo: boolean },
): Markup => {
  const { total, set, reaches, turns, fromEnd, perTurn, step } = carried;
  const { habit, withGo } = more;
  const finest = step === undefined ? '' : `, within some ${someOhms(step, habit)}`;
  return h(
    'tr',
    {},
    h('th', { scope: 'row' }, name),
    h('td', {}, ohms(total, habit)),
    h('td', {}, reaches ? `${ohms(set, habit)}${finest}` : `${ohms(set, habit)}: beyond its total`),
    h(
      'td',
      {},
      reaches ? `${turnsOf(fromEnd, habit)} of ${turnsOf(turns, habit)}` : 'does not reach',
    ),
    h('td', {}, perTurn === undefined ? 'not known' : someOhms(perTurn, habit)),
    withGo && h('td', {}, reaches ? goWords(carried, habit) : ''),
  );
};

/** In words, what is carried over and between which terminals. */
const carriedInWords = (circumstances: KindCircumstances, habit?: Habit): string => {
  const { 'old-setting': reading, 'old-total': total } = circumstances.conditions;
  const [set, whole] = [reading?.typ ?? NaN, total?.typ ?? NaN];
  if (set > whole)
    return `The old one is said to read ${ohms(set, habit)} of ${ohms(whole, habit)} from end to end, which no trimmer does: give its total as measured, or read both again.`;
  const old = `The old one reads ${ohms(set, habit)} between its wiper and the end in use, of ${ohms(whole, habit)} from end to end`;
  return useOf(circumstances) === 'divider'
    ? `${old}: a ratio of ${formatValue(set / whole, 'fraction', { ...habit, digits: AS_READ })}. All three terminals are wired, so the ratio is carried over: from the wiper to the same end the new one has to read that share of its own total, as measured.`
    : `${old}. Two terminals are wired, so the ohms are carried over: the new one has to read the same between the same two terminals. Join its wiper to the end that is not used.`;
};

const isSaid = (measured: NewTrimmer): boolean =>
  Object.values(measured).some((number) => number !== undefined);

/** The old setting carried over to every stand-in, and to the one that the visitor has measured. */
export const settingMarkup = (
  { catalogue, assessments, habit }: Shown<KindPart>,
  circumstances: KindCircumstances,
  measured: NewTrimmer = {},
): Markup[] => {
  const usable = assessments.filter(({ verdict }) => verdict !== 'keep-out');
  const nameOf = ({ candidate }: Assessment<KindPart>): string =>
    typeRowOf(catalogue, candidate.type)?.short_name ?? candidate.type;
  const [first] = usable;
  const withGo = measured.now !== undefined;
  const own =
    first !== undefined && isSaid(measured)
      ? [row('Yours', carriedSetting(first.candidate, circumstances, measured), { habit, withGo })]
      : [];
  const rows = usable.map((one) =>
    row(
      nameOf(one),
      carriedSetting(one.candidate, circumstances, { ...measured, total: undefined }),
      { habit, withGo },
    ),
  );
  return [
    h('p', {}, carriedInWords(circumstances, habit)),
    usable.length === 0
      ? h('p', {}, 'No trimmer made today fits here as it stands.')
      : h(
          'div',
          {
            class: 'table-scroll',
            tabindex: 0,
            role: 'region',
            'aria-label': 'The old setting carried over',
          },
          h(
            'table',
            {},
            h(
              'thead',
              {},
              h(
                'tr',
                {},
                ...[...COLUMNS, ...(withGo ? ['To go from now'] : [])].map((word) =>
                  h('th', { scope: 'col' }, word),
                ),
              ),
            ),
            h('tbody', {}, ...own, ...rows),
          ),
        ),
  ];
};
