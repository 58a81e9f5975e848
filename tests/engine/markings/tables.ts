import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { z } from 'zod';
import { markingTables } from '../../../src/schemas/marking-tables.ts';
import type { MarkingTables } from '../../../src/schemas/markings.ts';
import { ruleOfThumbRow } from '../../../src/schemas/rules-of-thumb.ts';
import { typeRow } from '../../../src/schemas/types.ts';
import { seriesRow, unitRow } from '../../../src/schemas/values.ts';
import type { MarkingCatalogue } from '../../../src/engine/markings/lexicon/lexicon.ts';

const read = <Row extends z.ZodType>(file: string, row: Row): z.output<Row>[] => {
  const records: unknown = parse(readFileSync(`data/${file}`, 'utf8'), { columns: true });
  return z.array(row).parse(records);
};

/** The marking tables as they stand in `data/`. */
export const markings = Object.fromEntries(
  Object.entries(markingTables).map(([file, table]) => [table.name, read(file, table.row)]),
) as unknown as MarkingTables;

const factors = new Map(read('units.csv', unitRow).map(({ unit, factor }) => [unit, factor]));

/** What `readMarking` needs of the catalogue. */
export const catalogue: MarkingCatalogue = {
  markings,
  series: read('e-series.csv', seriesRow),
  rulesOfThumb: Object.fromEntries(
    read('rules-of-thumb.csv', ruleOfThumbRow).map(({ id, values, unit }) => [
      id,
      values.map((value) => value * (factors.get(unit) ?? NaN)),
    ]),
  ),
  types: Object.fromEntries(read('types.csv', typeRow).map((row) => [row.id, row])),
};
