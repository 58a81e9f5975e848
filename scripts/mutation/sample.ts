import { CheckStatus, type CheckResult, type Checker } from '@stryker-mutator/api/check';
import type { Mutant } from '@stryker-mutator/api/core';
import { PluginKind, declareFactoryPlugin } from '@stryker-mutator/api/plugin';
import { inSample, readSample } from './in-sample.ts';

/** Which change it is, by its file below the project's folder, so that it is the same everywhere. */
const nameOf = ({ fileName, location: { start, end }, mutatorName, replacement }: Mutant): string =>
  [
    fileName.replaceAll('\\', '/').replace(/^.*\/(?=src\/)/, ''),
    ...[start.line, start.column, end.line, end.column],
    mutatorName,
    replacement,
  ].join(' ');

const checkOf = (mutant: Mutant): CheckResult => {
  const sample = readSample(process.env['MUTATION_SAMPLE'] ?? '');
  return sample === undefined || inSample(sample, nameOf(mutant))
    ? { status: CheckStatus.Passed }
    : // The one way to leave a mutant out of a score; reports count it as an error.
      { status: CheckStatus.CompileError, reason: 'not in the sample' };
};

const sampler = (): Checker => ({
  init: () => Promise.resolve(),
  check: (mutants) =>
    Promise.resolve(Object.fromEntries(mutants.map((one) => [one.id, checkOf(one)]))),
  group: (mutants) => Promise.resolve([mutants.map(({ id }) => id)]),
});

/** Leaves out all changes but a sample that depends on nothing but its seed and the code. */
export const strykerPlugins = [declareFactoryPlugin(PluginKind.Checker, 'sample', sampler)];
