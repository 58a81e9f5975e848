export { waysPrinted } from './ways-printed.ts';
export type { PartToPrint, Way } from './way.ts';
