/** What one of a unit is in SI, of units that arithmetic goes by besides. */
export const MINUTE = 60;
export const HOUR = 60 * MINUTE;
export const DAY = 24 * HOUR;
/** Of 365.25 days. */
export const YEAR = 365.25 * DAY;
export const MILLIMETRE = 1e-3;
