import { fetchedOnce } from '../fetched/fetched-once.ts';
import type { Adding } from '../job/adding-form.ts';
import { byId } from '../page/by-id.ts';
import { foldedIn } from '../page/folded.ts';

/** The part of a substitution page that adds what it is about to a job. */

const folded = foldedIn(byId('add', HTMLDetailsElement));

/** What keeps jobs is fetched when somebody wants to add to one. */
const fetchedForm = fetchedOnce(() => import('../job/adding-form.ts'));

/** Shows the form where it is open, with what may go in for the numbers as they are now. */
export const showAdding = (adding: Adding): void => {
  if (!folded.isDrawn()) return;
  fetchedForm().then(
    ({ showForm }) => {
      showForm(adding);
    },
    () => {
      byId('added', HTMLElement).textContent =
        'What keeps jobs could not be fetched. Try again once the site answers.';
    },
  );
};

/** Has the page reckon when the form is opened. */
export const listenForAdding = (update: () => void): void => {
  folded.listen(update);
};
