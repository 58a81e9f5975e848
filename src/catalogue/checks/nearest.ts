/** More changes than this and a name is another name, not a slip. */
const MOST_CHANGES = 3;

/** Changes of single letters that make one word of another (the Levenshtein distance). */
const changes = (from: string, to: string): number => {
  let previous = Array.from({ length: to.length + 1 }, (_, index) => index);
  for (const [i, letter] of [...from].entries()) {
    const row = [i + 1];
    for (const [j, other] of [...to].entries()) {
      const replaced = (previous[j] ?? 0) + (letter === other ? 0 : 1);
      row.push(Math.min(replaced, (previous[j + 1] ?? 0) + 1, (row[j] ?? 0) + 1));
    }
    previous = row;
  }
  return previous.at(-1) ?? 0;
};

/** The name that a mistyped one most likely was meant to be, if one is near. */
export const nearest = (name: string, names: Iterable<string>): string | undefined => {
  let best: string | undefined;
  let fewest = MOST_CHANGES + 1;
  for (const candidate of names) {
    if (Math.abs(candidate.length - name.length) >= fewest) continue;
    const count = changes(name, candidate);
    if (count < fewest) {
      fewest = count;
      best = candidate;
    }
  }
  return best;
};
