/** Tables of rows as JSON that names their columns once, for what is fetched and kept by browsers. */

type Row = Readonly<Record<string, unknown>>;

/** Key that a packed table stands under, as the only one of its object; no column is called so. */
const PACKED = '$rows';

/** A shorter table is not made shorter by it. */
const LEAST_ROWS = 3;

/** The columns that occur together, and rows that each begin with the place of theirs. */
type PackedRows = readonly [shapes: readonly (readonly string[])[], ...rows: unknown[][]];

const isRow = (value: unknown): value is Row =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const columnsOf = (row: Row): string[] =>
  Object.keys(row).filter((column) => row[column] !== undefined);

const packTable = (table: readonly Row[]): Row => {
  const places = new Map<string, number>();
  const shapes: string[][] = [];
  const rows = table.map((row) => {
    const columns = columnsOf(row);
    const shape = JSON.stringify(columns);
    const place = places.get(shape) ?? places.size;
    if (place === shapes.length) shapes.push(columns);
    places.set(shape, place);
    return [place, ...columns.map((column) => packRows(row[column]))];
  });
  return { [PACKED]: [shapes, ...rows] };
};

/**
 * The same with every table of rows packed, however deep it stands.
 * @param value plain data, as JSON can say it
 * @throws RangeError where a key of the data is the one that packed tables stand under
 */
export const packRows = (value: unknown): unknown => {
  if (Array.isArray(value)) {
    const items: readonly unknown[] = value;
    return items.length >= LEAST_ROWS && items.every(isRow)
      ? packTable(items)
      : items.map(packRows);
  }
  if (!isRow(value)) return value;
  if (Object.hasOwn(value, PACKED)) throw new RangeError(`${PACKED} is no name for a column`);
  return Object.fromEntries(columnsOf(value).map((column) => [column, packRows(value[column])]));
};

const unpackTable = ([shapes, ...rows]: PackedRows): Row[] =>
  rows.map(([place, ...cells]) => {
    const row: Record<string, unknown> = {};
    const columns = shapes[place as number] ?? [];
    // One by one, so that all rows of a shape share a hidden class.
    for (const [at, cell] of cells.entries()) row[columns[at] ?? ''] = unpackRows(cell);
    return row;
  });

/**
 * What was packed, as it was.
 * @param value what JSON.parse makes of packed data; of data without packed tables, the same again
 */
export const unpackRows = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(unpackRows);
  if (!isRow(value)) return value;
  const packed = value[PACKED];
  if (packed !== undefined) return unpackTable(packed as PackedRows);
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, unpackRows(each)]));
};
