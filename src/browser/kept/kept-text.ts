/**
 * Short texts that are kept on this device from one page to the next. Storage may be forbidden: then
 * nothing is ever kept, and what was chosen lasts as long as the page.
 */

/** The text that is kept under a key, which anybody may have written; an empty one where there is none. */
export const keptText = (key: string): string => {
  try {
    return localStorage.getItem(key) ?? '';
  } catch {
    return '';
  }
};

/** The keys under which texts are kept. */
export const keptKeys = (): string[] => {
  try {
    return Object.keys(localStorage);
  } catch {
    return [];
  }
};

/** Keeps a text under a key; an empty one is forgotten. */
export const keepText = (key: string, text: string): void => {
  try {
    if (text === '') localStorage.removeItem(key);
    else localStorage.setItem(key, text);
  } catch {
    // Whoever reads it finds nothing, as on a first visit.
  }
};
