import { readFile, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { parse } from 'csv-parse/sync';
import { format, resolveConfig } from 'prettier';

/** Modules that are written from a table, so that what needs its facts at once need not fetch it. */

/** The rows of a table, by the names of its columns. */
export const rowsOf = async (table: URL): Promise<Record<string, string>[]> =>
  parse(await readFile(table), { columns: true, bom: true });

/** The text of a module, as the formatter leaves it. */
export const formatted = async (module: URL, source: string): Promise<string> => {
  const filepath = fileURLToPath(module);
  const options = await resolveConfig(filepath);
  return format(source, { ...options, plugins: [], filepath });
};

/** Writes a module where the script that makes it is what was run. */
export const writeIfRun = async (
  script: string,
  module: URL,
  text: () => Promise<string>,
): Promise<void> => {
  if (process.argv[1] === fileURLToPath(script)) await writeFile(module, await text());
};
