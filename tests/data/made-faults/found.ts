import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { checkTables } from '../../../src/catalogue/checks/index.ts';
import type { Fault } from '../../../src/catalogue/index.ts';
import { readFolder } from '../../../src/catalogue/read-folder.ts';
import { readTable } from '../../../src/catalogue/read-table.ts';
import { readSeals, sealFaults, SEALS_FILE } from '../../../src/catalogue/seals.ts';
import { tables as registry } from '../../../src/schemas/tables.ts';
import { realFolder } from '../broken-copy.ts';
import type { MadeFault } from './file-slips.ts';

const { tables } = readFolder(realFolder);
const seals = readSeals(readFileSync(join(realFolder, SEALS_FILE), 'utf8'));

/** How a made fault was found: by what the tables say, by its seal alone, elsewhere, or not. */
export type Found = 'by sense' | 'by seal' | 'elsewhere' | 'not';

const isAt =
  ({ file, line }: MadeFault) =>
  (fault: Fault) =>
    fault.file === file && fault.line === line;

/** What the check says of a made fault. */
export const found = (made: MadeFault): Found => {
  const { file, text } = made;
  const bytes = made.bytes ?? new TextEncoder().encode(text);
  const { table, faults } = readTable(file, bytes, registry[file].row);
  const plain = faults.length > 0 ? faults : checkTables({ ...tables, [file]: table });
  if (plain.some(isAt(made))) return 'by sense';
  if (sealFaults(file, bytes, seals.get(file)).some(isAt(made))) return 'by seal';
  return plain.length > 0 ? 'elsewhere' : 'not';
};
