import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/browser/**', 'node_modules/**'],
    setupFiles: ['tests/seed.ts'],
    reporters: process.env['CI'] ? ['dot'] : ['default'],
    // Whole test files wait for nothing but the processor, so each core takes one.
    maxWorkers: '100%',
    // No module keeps more than what follows from the data, so that files may share them: the
    // catalogue is loaded once a worker, not once a file.
    isolate: false,
    testTimeout: 30_000,
    // A test that checks nothing, because its loop ran over nothing, fails.
    expect: { requireAssertions: true },
  },
});
