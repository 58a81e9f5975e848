import { spawnSync } from 'node:child_process';
import { groups, type Group } from './groups.ts';

/**
 * Changes the code in small ways, one at a time, and counts the changes that a test notices:
 * `npm run mutation -- engine/values` for a group, `-- src/engine/values/nearest.ts` for some of
 * its files. Each group is run with its own tests; without a path all groups are run, which takes
 * hours.
 */

const usage = (): never => {
  console.error('npm run mutation [-- GROUP or FILES of src/]; groups:');
  console.error(Object.keys(groups).join('\n'));
  process.exit(2);
};

/** The group that a path belongs to, with the files of it that are asked for. */
const groupOf = (path: string): [string, Group] => {
  const inside = path.replace(/^src\//, '').replace(/\/$/, '');
  const found = Object.entries(groups).find(([name]) => `${inside}/`.startsWith(`${name}/`));
  if (found === undefined) return usage();
  const [name, group] = found;
  if (inside === name) return found;
  const files = /\.ts$|\*/.test(inside) ? `src/${inside}` : `src/${inside}/**/*.ts`;
  return [inside.replace(/[^\w.-]+/g, '-'), { ...group, code: [files] }];
};

const runGroup = ([name, { code, tests }]: [string, Group]): boolean => {
  console.log(`\n== ${name}`);
  const report = `reports/mutation/${name.replaceAll('/', '-')}.json`;
  return (
    spawnSync('stryker', ['run', 'stryker.config.mjs', '--mutate', code.join(',')], {
      stdio: 'inherit',
      env: { ...process.env, MUTATION_TESTS: JSON.stringify(tests), MUTATION_REPORT: report },
    }).status === 0
  );
};

const asked = process.argv.slice(2);
const chosen = asked.length === 0 ? Object.entries(groups) : asked.map(groupOf);
process.exit(chosen.map(runGroup).every(Boolean) ? 0 : 1);
