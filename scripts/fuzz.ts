import { runStep } from './steps.ts';

/**
 * Runs the tests again and again with fresh seeds for their properties, for ten minutes or as many
 * as are asked for: `npm run fuzz -- 30`. Ends at the first seed that finds a fault.
 */

const MINUTE = 60_000;
const minutes = Number(process.argv[2] ?? 10);
if (!(minutes > 0)) {
  console.error('npm run fuzz -- MINUTES: say for how many minutes, for instance 10');
  process.exit(2);
}

const end = Date.now() + minutes * MINUTE;
let rounds = 0;
while (Date.now() < end) {
  const seed = Math.floor(Math.random() * 2 ** 31);
  process.env['FUZZ_SEED'] = String(seed);
  if (!runStep({ name: 'test:unit', arguments: ['--reporter=dot'] })) {
    console.error(`\nA property fails with seed ${String(seed)}: FUZZ_SEED=${String(seed)}`);
    process.exit(1);
  }
  rounds += 1;
}
console.log(`\n${String(rounds)} rounds with fresh seeds, nothing found`);
