/** How many files are fetched at once. */
export const AT_ONCE = 6;

/** Does the work for each of the items, a few at once. */
export const eachOf = async <Item>(
  items: Iterable<Item>,
  work: (item: Item) => Promise<void>,
): Promise<void> => {
  const left = [...items];
  const next = async (): Promise<void> => {
    for (let item = left.shift(); item !== undefined; item = left.shift()) await work(item);
  };
  await Promise.all(Array.from({ length: AT_ONCE }, next));
};
