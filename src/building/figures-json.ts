/** Significant digits that figures are written with: more would only pretend. */
const DIGITS = 3;

const rounded = (value: unknown): unknown => {
  if (typeof value === 'number')
    return Number.isFinite(value) ? Number(value.toPrecision(DIGITS)) : value;
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return value.map(rounded);
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, rounded(one)]));
};

/**
 * The figures of a page as the JSON beside it, SI units, all to three significant digits. They are
 * rounded beforehand: a replacer called for each of them takes three times as long.
 */
export const figuresJson = (page: object): string => JSON.stringify(rounded(page));
