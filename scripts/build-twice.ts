/**
 * Builds twice and compares every file: `npm run build:twice`. A build that depends on the clock, on
 * chance or on the order in which work happens to end is a fault, since nobody could check that a
 * site was made from its sources, and every edition would be fetched anew by those who keep it.
 */
import { createHash } from 'node:crypto';
import { globSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { SITE } from './site-folder.ts';
import { runStep } from './steps.ts';

const MOST_SHOWN = 20;

const build = (): Map<string, string> => {
  rmSync(SITE, { recursive: true, force: true });
  if (!runStep({ name: 'build' })) process.exit(1);
  const files = globSync('**/*', { cwd: SITE, withFileTypes: true }).filter((entry) =>
    entry.isFile(),
  );
  return new Map(
    files
      .map(({ parentPath, name }) => join(parentPath, name))
      .sort()
      .map((path) => [path, createHash('sha256').update(readFileSync(path)).digest('hex')]),
  );
};

const [first, second] = [build(), build()];
const paths = [...new Set([...first.keys(), ...second.keys()])];
const apart = paths.filter((path) => first.get(path) !== second.get(path));
for (const path of apart.slice(0, MOST_SHOWN)) console.error(`${path} differs`);
console.log(`two builds of ${String(paths.length)} files: ${String(apart.length)} differ`);
process.exit(apart.length === 0 ? 0 : 1);
