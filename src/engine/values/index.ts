export { nearestMade, nearestPreferred, nearestVoltage } from './nearest.ts';
export type { ValuePolicy } from './nearest.ts';
export { isSeriesName, valuesBetween } from './series.ts';
export type { SeriesName } from './series.ts';
