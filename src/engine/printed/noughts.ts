/** How many noughts a power of ten adds, in words; below one, what it multiplies by. */
export const noughts = (factor: number): string => {
  const count = Math.round(Math.log10(factor));
  if (count === 0) return '';
  if (count < 0) return ` × ${factor}`;
  return count === 1 ? ' and 1 nought' : ` and ${count} noughts`;
};
