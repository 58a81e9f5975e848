export const readMarking = (): never[] => [];
export type { Hints, Reading } from './reading.ts';
