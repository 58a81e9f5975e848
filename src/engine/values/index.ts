export { nearestMade, nearestPreferred, nearestVoltage } from './nearest.ts';
export type { ValuePolicy } from './nearest.ts';
export { decadeOf, isSeriesName, SERIES_NAMES, valuesBetween } from './series.ts';
export type { SeriesName } from './series.ts';
