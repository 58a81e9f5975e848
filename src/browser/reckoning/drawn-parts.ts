import { resolveSituation } from '../../engine/index.ts';
import { toDom } from '../../markup/to-dom.ts';
import type { Asked } from '../../substitution/address.ts';
import type { Shown } from '../../substitution/shown.ts';
import { cataloguePart } from '../fetched/catalogue-part.ts';
import { fetchedOnce } from '../fetched/fetched-once.ts';
import { byId } from '../page/by-id.ts';

/** The part of a substitution page that draws the old part beside the first stand-in. */

const place = byId('drawn', HTMLDetailsElement);
const drawn = byId('drawn-parts', HTMLElement);

/** What draws parts, and its data. */
const drawing = fetchedOnce(() =>
  Promise.all([import('../../substitution/drawn.ts'), cataloguePart('drawings')]),
);

/** Shows both to one scale, once it is opened; what draws them is fetched only then. */
export const showDrawn = ({ catalogue, assessments }: Shown, { request }: Asked): void => {
  if (!place.open) return;
  const [first] = assessments;
  if (first === undefined || first.verdict === 'keep-out') {
    drawn.textContent = 'No part made today fits here.';
    return;
  }
  const { original } = resolveSituation(catalogue, request);
  drawing().then(
    ([{ drawnBeside }, { typeLooks, markings }]) => {
      const all = { ...catalogue, typeLooks, markings };
      drawn.replaceChildren(toDom(drawnBeside(all, original, first, drawn.clientWidth)));
    },
    () => {
      drawn.textContent = 'What the drawing needs could not be fetched.';
    },
  );
};

/** Has the page reckon when the drawing is opened. */
export const listenForDrawing = (update: () => void): void => {
  place.addEventListener('toggle', () => {
    if (place.open) update();
  });
};
