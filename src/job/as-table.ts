/** What a job gives out as comma-separated values; a page fetches it when it is asked for. */
export { orderCsv } from './order-csv.ts';
export { recordCsv } from './record-csv.ts';
export { tableOut } from './table-out.ts';
