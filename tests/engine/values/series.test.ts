import { readFile } from 'node:fs/promises';
import { expect, test } from 'vitest';
import { eSeriesModule } from '../../../scripts/generate-e-series.ts';

test('the generated series are those of the table; run scripts/generate-e-series.ts if not', async () => {
  const committed = new URL('../../../src/engine/values/e-series.generated.ts', import.meta.url);
  expect(await readFile(committed, 'utf8')).toBe(await eSeriesModule());
});
