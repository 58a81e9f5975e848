/** What a meter shows instead of a number. */
export type MeterDisplay =
  /** More than it can show. */
  | { is: 'over' }
  /** Nothing was read. */
  | { is: 'none' }
  /** `>200 MΩ`: more than a number, which is left to be read. */
  | { is: 'more'; than: string };

/** `OL`, `0L`, `O.L`, `.OL`, `0.L MΩ`, `OVL`, `OFL`, `∞`, `open`: letters and point as displays have them. */
const OVER =
  /^[+\-−]?\s*(?:[.,]?[o0][.,]?l[.,]?|ov(?:\.?l|er)?|over(?: ?range|load)|o[.,]?f(?:l|low)?|inf(?:inite|inity)?\.?|∞|open(?: circuit)?|o\/c)\s*(?:[pnuµμmkg]?(?:Ω|Ω|ohms?|f|v|a)|%)?$/iu;
const NONE = /^(?:[-–—−‒_]+|n\/?a)$/iu;
const MORE = /^(?:[>≥]=?|more than|over|above)\s*(?=[\d.,])/iu;

/** What a meter shows instead of a number; nothing where the text may be a number or is empty. */
export const meterDisplay = (text: string): MeterDisplay | undefined => {
  const shown = text.trim();
  if (OVER.test(shown)) return { is: 'over' };
  if (NONE.test(shown)) return { is: 'none' };
  const [more] = MORE.exec(shown) ?? [];
  return more === undefined ? undefined : { is: 'more', than: shown.slice(more.length) };
};
