import { existsSync, globSync, readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { allSums } from '../../src/engine/sums/index.ts';

/**
 * Where a finding leads to a bench sum, both work by the same functions: of `src/engine/equations/`,
 * or of the modules that look something up in tables.
 */
const SHARED = /^src\/engine\/(?:equations|sizes|reforming|triage)\//u;

const IMPORT = /^import (?<type>type )?\{(?<names>[^}]*)\} from '(?<from>\.[^']*)';/gmu;

interface Imported {
  name: string;
  from: string;
}

const importsOf = (file: string): Imported[] =>
  [...readFileSync(file, 'utf8').matchAll(IMPORT)].flatMap(({ groups = {} }) => {
    const from = normalize(join(dirname(file), groups['from'] ?? ''));
    if (groups['type'] !== undefined) return [];
    return (groups['names'] ?? '')
      .split(',')
      .map((name) => name.trim().replace(/ as .*$/u, ''))
      .filter((name) => name !== '' && !name.startsWith('type '))
      .map((name) => ({ name, from }));
  });

/** The part of the engine that a file belongs to, such as `src/engine/sums/`. */
const areaOf = (file: string): string => /^src\/engine\/[^/]+\//u.exec(file)?.[0] ?? '';

/** Shared modules that a file takes functions from, by itself or by others of its part. */
const usedBy = (file: string, seen = new Set<string>()): Set<string> => {
  if (seen.has(file)) return new Set();
  seen.add(file);
  const imports = importsOf(file);
  const own = imports.filter(({ from }) => SHARED.test(from)).map(({ from }) => from);
  const beside = imports
    .map(({ from }) => from)
    .filter((from) => from.startsWith(areaOf(file)) && !/\/(?:model|sum)\.ts$/u.test(from));
  return new Set([...own, ...beside.flatMap((from) => [...usedBy(from, seen)])]);
};

/** The file of each finding's model, by the list of models. */
const modelFiles = (index: string): Map<string, string> => {
  const text = readFileSync(index, 'utf8');
  const files = new Map(importsOf(index).map(({ name, from }) => [name, from]));
  const entries = text.matchAll(/^ {2}'?(?<id>[a-z0-9-]+)'?(?:: (?<name>\w+))?,$/gmu);
  return new Map(
    [...entries].flatMap(({ groups = {} }) => {
      const id = groups['id'] ?? '';
      const file = files.get(groups['name'] ?? id);
      return file === undefined ? [] : [[id, file] as const];
    }),
  );
};

const sumFiles = new Map(
  globSync('src/engine/sums/*/*.ts').map((file) => [file.replace(/^.*\/|\.ts$/gu, ''), file]),
);

const catalogue = loadCatalogue();
const capacitors = modelFiles('src/engine/findings/index.ts');
const kinds = modelFiles('src/engine/kinds/findings/index.ts');
const devices = modelFiles('src/engine/devices/models/index.ts');

/** Findings that hold one number against another, so that there is nothing to work out alike. */
const PLAIN = new Set([
  'esr-window',
  'regulator-dump',
  'headroom',
  'output-esr',
  'discharge',
  // The rating at mains frequency, which the sum is filled with.
  'ac-voltage',
]);

const led = [
  ...Object.values(catalogue.findings).map(({ id, sum }) => ({
    id,
    sum,
    file: capacitors.get(id) ?? kinds.get(id),
  })),
  ...catalogue.devices.findings.map(({ id, sum }) => ({ id, sum, file: devices.get(id) })),
].filter(({ sum }) => sum !== '');

describe('a finding and the sum that it leads to', () => {
  test.each(led)('$id and $sum work by the same equations', ({ id, sum, file = '' }) => {
    const sumFile = sumFiles.get(sum) ?? '';
    expect(existsSync(file), `the model of ${id}`).toBe(true);
    expect(existsSync(sumFile), sum).toBe(true);
    const own = usedBy(file);
    const shared = [...usedBy(sumFile)].filter((from) => own.has(from));
    expect(shared.length > 0 || PLAIN.has(id)).toBe(true);
  });

  test('every sum that findings lead to is among them', () => {
    expect(led.length).toBeGreaterThan(40);
    for (const { sum } of led) expect(allSums.map(({ id }) => id)).toContain(sum);
  });
});
