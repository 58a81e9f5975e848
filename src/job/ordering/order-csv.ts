import { safeTable } from '../list/safe-cell.ts';
import type { Order, OrderGroup } from './order.ts';

const COLUMNS = [
  'Quantity',
  'Needed',
  'Spares',
  'Kind',
  'What',
  'Value',
  'Tolerance',
  'Voltage',
  'Power',
  'Style',
  'Pitch',
  'Height at most',
  'Details',
  'Designators',
  'Notes',
];

const cellsOf = (group: OrderGroup): string[] => [
  String(group.total),
  String(group.needed),
  String(group.spares),
  group.kind,
  group.what,
  group.value,
  group.tolerance,
  group.volts,
  group.power,
  group.style,
  group.pitch,
  group.height,
  group.details,
  group.designators.join(' '),
  group.notes.join('; '),
];

const rowsOf = ({ groups }: Order): string[][] => [COLUMNS, ...groups.map(cellsOf)];

/** The order as comma-separated values that are safe in a spreadsheet. */
export const orderCsv = (order: Order): string => safeTable(rowsOf(order));

/** The same with tabs between its cells, as a spreadsheet takes what is pasted. */
export const orderTabbed = (order: Order): string => safeTable(rowsOf(order), '\t');
