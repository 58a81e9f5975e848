/** What two lists have in common, an empty one standing for everything; nothing if they exclude each other. */
export const common = <Id extends string>(
  a: readonly Id[],
  b: readonly Id[],
): readonly Id[] | undefined => {
  if (a.length === 0) return b;
  if (b.length === 0) return a;
  const both = a.filter((item) => b.includes(item));
  return both.length === 0 ? undefined : both;
};
