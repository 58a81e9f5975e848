import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/browser/**', 'node_modules/**'],
    setupFiles: ['tests/seed.ts'],
    reporters: process.env['CI'] ? ['dot'] : ['default'],
    testTimeout: 30_000,
  },
});
