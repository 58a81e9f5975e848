/** What two rows have in common, an empty list standing for everything; nothing if they exclude each other. */
export const common = (
  a: readonly string[],
  b: readonly string[],
): readonly string[] | undefined => {
  if (a.length === 0) return b;
  if (b.length === 0) return a;
  const both = a.filter((item) => b.includes(item));
  return both.length === 0 ? undefined : both;
};
