import { chooseHabit, habit, habitChoices, type HabitKey } from './habits.ts';

/** Brings up the choice of how numbers are written, which needs script. */

const isKey = (name: string): name is HabitKey => Object.hasOwn(habitChoices, name);

const group = document.querySelector<HTMLElement>('#habits');
for (const select of group?.querySelectorAll('select') ?? []) {
  const { name } = select;
  if (!isKey(name)) continue;
  select.value = habit()[name] ?? habitChoices[name][0];
  select.addEventListener('change', () => {
    chooseHabit(name, select.value);
  });
}
if (group !== null) group.hidden = false;
