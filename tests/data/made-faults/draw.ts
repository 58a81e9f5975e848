/** Numbers from 0 to 1 that look random and are the same in every run (mulberry32). */
export const drawFrom = (seed: number): (() => number) => {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
};

/** Some of many, drawn without putting back. */
export const some = <Item>(items: readonly Item[], count: number, draw: () => number): Item[] => {
  const left = [...items];
  const drawn: Item[] = [];
  while (drawn.length < count && left.length > 0) {
    drawn.push(...left.splice(Math.floor(draw() * left.length), 1));
  }
  return drawn;
};
