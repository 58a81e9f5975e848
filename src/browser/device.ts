import { given, keepGiven } from './address-bar.ts';
import { byId } from './by-id.ts';
import { hasHabit, listenForHabit } from './habits.ts';
import { reckonerOn } from './reckoning/waking.ts';

/** Brings the page of a device in a use to life: reckons with the visitor's numbers. */

const form = byId('device-numbers', HTMLFormElement);
const { family = '' } = form.dataset;
const { update } = reckonerOn(`devices-${family}`, () => import('./reckoning/device.ts'));

for (const input of form.querySelectorAll('input')) {
  input.readOnly = false;
  input.addEventListener('input', () => {
    keepGiven(input.name, input.value);
    update();
  });
}
form.addEventListener('submit', (event) => {
  event.preventDefault();
});
listenForHabit(update);
if (given.size > 0 || hasHabit()) update();
