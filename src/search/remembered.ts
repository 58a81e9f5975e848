/**
 * The same function with what it found for each row, or table, kept as long as that lives: what a
 * search looks at is the same at every letter that is typed.
 */
export const remembered = <Key extends object, Found>(
  find: (key: Key) => Found,
): ((key: Key) => Found) => {
  const known = new WeakMap<Key, { found: Found }>();
  return (key) => {
    const kept = known.get(key) ?? { found: find(key) };
    known.set(key, kept);
    return kept.found;
  };
};
