import { tableNames, type TableName, type Tables } from '../read-folder.ts';

/** What was found in tables. */
type Finding<Found> = (tables: Tables) => Found;

/**
 * The same finding, done again only where a table that it looked at is another one: checking a
 * folder after a change of one table costs no more than the rules that read it. Tables are not
 * changed once they are read, so that one that is the same holds the same.
 */
export const remembered = <Found>(find: Finding<Found>): Finding<Found> => {
  let last: { looked: ReadonlyMap<TableName, unknown>; found: Found } | undefined;
  return (tables) => {
    if (last !== undefined && [...last.looked].every(([file, table]) => tables[file] === table)) {
      return last.found;
    }
    const looked = new Map<TableName, unknown>();
    const watched = new Proxy(tables, {
      get: (all, file: TableName) => {
        looked.set(file, all[file]);
        return all[file];
      },
    });
    const found = find(watched);
    last = { looked, found };
    return found;
  };
};

/** What is found table by table, each remembered by itself, in the order of the registry. */
export const ofEachTable = <Found>(
  find: (tables: Tables, file: TableName) => readonly Found[],
): Finding<Found[]> => {
  const each = tableNames.map((file) => remembered((tables) => find(tables, file)));
  return (tables) => each.flatMap((one) => one(tables));
};
