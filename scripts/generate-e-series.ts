/**
 * Writes src/engine/values/e-series.generated.ts from data/e-series.csv, so that the engine knows
 * the preferred values without reading files: `node scripts/generate-e-series.ts`.
 */
import { formatted, rowsOf, writeIfRun } from './generated-module.ts';

const TABLE = new URL('../data/e-series.csv', import.meta.url);
const MODULE = new URL('../src/engine/values/e-series.generated.ts', import.meta.url);

/** The text of the module, as the formatter leaves it. */
export const eSeriesModule = async (): Promise<string> => {
  const series = new Map<string, { position: number; value: number }[]>();
  for (const { series: name = '', position, value } of await rowsOf(TABLE)) {
    const values = series.get(name) ?? [];
    values.push({ position: Number(position), value: Number(value) });
    series.set(name, values);
  }
  const lines = [...series].map(([name, values]) => {
    const inOrder = values.sort((a, b) => a.position - b.position).map(({ value }) => value);
    return `${name}: [${inOrder.join(', ')}],`;
  });
  return formatted(
    MODULE,
    `
    // Written by scripts/generate-e-series.ts from data/e-series.csv, which names the sources.
    /** The preferred values of one decade, from 1 up to 10, by series. */
    export const E_SERIES = {
      ${lines.join('\n')}
    } as const;
  `,
  );
};

await writeIfRun(import.meta.url, MODULE, eSeriesModule);
