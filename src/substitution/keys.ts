/** Keys of a substitution page's address that speak of the old part; others are condition ids. */
export const partKeys = {
  capacitance: 'c',
  tolerance: 'tol',
  ratedVoltage: 'v',
  age: 'age',
} as const;
export const guidelineKey = 'g';

/** Keys of the address that speak of the old part of a kind; all others are condition ids. */
export const kindPartKeys = { value: 'value', tolerance: 'tol', rating: 'rating' } as const;
