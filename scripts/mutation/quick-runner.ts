import { PluginKind, declareFactoryPlugin } from '@stryker-mutator/api/plugin';
import {
  DryRunStatus,
  MutantRunStatus,
  TestStatus,
  determineHitLimitReached,
  toMutantRunResult,
  type CompleteDryRunResult,
  type DryRunResult,
  type MutantRunOptions,
  type MutantRunResult,
  type TestResult,
  type TestRunner,
} from '@stryker-mutator/api/test-runner';
import type { MutantCoverage } from '@stryker-mutator/api/core';
import { createHash } from 'node:crypto';
import { existsSync, globSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { resolve } from 'node:path';
import { bundled, type Loaded } from './bundle.ts';
import { declaring, type Declared } from './collect.ts';

/**
 * Runs the tests of a group in one process, each file from its beginning for each mutant. Vitest
 * would do the same with a worker, a server and all modules one by one, at ten times the cost.
 */

/** What instrumented code reads and writes. */
interface Namespace {
  activeMutant?: string | undefined;
  currentTestId?: string | undefined;
  hitCount?: number | undefined;
  hitLimit?: number | undefined;
  mutantCoverage?: MutantCoverage;
}
const lasting: { __stryker__?: Namespace; __vitest_worker__?: unknown } & object = globalThis;
const namespace = (lasting.__stryker__ ??= {});

interface TestFile {
  path: string;
  /** Changes with its text, so that a changed test is not taken for the one before. */
  mark: string;
  load: Loaded;
}

/** What the first run says of a file. */
interface Met {
  path: string;
  /** Mutants that it meets while it is loaded or run. */
  mutants: string[];
  /** How long it took, ms. */
  time: number;
}

/** Where that is kept for a runner that starts after a loop: the quickest file first. */
const MET = '.met-by-file.json';

const testFiles = async (): Promise<TestFile[]> => {
  const patterns = JSON.parse(process.env['MUTATION_TESTS'] ?? '[]') as string[];
  const keeps = process.env['MUTATION_CATALOGUE'] !== undefined;
  return Promise.all(
    globSync(patterns)
      .toSorted()
      .map(async (path) => ({
        path,
        mark: createHash('sha256').update(readFileSync(path)).digest('hex').slice(0, 8),
        load: await bundled(path, keeps),
      })),
  );
};

const idOf = ({ path, mark }: TestFile, { name }: Declared): string => `${path} ${mark} ${name}`;

const messageOf = (thrown: unknown): string =>
  thrown instanceof Error ? thrown.message : String(thrown);

class QuickRunner implements TestRunner {
  #files: TestFile[] = [];
  #packages = createRequire(resolve('package.json'));
  #vitest: object = {};

  capabilities() {
    return { reloadEnvironment: true };
  }

  async init(): Promise<void> {
    // Its assertions look for a worker of its own.
    lasting.__vitest_worker__ = { config: {} };
    this.#vitest = (await import('vitest')) as object;
    const seed = await bundled('tests/seed.ts', false);
    seed((name) => this.#packages(name));
    this.#files = await testFiles();
  }

  /** The tests of a file, all its modules loaded anew. */
  #load(file: TestFile): Declared[] {
    const { declared, describe, test } = declaring();
    file.load((name) =>
      name === 'vitest'
        ? { ...this.#vitest, describe, test, it: test }
        : (this.#packages(name) as unknown),
    );
    return declared;
  }

  async #run(file: TestFile, tests: readonly Declared[], bail: boolean): Promise<TestResult[]> {
    const results: TestResult[] = [];
    for (const test of tests) {
      const id = idOf(file, test);
      const about = { id, name: id, fileName: resolve(file.path) };
      const start = performance.now();
      namespace.currentTestId = id;
      const failure = await (async () => test.run())().then(
        () => undefined,
        (thrown: unknown) => messageOf(thrown),
      );
      namespace.currentTestId = undefined;
      const timeSpentMs = performance.now() - start;
      results.push(
        failure === undefined
          ? { ...about, timeSpentMs, status: TestStatus.Success }
          : { ...about, timeSpentMs, status: TestStatus.Failed, failureMessage: failure },
      );
      if (bail && failure !== undefined) break;
    }
    return results;
  }

  async dryRun(): Promise<DryRunResult> {
    namespace.activeMutant = undefined;
    namespace.hitCount = undefined;
    const all: MutantCoverage = { static: {}, perTest: {} };
    const met: Met[] = [];
    const tests: TestResult[] = [];
    for (const file of this.#files) {
      const start = performance.now();
      const own: MutantCoverage = (namespace.mutantCoverage = { static: {}, perTest: {} });
      tests.push(...(await this.#run(file, this.#load(file), false)));
      for (const [id, hits] of Object.entries(own.static))
        all.static[id] = (all.static[id] ?? 0) + hits;
      Object.assign(all.perTest, own.perTest);
      const counts = [own.static, ...Object.values(own.perTest)];
      met.push({
        path: file.path,
        mutants: [...new Set(counts.flatMap((count) => Object.keys(count)))],
        time: performance.now() - start,
      });
    }
    writeFileSync(MET, JSON.stringify(met.toSorted((a, b) => a.time - b.time)));
    return { status: DryRunStatus.Complete, tests, mutantCoverage: all };
  }

  async mutantRun(options: MutantRunOptions): Promise<MutantRunResult> {
    const { activeMutant, mutantActivation, testFilter, hitLimit, disableBail } = options;
    namespace.hitLimit = hitLimit;
    namespace.hitCount = 0;
    const result: CompleteDryRunResult = { status: DryRunStatus.Complete, tests: [] };
    for (const file of this.#meeting(activeMutant.id)) {
      if (testFilter?.some((id) => id.startsWith(`${file.path} `)) === false) continue;
      namespace.activeMutant = mutantActivation === 'static' ? activeMutant.id : undefined;
      try {
        result.tests.push(...(await this.#tryOut(file, activeMutant.id, testFilter, !disableBail)));
      } catch (thrown) {
        // Declares no tests any more: no test has failed, and it is not counted either way.
        if (namespace.hitCount <= (hitLimit ?? Infinity))
          return { status: MutantRunStatus.Error, errorMessage: messageOf(thrown) };
      } finally {
        namespace.activeMutant = undefined;
      }
      if (!disableBail && result.tests.some(({ status }) => status === TestStatus.Failed)) break;
    }
    return toMutantRunResult(determineHitLimitReached(namespace.hitCount, hitLimit) ?? result);
  }

  /** Files that meet a mutant, the quickest first, so that most mutants never come to the slow. */
  #meeting(mutant: string): TestFile[] {
    if (!existsSync(MET)) return this.#files;
    const met = JSON.parse(readFileSync(MET, 'utf8')) as Met[];
    return met
      .filter(({ mutants }) => mutants.includes(mutant))
      .flatMap(({ path }) => this.#files.filter((file) => file.path === path));
  }

  /** What the tests of a file say of a mutant. */
  async #tryOut(
    file: TestFile,
    mutant: string,
    filter: readonly string[] | undefined,
    bail: boolean,
  ): Promise<TestResult[]> {
    const declared = this.#load(file);
    namespace.activeMutant = mutant;
    const wanted = filter && new Set(filter);
    const chosen = declared.filter((test) => wanted?.has(idOf(file, test)) ?? true);
    return this.#run(file, chosen, bail);
  }
}

export const strykerPlugins = [
  declareFactoryPlugin(PluginKind.TestRunner, 'quick', () => new QuickRunner()),
];
