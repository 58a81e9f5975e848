import { parseQuantity } from './parse.ts';
import type { Range } from './range.ts';

/**
 * What a capacitance (F) that is written without its unit comes to in microfarads; nothing where it says
 * its unit, counts in microfarads anyway (`.47`), or is no capacitance.
 */
export const inMicrofarads = (text: string): Range | undefined => {
  const [usual, micro] = [parseQuantity(text, 'F'), parseQuantity(text, 'F', 'µF')];
  const isMicro = usual.ok && micro.ok && usual.value.typ === micro.value.typ;
  return micro.ok && !isMicro ? micro.value : undefined;
};
