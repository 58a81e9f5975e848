/** What a job gives out as tables; a page fetches it when it is asked for. */
export { orderCsv, orderTabbed } from './ordering/order-csv.ts';
export { recordCsv } from './bench/record-csv.ts';
export { tableOut } from './list/table-out.ts';
