import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { serialize } from 'node:v8';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { groups, type Group } from './groups.ts';
import { readSample } from './in-sample.ts';

/**
 * Changes the code in small ways, one at a time, and counts the changes that a test notices:
 * `npm run mutation -- engine/values` for a group, `-- src/engine/values/nearest.ts` for some of
 * its files. Each group is run with its own tests; without a path all groups are run, which takes
 * hours. `--sample 1/5/any` tries one in five changes, chosen by chance from the seed `any`.
 */

const usage = (): never => {
  console.error('npm run mutation [-- [--sample PART/WHOLE/SEED] GROUP or FILES of src/]; groups:');
  console.error(Object.keys(groups).join('\n'));
  process.exit(2);
};

/** A path as it stands below `src/`. */
const inSource = (path: string): string => path.replace(/^src\//, '').replace(/\/$/, '');

const groupOf = (inside: string): string =>
  Object.keys(groups).find((name) => `${inside}/`.startsWith(`${name}/`)) ?? usage();

const patternOf = (inside: string): string =>
  /\.ts$|\*/.test(inside) ? `src/${inside}` : `src/${inside}/**/*.ts`;

/** The files of a group that are asked for, or all of them. */
const partOf = (name: string, { code, tests }: Group, paths: readonly string[]): Group =>
  paths.includes(name) ? { code, tests } : { code: paths.map(patternOf), tests };

const folder = mkdtempSync(join(tmpdir(), 'mutation-'));
process.on('exit', () => {
  rmSync(folder, { recursive: true });
});
const catalogue = join(folder, 'catalogue');
writeFileSync(catalogue, serialize(loadCatalogue()));

const runGroup = (name: string, { code, tests }: Group, sample: string | undefined): boolean => {
  console.log(`\n== ${name}${sample === undefined ? '' : `, a sample of ${sample}`}`);
  // What a sample leaves out must not be taken over as left out by the next.
  const drawn = sample === undefined ? '' : `-sample-${sample.replaceAll('/', '-')}`;
  const report = `reports/mutation/${name.replaceAll('/', '-')}${drawn}.json`;
  return (
    spawnSync('stryker', ['run', 'stryker.config.mjs', '--mutate', code.join(',')], {
      stdio: 'inherit',
      env: {
        ...process.env,
        MUTATION_TESTS: JSON.stringify(tests),
        MUTATION_REPORT: report,
        ...(sample === undefined ? {} : { MUTATION_SAMPLE: sample }),
        // What changes how tables are read must read them.
        ...(name === 'catalogue' ? {} : { MUTATION_CATALOGUE: catalogue }),
      },
    }).status === 0
  );
};

const { values, positionals } = parseArgs({
  options: { sample: { type: 'string' } },
  allowPositionals: true,
});
const { sample } = values;
if (sample !== undefined && readSample(sample) === undefined) usage();
const given = positionals.map(inSource);
const asked = given.length === 0 ? Object.keys(groups) : given;
const done = Object.entries(Object.groupBy(asked, groupOf)).map(([name, paths = []]) => {
  const group = groups[name];
  return group !== undefined && runGroup(name, partOf(name, group, paths), sample);
});
process.exit(done.every(Boolean) ? 0 : 1);
