import type { Assessment } from '../../engine/index.ts';
import { groundsMarkup } from '../../substitution/grounds.ts';
import type { AnyPart } from '../../substitution/phrases.ts';
import { resultsMarkup } from '../../substitution/results.ts';
import type { Shown } from '../../substitution/shown.ts';
import { byId } from '../page/by-id.ts';
import { drawerIn } from '../page/drawn-place.ts';

/** The ranked stand-ins of a substitution page, and what their findings rest on. */

const results = byId('results', HTMLElement);
const grounds = byId('grounds', HTMLElement);

/** The type whose findings the keyboard stands at. */
const focusedType = (): string | undefined =>
  results.contains(document.activeElement)
    ? document.activeElement?.closest('details')?.closest('li')?.id
    : undefined;

/** Types whose findings stand open. */
export const openTypes = (): Set<string> =>
  new Set(
    [...results.querySelectorAll('details[open]')].flatMap(
      (details) => details.closest('li')?.id ?? [],
    ),
  );

const drawResults = drawerIn(results);
const drawGrounds = drawerIn(grounds);

/** Draws the stand-ins; what stood open stays open, and the keyboard stays where it was. */
export const showStandIns = <P extends AnyPart>(shown: Shown<P>): void => {
  const open = openTypes();
  const focused = focusedType();
  const isOpen = ({ candidate }: Assessment<P>): boolean => open.has(candidate.type);
  drawResults(resultsMarkup(shown, isOpen));
  if (focused !== undefined && focusedType() !== focused) {
    document.getElementById(focused)?.querySelector('summary')?.focus({ preventScroll: true });
  }
};

/** Draws what is asked here, and what the findings rest on. */
export const showGrounds = <P extends AnyPart>(shown: Shown<P>): void => {
  const sourcesOpen = grounds.querySelector('details')?.open ?? false;
  drawGrounds(groundsMarkup(shown));
  grounds.querySelector('details')?.toggleAttribute('open', sourcesOpen);
};

/** Has the page reckon when findings are opened that are not in it yet. */
export const listenForOpening = (update: () => void): void => {
  results.addEventListener(
    'toggle',
    ({ target }) => {
      const opened = target instanceof HTMLDetailsElement && target.open;
      if (opened && target.querySelector('table') === null) update();
    },
    true,
  );
};
