/** A tolerance cell of the tables as people read it, without its per cent: `±5`, `−20/+80`. */
export const printToleranceCell = (cell: string): string =>
  cell.includes('/') ? `−${cell.replace('/', '/+')}` : `±${cell}`;
