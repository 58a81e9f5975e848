/** A question whether one part may stand in for another, as somebody types it. */
export interface InPlaceOf {
  /** What would be fitted. */
  fitted: string;
  /** What sits there. */
  old: string;
  /** Whether the words say so plainly: “100n for audio” asks for no part in place of another. */
  plain: boolean;
}

/** How such a question may begin before it names a part. */
const OPENINGS = [
  /^(?:can|could|may|should|do|shall)\s+(?:i|one|we|you)\s+(?:safely\s+)?/iu,
  /^is\s+it\s+(?:ok|okay|all\s+right|alright|safe|fine|possible|allowed)\s+(?:to|if\s+i)\s+/iu,
  /^(?:is|are|would|will|does|why|what\s+(?:about|if\s+i)|how\s+about)\s+/iu,
] as const;

/** Words of fitting a part, where the old one follows. */
const FITTING = /^(?:us(?:e|ing)|fit(?:ting)?|put(?:ting)?|tak(?:e|ing))\s+/iu;

/** Words between the two that say which of them is the old one; each with both named. */
const PLAIN: readonly RegExp[] = [
  /^(?:replac|exchang|swap|chang)\p{L}*\s+(?<old>.+?)\s+(?:with|by|for|to)\s+(?<fitted>.+)$/iu,
  /^substitut\p{L}*\s+(?<old>.+?)\s+(?:with|by)\s+(?<fitted>.+)$/iu,
  /^substitut\p{L}*\s+(?<fitted>.+?)\s+for\s+(?<old>.+)$/iu,
  /^(?<old>.+?)\s+(?:replaced|exchanged|swapped|substituted)\s+(?:with|by|for)\s+(?<fitted>.+)$/iu,
  /^(?<old>.+?)\s*(?:->|=>|→)\s*(?<fitted>.+)$/u,
  /^(?<fitted>.+?)\s+(?:instead\s+of|in\s+place\s+of|in\s+lieu\s+of|rather\s+than|(?:to\s+)?replac(?:e|es|ing))\s+(?<old>.+)$/iu,
  // What lists and readers in other languages say for “instead of”.
  /^(?<fitted>.+?)\s+(?:statt|anstatt|anstelle\s+von|au\s+lieu\s+de|à\s+la\s+place\s+de|invece\s+di|al\s+posto\s+di|en\s+lugar\s+de|en\s+vez\s+de|in\s+plaats\s+van)\s+(?<old>.+)$/iu,
  /^(?<fitted>.+?)\s+(?:as\s+)?(?:an?\s+)?(?:replacement|substitute|stand-in|sub|equivalent)\s+(?:for|of)\s+(?<old>.+)$/iu,
  /^(?<fitted>.+?)\s+(?:ok|okay|all\s+right|alright|fine|good(?:\s+enough)?|allowed|safe|suitable)\s+(?:for|as)\s+(?<old>.+)$/iu,
];
const VAGUE = /^(?<fitted>.+?)\s+for\s+(?<old>.+)$/iu;

/** What stands round the name of a part and tells nothing of it. */
const ROUND =
  /^(?:an?|the|my|old|new|some|any)\s+|\s+(?:ones?|caps?|capacitors?|be|work|do|there|here)$|[?!.]+$/giu;

/** Words that ask for a part, and name none. */
const ASKED_FOR = /^(?:what|which|something|anything|that|it|this)\b/iu;

const bare = (text: string): string => {
  const once = text.trim().replace(ROUND, '').trim();
  return once === text.trim() ? once : bare(once);
};

const without = (text: string, beginnings: readonly RegExp[]): string => {
  const beginning = beginnings.find((one) => one.test(text));
  return beginning === undefined ? text : without(text.replace(beginning, ''), beginnings);
};

const matched = (text: string, plain: boolean, pattern: RegExp): InPlaceOf | undefined => {
  const { fitted = '', old = '' } = pattern.exec(text)?.groups ?? {};
  const both = { fitted: bare(fitted), old: bare(old), plain };
  const isNamed = both.fitted !== '' && both.old !== '' && !ASKED_FOR.test(both.fitted);
  return isNamed ? both : undefined;
};

/** Two parts that are to be compared, neither of them said to be the old one: `4016 vs 4066`. */
const EITHER = /^(?<one>.+?)\s+(?:vs\.?|versus|or|against)\s+(?<other>.+)$/iu;

/** Words that compare whatever stands about them; “or” may as well stand in what one part is said to be. */
const VERSUS = /\s(?:vs\.?|versus)\s/iu;

/** Whether two parts are plainly compared. */
export const saysVersus = (text: string): boolean => VERSUS.test(text);

/** Two parts that a text compares; nothing where it compares none. */
export const eitherOf = (text: string): readonly [string, string] | undefined => {
  const { one = '', other = '' } = EITHER.exec(without(bare(text), OPENINGS))?.groups ?? {};
  const [first, second] = [bare(one), bare(other)];
  return first === '' || second === '' ? undefined : [first, second];
};

/**
 * The two parts of a question such as `can I use 63V instead of 50V`; nothing where a text asks for
 * none in place of another.
 */
export const inPlaceOf = (text: string): InPlaceOf | undefined => {
  const asked = without(bare(text), OPENINGS);
  for (const pattern of PLAIN) {
    const found =
      matched(asked.replace(FITTING, ''), true, pattern) ?? matched(asked, true, pattern);
    if (found !== undefined) return found;
  }
  return matched(asked.replace(FITTING, ''), false, VAGUE);
};
