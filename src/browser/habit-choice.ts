import { h, type Markup } from '../markup/node.ts';
import { chooseHabit, habit, habitChoices, type HabitKey } from './kept/habits.ts';
import { atTheFoot } from './page/at-the-foot.ts';

/** Draws the choice of how numbers are written, which needs script. */

const WORDS: Readonly<Record<HabitKey, string>> = {
  capacitance: 'Farads',
  decimal: 'Decimal sign',
  ohm: 'Ohms',
};

/** What each way looks like. */
const EXAMPLES: Readonly<Record<(typeof habitChoices)[HabitKey][number], string>> = {
  nF: '4.7 nF, 47 nF',
  'pF-uF': '4700 pF, 0.047 µF',
  point: 'point: 4.7',
  comma: 'comma: 4,7',
  symbol: '4.7 kΩ',
  letter: '4k7',
};

const isKey = (name: string): name is HabitKey => Object.hasOwn(habitChoices, name);

const choice = (name: HabitKey): Markup =>
  h(
    'span',
    {},
    h('label', { for: `habit-${name}` }, WORDS[name]),
    h(
      'select',
      { id: `habit-${name}`, name, autocomplete: 'off' },
      habitChoices[name].map((value) =>
        h('option', { value, selected: value === habit()[name] }, EXAMPLES[value]),
      ),
    ),
  );

const group = atTheFoot(
  h(
    'details',
    { class: 'habits', id: 'habits' },
    h('summary', {}, 'How numbers are written'),
    h('p', {}, 'For what is worked out in this browser, and kept in it. Any way may be typed.'),
    h('p', { class: 'habit-choices' }, Object.keys(habitChoices).filter(isKey).map(choice)),
  ),
);
for (const select of group.querySelectorAll('select')) {
  select.addEventListener('change', () => {
    if (isKey(select.name)) chooseHabit(select.name, select.value);
  });
}
