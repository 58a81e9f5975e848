/**
 * How mutants are made and run; `scripts/mutation/` chooses the files and their tests.
 *
 * @type {import('@stryker-mutator/api/core').PartialStrykerOptions}
 */
export default {
  testRunner: 'quick',
  plugins: [
    './scripts/mutation/quick-runner.ts',
    './scripts/mutation/prose.mjs',
    './scripts/mutation/sample.ts',
  ],
  coverageAnalysis: 'perTest',
  ignorers: ['prose'],
  checkers: process.env['MUTATION_SAMPLE'] === undefined ? [] : ['sample'],
  // Vitest reads no types, and a test compares generated code with its file.
  disableTypeChecks: false,
  // One at a time: each keeps a whole catalogue, and a mutant that loops must not starve another.
  concurrency: 1,
  // Long, so that other work on the machine is not taken for a loop.
  timeoutMS: 30_000,
  tempDirName: '.stryker-tmp',
  ignorePatterns: ['dist', '.astro', 'public', 'docs', 'reports', 'test-results'],
  allowConsoleColors: false,
  reporters: ['clear-text', 'progress-append-only'],
  clearTextReporter: { reportTests: false, logTests: false, allowColor: false },
  // The report. What was found of a mutant whose code and tests are as they were is taken over.
  incremental: true,
  incrementalFile: process.env['MUTATION_REPORT'] ?? 'reports/mutation/mutation.json',
};
