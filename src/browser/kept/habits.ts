import type { Habit } from '../../engine/index.ts';
import { keepText, keptText } from './kept-text.ts';

/** How this reader likes numbers to be written: kept on this device, obeyed by what scripts draw. */

const KEY = 'habit';

/** The choices, the first of each being what pages are built with. */
export const habitChoices = {
  capacitance: ['nF', 'pF-uF'],
  decimal: ['point', 'comma'],
  ohm: ['symbol', 'letter'],
} as const satisfies { [Key in keyof Habit]?: readonly Habit[Key][] };
export type HabitKey = keyof typeof habitChoices;

/** What was kept, as far as it is one of the choices; it may have been written by anybody. */
const readHabit = (kept: string): Habit => {
  const given = new URLSearchParams(kept);
  const chosen = <Choice extends string>(key: HabitKey, choices: readonly Choice[]) => {
    const choice = choices.find((one) => one === given.get(key));
    return choice === undefined || choice === choices[0] ? {} : { [key]: choice };
  };
  return {
    ...chosen('capacitance', habitChoices.capacitance),
    ...chosen('decimal', habitChoices.decimal),
    ...chosen('ohm', habitChoices.ohm),
  };
};

let current = readHabit(keptText(KEY));
const listeners: (() => void)[] = [];

/** How numbers are to be written now. */
export const habit = (): Habit => current;

/** Whether numbers are to be written otherwise than the page was built. */
export const hasHabit = (): boolean => Object.keys(current).length > 0;

/** Calls back whenever another way is chosen. */
export const listenForHabit = (listener: () => void): void => {
  listeners.push(listener);
};

/** Takes a choice, keeps it on this device, and tells those that listen. */
export const chooseHabit = (key: HabitKey, choice: string): void => {
  const all = new URLSearchParams(Object.entries(current));
  all.set(key, choice);
  current = readHabit(all.toString());
  keepText(KEY, new URLSearchParams(Object.entries(current)).toString());
  for (const listener of listeners) listener();
};
