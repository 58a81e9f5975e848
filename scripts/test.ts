import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { z } from 'zod';
import { ensureBrowser } from './browser.ts';
import { runBeside, runStep, type Step } from './steps.ts';

/** Runs every check and test there is, all of them even when one fails, and counts at the end. */

const UNIT_REPORT = 'test-results/unit.json';
const BROWSER_REPORT = 'test-results/browser.json';

interface Count {
  passed: number;
  failed: number;
}

const unitReport = z
  .object({ numPassedTests: z.number(), numFailedTests: z.number() })
  .transform(({ numPassedTests: passed, numFailedTests: failed }): Count => ({ passed, failed }));

/**
 * A browser and two cores that others use as well may be late once: a test that fails, then passes
 * when it is tried again, is named in the report and passes, as long as there are few of them.
 */
const FLAKY_AT_MOST = 2;

const browserReport = z
  .object({ stats: z.object({ expected: z.number(), unexpected: z.number(), flaky: z.number() }) })
  .transform(({ stats: { expected, unexpected, flaky } }): Count =>
    flaky > FLAKY_AT_MOST
      ? { passed: expected, failed: unexpected + flaky }
      : { passed: expected + flaky, failed: unexpected },
  );

const countOf = (passed: boolean): Count =>
  passed ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 };

/** A step that is one check by itself: it passes or it fails. */
const single = (step: Step): Count => countOf(runStep(step));

/** Such steps that do not need one another: a build leaves a part of the second core to a check. */
const beside = async (...steps: readonly Step[]): Promise<Count[]> =>
  (await Promise.all(steps.map(runBeside))).map(countOf);

/** A test runner with a report; a run that ends badly without a failed test still failed. */
const counted = (step: Step, report: string, schema: z.ZodType<Count>): Count => {
  const ended = runStep(step);
  if (!existsSync(report)) return { passed: 0, failed: 1 };
  const count = schema.parse(JSON.parse(readFileSync(report, 'utf8')));
  return ended || count.failed > 0 ? count : { ...count, failed: 1 };
};

const browserTests = (): Count => {
  const browser = ensureBrowser();
  if ('advice' in browser) {
    console.error(browser.advice);
    return { passed: 0, failed: 1 };
  }
  return counted({ name: 'test:browser' }, BROWSER_REPORT, browserReport);
};

rmSync('test-results', { recursive: true, force: true });
mkdirSync('test-results', { recursive: true });

const counts = [
  single({ name: 'check-data' }),
  ...(await beside({ name: 'build:twice' }, { name: 'lint' })),
  ...(await beside({ name: 'build:under-a-path' }, { name: 'types' }, { name: 'format:check' })),
  counted(
    {
      name: 'test:unit',
      arguments: ['--reporter=dot', '--reporter=json', `--outputFile.json=${UNIT_REPORT}`],
    },
    UNIT_REPORT,
    unitReport,
  ),
  browserTests(),
];
const total = counts.reduce((sum, count) => ({
  passed: sum.passed + count.passed,
  failed: sum.failed + count.failed,
}));
console.log(`\n${total.passed} passed, ${total.failed} failed`);
process.exit(total.failed === 0 ? 0 : 1);
