import { globSync, readFileSync } from 'node:fs';
import { runStep } from './steps.ts';

/**
 * Runs the tests of properties again and again with fresh seeds, for ten minutes or as many as are
 * asked for: `npm run fuzz -- 30`. Ends at the first seed that finds a fault.
 */

const MINUTE = 60_000;
/** A busy machine is no fault of a property. */
const PATIENT = ['--reporter=dot', '--testTimeout=180000'];
const minutes = Number(process.argv[2] ?? 10);
if (!(minutes > 0)) {
  console.error('npm run fuzz -- MINUTES: say for how many minutes, for instance 10');
  process.exit(2);
}

/** Test files that draw something by chance; to the others one seed is as good as another. */
const withProperties = globSync('tests/**/*.test.ts')
  .filter((file) => /\bfast-check\b|\bany-job\b/.test(readFileSync(file, 'utf8')))
  .toSorted();

const end = Date.now() + minutes * MINUTE;
let rounds = 0;
while (Date.now() < end) {
  const seed = Math.floor(Math.random() * 2 ** 31);
  process.env['FUZZ_SEED'] = String(seed);
  if (!runStep({ name: 'test:unit', arguments: [...PATIENT, ...withProperties] })) {
    console.error(`\nA property fails with seed ${String(seed)}: FUZZ_SEED=${String(seed)}`);
    process.exit(1);
  }
  rounds += 1;
}
console.log(
  `\n${String(rounds)} rounds of ${String(withProperties.length)} files with fresh seeds, nothing found`,
);
