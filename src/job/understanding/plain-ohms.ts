import type { Reading } from '../../engine/index.ts';

/** Three figures or more with a nought for the last: a code on a chip or on accurate wire, and ohms as they stand in a list. */
const FIGURES = /^[1-9]\d{1,5}0$/u;

/**
 * Readings of the marking of a resistor, with the ohms that figures alone are as they stand before what
 * they are as a code, and none sure: `470` of a list is 470 Ω, and on a chip 47 Ω.
 * @param read reads a text as the marking of a resistor
 */
export const withPlainOhms = (
  marking: string,
  readings: Reading[],
  read: (text: string) => Reading[],
): Reading[] => {
  const text = marking.trim();
  if (!FIGURES.test(text)) return readings;
  const plain = read(`${text} ohm`).find(({ resistance }) => resistance?.typ === Number(text));
  const others = readings.filter(({ resistance }) => resistance?.typ !== Number(text));
  return plain === undefined
    ? readings
    : [plain, ...others].map((one) => ({ ...one, sure: 'possible' }));
};
