/** A length to a tenth, as drawings have it: more is not seen, and only makes pages larger. */
export const toTenth = (value: number): number => Math.round(value * 10) / 10;
