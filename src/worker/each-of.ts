/** How many files are fetched at once. */
export const AT_ONCE = 6;

/**
 * Does the work for each of the items, a few at once. Once it fails for one, none is begun any more;
 * what is under way is waited for, so that nothing is told after the failure.
 * @throws what the first that failed did
 */
export const eachOf = async <Item>(
  items: Iterable<Item>,
  work: (item: Item) => Promise<void>,
): Promise<void> => {
  const left = [...items];
  const faults: unknown[] = [];
  const next = async (): Promise<void> => {
    for (let item = left.shift(); item !== undefined; item = left.shift()) await work(item);
  };
  const giveUp = (fault: unknown): void => {
    faults.push(fault);
    left.length = 0;
  };
  await Promise.all(Array.from({ length: AT_ONCE }, () => next().catch(giveUp)));
  if (faults.length > 0) throw faults[0];
};
