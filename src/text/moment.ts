/** A moment in ISO 8601, in UTC, to the minute as people read it: `2026-11-30 09:41`. */
export const printMoment = (at: string): string => at.slice(0, 16).replace('T', ' ');
