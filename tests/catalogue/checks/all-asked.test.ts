import { globSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import type { Check } from '../../../src/catalogue/checks/check.ts';
import { checks } from '../../../src/catalogue/checks/index.ts';

const folder = join(import.meta.dirname, '../../../src/catalogue/checks');

const isCheck = (value: unknown): value is Check =>
  typeof value === 'object' && value !== null && 'about' in value && 'check' in value;

test('every rule that stands in the folder is asked', async () => {
  const files = globSync('*.ts', { cwd: folder }).filter((file) => file !== 'index.ts');
  const modules = await Promise.all(
    files.map(
      (file): Promise<Record<string, unknown>> =>
        import(join(folder, file)) as Promise<Record<string, unknown>>,
    ),
  );
  const rules = modules.flatMap((module) => Object.values(module)).filter(isCheck);
  expect(rules.length).toBe(checks.length);
  expect(rules.filter((rule) => !checks.includes(rule)).map(({ id }) => id)).toEqual([]);
});
