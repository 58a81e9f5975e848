/**
 * Functions of the language that browsers before 2024 lack and this site uses, for a computer at the
 * bench that is as old as its system lets it be: the last ones for Windows 7 are Chromium 109 and
 * Firefox 115. Each script of a page fetches this first; a browser that has them keeps its own.
 */

const lend = (owner: object, name: string, lent: unknown): void => {
  if (!Object.hasOwn(owner, name))
    Object.defineProperty(owner, name, { value: lent, writable: true, configurable: true });
};

lend(Map, 'groupBy', <Key, Item>(items: Iterable<Item>, keyOf: (item: Item, at: number) => Key) => {
  const groups = new Map<Key, Item[]>();
  let at = 0;
  for (const item of items) {
    const key = keyOf(item, at);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [item]);
    else group.push(item);
    at += 1;
  }
  return groups;
});

lend(Array.prototype, 'toSorted', function <
  Item,
>(this: readonly Item[], compare?: (a: Item, b: Item) => number) {
  return [...this].sort(compare);
});

lend(Array.prototype, 'toReversed', function <Item>(this: readonly Item[]) {
  return [...this].reverse();
});

lend(Array.prototype, 'toSpliced', function <
  Item,
>(this: readonly Item[], start: number, skip: number, ...items: Item[]) {
  const copy = [...this];
  copy.splice(start, skip, ...items);
  return copy;
});

lend(Array.prototype, 'with', function <Item>(this: readonly Item[], at: number, item: Item) {
  const copy = [...this];
  copy[at] = item;
  return copy;
});

export {};
