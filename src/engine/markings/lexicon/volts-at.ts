import type { Scan } from './scan.ts';

const VOLTS = /(\d{1,4}(?:[.,]\d)?)(?![\d.,])(?=V|[^\p{L}]|$)/uy;

/**
 * Whether a usual rated voltage stands behind a letter, as behind the K of `K250` and the µ of
 * `22µ35`, and the two are no temperature code, as `M750` is.
 * @param at index of the figures
 */
export const areVoltsBehind = ({ lexicon, marking }: Scan, at: number): boolean => {
  VOLTS.lastIndex = at;
  const [, figures = ''] = VOLTS.exec(marking.text) ?? [];
  const isVoltage = lexicon.usualVolts.has(Number(figures.replace(',', '.')));
  return isVoltage && !lexicon.slopesInLatin.has(marking.text.charAt(at - 1) + figures);
};
