import type { VerdictRuleRow } from '../schemas/positions.ts';

export type VerdictId = VerdictRuleRow['verdict'];

/** The words of the four verdicts. */
export const verdictWords: Record<VerdictId, string> = {
  fits: 'fits',
  'fits-if': 'fits if …',
  stopgap: 'stopgap',
  'keep-out': 'keep out',
};

const shapes: Record<VerdictId, string> = {
  fits: '<circle cx="8" cy="8" r="6.5" fill="currentColor"/>',
  'fits-if':
    '<circle cx="8" cy="8" r="6.25" fill="none" stroke="currentColor" stroke-width="1.5"/><path d="M8 1.5a6.5 6.5 0 0 0 0 13z" fill="currentColor"/>',
  stopgap:
    '<path d="M8 2L14.5 13.75H1.5z" fill="none" stroke="currentColor" stroke-width="1.5" stroke-linejoin="round"/>',
  'keep-out':
    '<path d="M2 2H14V14H2zM2.5 13.5L13.5 2.5" fill="none" stroke="currentColor" stroke-width="1.75"/>',
};

/** The shape that stands before the word of a verdict, as the text of an SVG. */
export const verdictShape = (verdict: VerdictId): string =>
  `<svg viewBox="0 0 16 16" aria-hidden="true">${shapes[verdict]}</svg>`;
