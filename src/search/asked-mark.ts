/** Words that ask about a mark rather than being one. */
const ASKING =
  /^(?:what(?:'s|’s)?(?: is| are| does)?|how to read|meaning of|code|marking|letter|tolerance(?: letter)?)\s+|\s+(?:means?|capacitors?|caps?|code|marking|tolerance)\s*\??$|\?$/giu;

/** The mark that a question is about: the 473K of `what is 473K?`, the K of `tolerance K`. */
export const askedMark = (text: string): string => {
  const mark = text.replace(ASKING, '').trim();
  return mark === '' ? text : mark.replace(ASKING, '').trim() || mark;
};
