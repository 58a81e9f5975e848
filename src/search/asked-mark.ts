/** Words before a mark that ask about it. */
const BEFORE = [
  /^what(?:'s|’s)?(?: is| are| does)?\s+/iu,
  /^(?:how to read|meaning of|code|marking|letter|tolerance(?: letter)?)\s+/iu,
  /^(?:can|could|should|do|may)\s+(?:i|one|we|you)\s+(?:use|fit|put|take)\s+(?:instead\s+of|in\s+place\s+of|for|to\s+replace)\s+(?:(?:an?|the|my)\s+)?/iu,
  /^(?:to\s+)?replac(?:e|es|ing)\s+(?:(?:an?|the|my)\s+)?/iu,
  /^(?:an?\s+)?(?:replacement|substitute|equivalent|alternative|stand-in)s?\s+(?:for|of|to)\s+(?:(?:an?|the|my)\s+)?/iu,
  /^(?:instead\s+of|in\s+place\s+of)\s+(?:(?:an?|the|my)\s+)?/iu,
] as const;

/** Words behind a mark that ask about it. */
const BEHIND =
  /\s+(?:means?|capacitors?|caps?|code|marking|tolerance|replacements?|substitutes?|equivalents?|alternatives?)$|[?!]+$/iu;

/** One word fewer that asks, or the text as it is. */
const shorter = (text: string): string => {
  const beginning = BEFORE.find((one) => one.test(text));
  return text.replace(beginning ?? BEHIND, '').trim();
};

/** The mark that a question is about: the 473K of `what is 473K?`, the K of `tolerance K`. */
export const askedMark = (text: string): string => {
  const mark = shorter(text);
  return mark === '' ? text : mark === text ? mark : askedMark(mark);
};
