/** A value, or one that comes later. */
type Awaitable<T> = T | Promise<T>;

/** One test as it was declared, ready to be run. */
export interface Declared {
  /** Its name after those of the groups that it stands in; unlike all others of its file. */
  name: string;
  run: () => Awaitable<unknown>;
}

type Body = (...row: unknown[]) => Awaitable<unknown>;
type Each = (rows: readonly unknown[]) => (name: string, body: Body) => void;

/** As much of a test framework as the tests of a group use: to declare, and to declare tables. */
export interface Declaring {
  declared: Declared[];
  describe: ((name: string, body: Body) => void) & { each: Each };
  test: ((name: string, body: Body) => void) & { each: Each };
}

const table =
  (declare: (name: string, body: Body) => void): Each =>
  (rows) =>
  (name, body) => {
    for (const [index, row] of rows.entries())
      declare(`${name} [${index}]`, () =>
        body(...(Array.isArray(row) ? (row as unknown[]) : [row])),
      );
  };

/** A file's declarations: groups run at once, tests are kept for later. */
export const declaring = (): Declaring => {
  const declared: Declared[] = [];
  const around: string[] = [];
  const taken = new Map<string, number>();
  const unlike = (name: string): string => {
    const before = taken.get(name) ?? 0;
    taken.set(name, before + 1);
    return before === 0 ? name : `${name} (${before + 1})`;
  };
  const test = (name: string, run: Body): void => {
    declared.push({ name: unlike([...around, name].join(' > ')), run });
  };
  const describe = (name: string, body: Body): void => {
    around.push(name);
    void body();
    around.pop();
  };
  return {
    declared,
    describe: Object.assign(describe, { each: table(describe) }),
    test: Object.assign(test, { each: table(test) }),
  };
};
