import './older-browsers.ts';
import { given } from './address/address-bar.ts';
import { listenForSought } from './address/sought.ts';
import { hasHabit, listenForHabit } from './kept/habits.ts';
import { byId } from './page/by-id.ts';
import { copyLinkButton } from './page/copy-link.ts';
import { enlivenNumbers, family } from './reckoning/number-fields.ts';
import { reckonerOn } from './reckoning/waking.ts';

/** Brings the page of a device in a use to life: reckons with the visitor's numbers. */

const { update, showFields } = reckonerOn(
  `devices-${family}`,
  () => import('./reckoning/device.ts'),
);

enlivenNumbers({ update, showFields });
listenForSought(update);
copyLinkButton(byId('copy-link', HTMLButtonElement), byId('copied', HTMLElement));
listenForHabit(update);
if (given.size > 0 || hasHabit()) update();
