/** Items by a name that each is given, in the order in which they come. */
export const groupBy = <Item>(
  items: readonly Item[],
  nameOf: (item: Item) => string,
): Map<string, Item[]> => {
  const groups = new Map<string, Item[]>();
  for (const item of items) {
    const name = nameOf(item);
    const group = groups.get(name);
    if (group === undefined) groups.set(name, [item]);
    else group.push(item);
  }
  return groups;
};
