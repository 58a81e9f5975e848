import { isDue, type AtHand } from '../../substitution/cautions.ts';

/** Cautions that a condition or a stand-in brings up come and go with it. */
export const showCautions = (atHand: AtHand): void => {
  for (const element of document.querySelectorAll<HTMLElement>('[data-condition], [data-made]')) {
    const { condition, from, made } = element.dataset;
    const trigger = { condition, from: Number(from ?? 0), made: made?.split(' ') };
    element.hidden = !isDue(trigger, atHand);
    // What can kill is named at the top of the page too.
    const named = document.querySelector<HTMLElement>(`.danger-strip a[href$="#${element.id}"]`);
    if (named !== null) named.hidden = element.hidden;
  }
};
