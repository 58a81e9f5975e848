import { defineConfig } from 'vitest/config';

/** The tests that mutants of a group are held to, without those that take long. */
const tests = JSON.parse(process.env['MUTATION_TESTS'] ?? '[]') as string[];

export default defineConfig({
  test: {
    include: tests,
    setupFiles: ['tests/seed.ts'],
    testTimeout: 30_000,
  },
});
