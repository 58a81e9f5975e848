export { nearestPreferred, nearestVoltage } from './nearest.ts';
export type { Preferred, ValuePolicy } from './nearest.ts';
export { decadeOf, SERIES_NAMES, valuesBetween } from './series.ts';
export type { SeriesName } from './series.ts';
