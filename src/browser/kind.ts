import './older-browsers.ts';
import { given } from './address/address-bar.ts';
import { listenForSought } from './address/sought.ts';
import { hasHabit, listenForHabit } from './kept/habits.ts';
import { byId } from './page/by-id.ts';
import { copyLinkButton } from './page/copy-link.ts';
import { listenForNewTrimmer } from './reckoning/new-trimmer.ts';
import { enlivenNumbers, position } from './reckoning/number-fields.ts';
import { reckonerOn } from './reckoning/waking.ts';

/** Brings a page about stand-ins of a kind besides capacitors to life. */

const { update, showFields } = reckonerOn(position, () => import('./reckoning/kind.ts'));

enlivenNumbers({ update, showFields });
listenForNewTrimmer(update);
listenForSought(update);
copyLinkButton(byId('copy-link', HTMLButtonElement), byId('copied', HTMLElement));
listenForHabit(update);
if (given.size > 0 || hasHabit()) update();
