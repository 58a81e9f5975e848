/**
 * Checks a data folder, this project's own by default: `npm run check-data [folder]`.
 * Prints every fault on a line of its own, then how much was read. Ends with 1 if there is a fault.
 */
import { resolve } from 'node:path';
import { checkTables } from '../src/catalogue/checks/index.ts';
import { dataFolder } from '../src/catalogue/data-folder.ts';
import { countFaults, inReadingOrder, printFault } from '../src/catalogue/fault.ts';
import { readFolder, tableNames } from '../src/catalogue/read-folder.ts';
import { brokenSealsOf } from '../src/catalogue/sealed-folder.ts';

const [given] = process.argv.slice(2);
const folder = given === undefined ? dataFolder() : resolve(given);
const { tables, faults } = readFolder(folder);
const plain = [...faults, ...checkTables(tables)];
const all = inReadingOrder([
  ...plain,
  ...brokenSealsOf(folder, new Set(plain.map(({ file }) => file))),
]);
for (const fault of all) console.log(printFault(fault));

const read = tableNames.filter((file) => tables[file].readable);
const rows = read.reduce((sum, file) => sum + tables[file].rows.length, 0);
const figures = tables['figures.csv'].rows.length;
const sources = tables['sources.csv'].rows.length;
console.log(
  `${read.length} tables, ${rows} rows, ${figures} figures, ${sources} sources; ${countFaults(all.length)}`,
);
process.exitCode = all.length > 0 ? 1 : 0;
