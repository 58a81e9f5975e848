/** Words that stand on nearly every page: they find nothing, and the pieces of index for them are the largest. */
const LITTLE =
  /^(?:an?|and|are|as|at|be|by|can|do|does|for|from|how|i|in|instead|is|it|my|of|on|or|the|this|to|use|what|which|with)$/i;

/**
 * The words of a text that pages are looked for by: without the little ones, where there are others.
 * What is in quotation marks stays as it is, because it is looked for as it is.
 */
export const askedWords = (text: string): string => {
  if (text.includes('"')) return text;
  const kept = text.split(/\s+/).filter((word) => word !== '' && !LITTLE.test(word));
  return kept.length > 0 ? kept.join(' ') : text;
};
