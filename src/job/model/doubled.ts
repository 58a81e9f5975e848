/** Designators that stand in more than one line, for each line by its place; few lines have any. */
export const doubledDesignators = (
  lines: readonly { designators: readonly string[] }[],
): ReadonlyMap<number, readonly string[]> => {
  const first = new Map<string, number>();
  const doubled = new Map<number, string[]>();
  const note = (at: number, name: string): void => {
    const names = doubled.get(at) ?? [];
    if (!names.includes(name)) names.push(name);
    doubled.set(at, names);
  };
  lines.forEach(({ designators }, at) => {
    for (const typed of designators) {
      // Boards tell no parts apart by capitals.
      const name = typed.toUpperCase();
      const before = first.get(name);
      if (before === undefined) first.set(name, at);
      else if (before !== at) {
        note(before, name);
        note(at, name);
      }
    }
  });
  return doubled;
};
