/**
 * Writes src/engine/values/e-series.generated.ts from data/e-series.csv, so that the engine knows
 * the preferred values without reading files: `node scripts/generate-e-series.ts`.
 */
import { readFile, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { parse } from 'csv-parse/sync';
import { format, resolveConfig } from 'prettier';

const TABLE = new URL('../data/e-series.csv', import.meta.url);
const MODULE = fileURLToPath(
  new URL('../src/engine/values/e-series.generated.ts', import.meta.url),
);

/** The text of the module, as the formatter leaves it. */
export const eSeriesModule = async (): Promise<string> => {
  const rows: Record<string, string>[] = parse(await readFile(TABLE), { columns: true, bom: true });
  const series = new Map<string, { position: number; value: number }[]>();
  for (const { series: name = '', position, value } of rows) {
    const values = series.get(name) ?? [];
    values.push({ position: Number(position), value: Number(value) });
    series.set(name, values);
  }
  const lines = [...series].map(([name, values]) => {
    const inOrder = values.sort((a, b) => a.position - b.position).map(({ value }) => value);
    return `${name}: [${inOrder.join(', ')}],`;
  });
  const source = `
    // Written by scripts/generate-e-series.ts from data/e-series.csv, which names the sources.
    /** The preferred values of one decade, from 1 up to 10, by series. */
    export const E_SERIES = {
      ${lines.join('\n')}
    } as const;
  `;
  const options = await resolveConfig(MODULE);
  return format(source, { ...options, plugins: [], filepath: MODULE });
};

if (process.argv[1] === fileURLToPath(import.meta.url))
  await writeFile(MODULE, await eSeriesModule());
