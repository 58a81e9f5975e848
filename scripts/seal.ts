/**
 * Seals the tables as they are: `npm run seal`. Says which lines are new or changed, so that they
 * can be compared with their sources once more. Does not seal tables with faults.
 */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { dataFolder } from '../src/catalogue/data-folder.ts';
import { checkFolder, printFault, tableNames } from '../src/catalogue/index.ts';
import { readSeals, sealFaults, sealOf, SEALS_FILE, writeSeals } from '../src/catalogue/seals.ts';

const folder = dataFolder();
const faults = checkFolder(folder);
if (faults.length > 0) {
  for (const fault of faults) console.error(printFault(fault));
  console.error('mend these first');
  process.exit(1);
}

const path = join(folder, SEALS_FILE);
const old = existsSync(path) ? readSeals(readFileSync(path, 'utf8')) : new Map<string, string[]>();
const tables = tableNames.map((file) => ({ file, bytes: readFileSync(join(folder, file)) }));
let changed = 0;
for (const { file, bytes } of tables) {
  for (const { line, wrong, got } of sealFaults(file, bytes, old.get(file))) {
    changed += 1;
    console.log(`${file}:${String(line)}: ${wrong}: ${got}`);
  }
}
writeFileSync(path, writeSeals(new Map(tables.map(({ file, bytes }) => [file, sealOf(bytes)]))));
console.log(`${String(tables.length)} tables sealed, ${String(changed)} lines were not`);
