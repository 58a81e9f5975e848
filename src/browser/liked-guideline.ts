/** The derating guideline that this reader chose last, kept on this device. */

const KEY = 'guideline';

/** Its id; nothing for the usual one. It may have been written by anybody. */
export const likedGuideline = (): string => {
  try {
    return localStorage.getItem(KEY) ?? '';
  } catch {
    return '';
  }
};

/** Keeps it for other pages. */
export const likeGuideline = (id: string): void => {
  try {
    if (id === '') localStorage.removeItem(KEY);
    else localStorage.setItem(KEY, id);
  } catch {
    // The choice then lasts as long as the page.
  }
};
