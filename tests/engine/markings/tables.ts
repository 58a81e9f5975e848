import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { z } from 'zod';
import { markingTables } from '../../../src/schemas/marking-tables.ts';
import type { MarkingTables } from '../../../src/schemas/markings.ts';
import { typeRow } from '../../../src/schemas/types.ts';
import { seriesRow } from '../../../src/schemas/values.ts';
import type { MarkingCatalogue } from '../../../src/engine/markings/read-marking.ts';

const read = <Row extends z.ZodType>(file: string, row: Row): z.output<Row>[] => {
  const records: unknown = parse(readFileSync(`data/${file}`, 'utf8'), { columns: true });
  return z.array(row).parse(records);
};

/** The marking tables as they stand in `data/`. */
export const markings = Object.fromEntries(
  Object.entries(markingTables).map(([file, table]) => [table.name, read(file, table.row)]),
) as unknown as MarkingTables;

/** What `readMarking` needs of the catalogue. */
export const catalogue: MarkingCatalogue = {
  markings,
  series: read('e-series.csv', seriesRow),
  types: Object.fromEntries(read('types.csv', typeRow).map((row) => [row.id, row])),
};
