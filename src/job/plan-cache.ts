/**
 * Remembers results by key, and forgets on `sweep` what was not asked for since the last one, so that
 * it grows with the board and not with how often that was edited.
 */
export interface Memory<T> {
  get: (key: string, work: () => T) => T;
  has: (key: string) => boolean;
  sweep: () => void;
  /** How many results have been worked out so far. */
  worked: () => number;
}

/** An empty memory. */
export const newMemory = <T>(): Memory<T> => {
  let kept = new Map<string, { value: T }>();
  let used = new Map<string, { value: T }>();
  let worked = 0;
  return {
    get: (key, work) => {
      const known = used.get(key) ?? kept.get(key);
      if (known === undefined) worked += 1;
      const entry = known ?? { value: work() };
      used.set(key, entry);
      return entry.value;
    },
    has: (key) => used.has(key) || kept.has(key),
    sweep: () => {
      kept = used;
      used = new Map();
    },
    worked: () => worked,
  };
};
