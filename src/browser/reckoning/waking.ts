import type { Catalogue } from '../../engine/index.ts';
import { cataloguePart } from '../fetched/catalogue-part.ts';
import { fetchedOnce } from '../fetched/fetched-once.ts';
import { drawingInTurns, type Steps } from '../page/turns.ts';
import { sayNotFetched } from './answer.ts';

/**
 * What reckons weighs far more than all else on a page that shows its answer already, so it is
 * fetched when the visitor first wants something of the page.
 */

/** What reckons with the visitor's numbers, which are in the address. */
export interface Reckoning {
  /** Has the page reckon anew whenever one of its parts asks for it. Called once, before all else. */
  listen?: (update: () => void) => void;
  /** Shows all that the page says for the numbers as they are now, in steps: first the answer. */
  recompute: (catalogue: Catalogue) => Steps;
  /** Writes numbers out as they are understood, save the one that is being typed. */
  showNumbers?: (catalogue: Catalogue) => void;
}

/** How a page has things reckoned, with what that takes fetched on the way. */
export interface Reckoner {
  /** Reckons, or says that what it takes could not be fetched. */
  update: () => void;
  showFields: () => void;
}

/** What a visitor gets to before anything is wanted of the page. */
const WANTED_BY = 'form, summary, button';

/** Parts that a script draws once they are opened. */
const DRAWN = 'details:is(.script-only, .needs-script, #judge-first)';

/**
 * Fetches what reckons once the keyboard or a finger gets to anything that wants it.
 * @param part the slice of the catalogue that it takes
 * @param load fetches the script
 */
export const reckonerOn = (part: string, load: () => Promise<Reckoning>): Reckoner => {
  let isAwake = false;
  const results = document.getElementById('results');
  const draw = drawingInTurns(...(results === null ? [] : [results]));
  const fetched = fetchedOnce(async (): Promise<[Reckoning, Catalogue]> => {
    const [reckoning, catalogue] = await Promise.all([load(), cataloguePart(part)]);
    reckoning.listen?.(update);
    isAwake = true;
    return [reckoning, catalogue];
  });
  const update = (): void => {
    void fetched().then(([{ recompute }, catalogue]) => {
      void draw(recompute(catalogue));
    }, sayNotFetched);
  };
  const showFields = (): void => {
    void fetched().then(
      ([{ showNumbers }, catalogue]) => {
        showNumbers?.(catalogue);
      },
      () => undefined,
    );
  };
  const getReady = ({ target }: Event): void => {
    if (!isAwake && target instanceof Element && target.closest(WANTED_BY) !== null)
      fetched().catch(() => undefined);
  };
  // What is opened before the script is there that draws it; that script sees to it afterwards.
  const drawOpened = ({ target }: Event): void => {
    const opened = target instanceof HTMLDetailsElement && target.open;
    if (!isAwake && opened && target.matches(DRAWN)) update();
  };
  const content = document.querySelector('main');
  content?.addEventListener('focusin', getReady);
  content?.addEventListener('pointerdown', getReady);
  content?.addEventListener('toggle', drawOpened, true);
  return { update, showFields };
};
