/**
 * What is fetched when it is first wanted, and kept. A promise that is there costs nothing; an
 * `import()` of what is there takes a turn of its own each time, in which the page is painted.
 * A failure, such as no network, is not kept: the next time tries again.
 */
export const fetchedOnce = <Fetched>(fetch: () => Promise<Fetched>): (() => Promise<Fetched>) => {
  let kept: Promise<Fetched> | undefined;
  return () => {
    if (kept !== undefined) return kept;
    kept = fetch();
    kept.catch(() => (kept = undefined));
    return kept;
  };
};
