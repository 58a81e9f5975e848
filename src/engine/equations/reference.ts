/**
 * Temperature (degC) that data sheets give values, insulation and leakage at. A part counts as being
 * at it where a position names no temperature of its own.
 */
export const REFERENCE_CELSIUS = 25;
