export { waysPrinted, type PrintingCatalogue } from './ways-printed.ts';
export type { PartToPrint, Way } from './way.ts';
