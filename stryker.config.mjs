/**
 * How mutants are made and run; `scripts/mutation/` chooses the files and their tests.
 *
 * @type {import('@stryker-mutator/api/core').PartialStrykerOptions}
 */
export default {
  testRunner: 'vitest',
  plugins: ['@stryker-mutator/vitest-runner', './scripts/mutation/prose.mjs'],
  vitest: { configFile: 'vitest.mutation.config.ts', related: false },
  coverageAnalysis: 'perTest',
  ignorers: ['prose'],
  // Vitest reads no types, and a test compares generated code with its file.
  disableTypeChecks: false,
  // One at a time: each keeps a whole catalogue, and a mutant that loops must not starve another.
  concurrency: 1,
  timeoutMS: 10_000,
  tempDirName: '.stryker-tmp',
  ignorePatterns: ['dist', '.astro', 'public', 'docs', 'reports', 'test-results'],
  allowConsoleColors: false,
  reporters: ['clear-text'],
  clearTextReporter: { reportTests: false, logTests: false, allowColor: false },
  // The report. What was found of a mutant whose code and tests are as they were is taken over.
  incremental: true,
  incrementalFile: process.env['MUTATION_REPORT'] ?? 'reports/mutation/mutation.json',
};
