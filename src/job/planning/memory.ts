/**
 * Remembers results by key, and forgets on `sweep` what was not asked for since the last one, so that
 * it grows with the board and not with how often that was edited.
 */
export interface Memory<T> {
  get: (key: string, work: () => T) => T;
  has: (key: string) => boolean;
  sweep: () => void;
}

/** An empty memory. */
export const newMemory = <T>(): Memory<T> => {
  let kept = new Map<string, { value: T }>();
  let used = new Map<string, { value: T }>();
  return {
    get: (key, work) => {
      const entry = used.get(key) ?? kept.get(key) ?? { value: work() };
      used.set(key, entry);
      return entry.value;
    },
    has: (key) => used.has(key) || kept.has(key),
    sweep: () => {
      kept = used;
      used = new Map();
    },
  };
};
