import { byId } from '../page/by-id.ts';

const answer = byId('answer', HTMLElement);

/** Writes the answer of a page about stand-ins; anew only where it changes, since that is read out. */
export const showAnswer = (words: string): void => {
  if (answer.textContent !== words) answer.textContent = words;
};

/** Says that the page could not reckon; what was typed stays. */
export const sayNotFetched = (): void => {
  answer.textContent =
    'The data for the calculation could not be fetched. What is below is for the usual numbers; your own stay in the address.';
};
