/** Keeps the focus where it was when a list is drawn anew, and lets no click fall between. */

/** What tells one control of a row from another. */
const MARKS = [
  'data-set',
  'data-take',
  'data-drop',
  'data-answer',
  'data-answers',
  'data-field-key',
  'data-sign',
  'href',
];

const selectorOf = (element: Element): string => {
  const mark = MARKS.find((name) => element.hasAttribute(name));
  const { localName } = element;
  return mark === undefined
    ? localName
    : `${localName}[${mark}="${CSS.escape(element.getAttribute(mark) ?? '')}"]`;
};

/** Draws, and gives the focus back to the same control of the row with the same `data-group`. */
export const drawAround = (list: HTMLElement, draw: () => void): void => {
  const focused = document.activeElement;
  const group = focused?.closest<HTMLElement>('[data-group]')?.dataset['group'];
  const selector = focused === null || !list.contains(focused) ? '' : selectorOf(focused);
  draw();
  if (selector === '' || group === undefined || document.activeElement === focused) return;
  const same = list
    .querySelector<HTMLElement>(`[data-group="${CSS.escape(group)}"]`)
    ?.querySelector<HTMLElement>(selector);
  same?.focus({ preventScroll: true });
  if (same instanceof HTMLInputElement && same.type !== 'checkbox') same.select();
};

/** Whether something is typed in the list that is not taken yet. */
export const isTyping = (list: Element): boolean => {
  const focused = document.activeElement;
  return (
    focused instanceof HTMLInputElement &&
    focused.type !== 'checkbox' &&
    focused.value !== focused.defaultValue &&
    list.contains(focused)
  );
};

/**
 * Draws at once, or, where somebody types or presses a button in the list, as soon as that is done:
 * what is under the hand may not be replaced.
 * @returns asks for a drawing
 */
export const drawWhenFree = (list: HTMLElement, draw: () => void): (() => void) => {
  let waits = false;
  let pressed = false;
  const ask = (): void => {
    waits = pressed || isTyping(list);
    if (!waits) drawAround(list, draw);
  };
  const again = (): void => {
    setTimeout(() => {
      if (waits) ask();
    });
  };
  list.addEventListener('pointerdown', () => {
    pressed = true;
  });
  for (const done of ['pointerup', 'pointercancel'])
    addEventListener(done, () => {
      pressed = false;
      again();
    });
  list.addEventListener('focusout', again);
  return ask;
};
