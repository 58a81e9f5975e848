/** What a job gives out as tables; a page fetches it when it is asked for. */
export { orderCsv, orderTabbed } from './order-csv.ts';
export { recordCsv } from './record-csv.ts';
export { tableOut } from './table-out.ts';
