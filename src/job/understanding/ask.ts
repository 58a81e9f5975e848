import type { Line } from '../model/job.ts';

/** An answer that the visitor may take: what it puts into the line. */
export interface AskChoice {
  label: string;
  set: Partial<Line>;
}

/** What only the visitor can tell; the choices are offers, and others may be right. */
export interface Ask {
  about: 'kind' | 'marking' | 'value' | 'type' | 'position';
  question: string;
  choices: AskChoice[];
  /** Whether the first answer is likelier than the others; where it is not, none is. */
  isFirstLikely?: boolean;
}

/** What is said of a type that is typed in a way that leaves it open, before it is asked for. */
export const unsureOf = (typed: string, isKnown: boolean): string =>
  isKnown ? `“${typed}” may be one of several.` : `“${typed}” is not a type that is known here.`;
