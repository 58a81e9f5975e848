/**
 * Remembers what was worked out last, and forgets what was not asked for longest.
 * @param most how many are remembered, at least 1
 */
export const lastFew = <Value>(most: number): ((key: string, work: () => Value) => Value) => {
  const kept = new Map<string, Value>();
  return (key, work) => {
    const value = kept.has(key) ? (kept.get(key) as Value) : work();
    kept.delete(key);
    kept.set(key, value);
    const oldest = kept.keys().next();
    if (kept.size > most && oldest.done !== true) kept.delete(oldest.value);
    return value;
  };
};
