import type { Line } from './model.ts';

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
}
