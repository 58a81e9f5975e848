import { resolve } from 'node:path';
import { defineConfig } from 'vitest/config';

/** The tests that mutants of a group are held to, without those that take long. */
const tests = JSON.parse(process.env['MUTATION_TESTS'] ?? '[]') as string[];

const read = resolve('src/catalogue/index.ts');
const kept = resolve('scripts/mutation/kept-catalogue.ts');

export default defineConfig({
  plugins: [
    {
      name: 'kept catalogue',
      enforce: 'pre',
      async resolveId(source, importer) {
        if (
          process.env['MUTATION_CATALOGUE'] === undefined ||
          !source.endsWith('/catalogue/index.ts')
        )
          return null;
        const found = await this.resolve(source, importer, { skipSelf: true });
        return found?.id === read ? kept : null;
      },
    },
  ],
  test: {
    include: tests,
    setupFiles: ['tests/seed.ts'],
    testTimeout: 30_000,
  },
});
