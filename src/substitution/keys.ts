/** Keys of a substitution page's address that speak of the old part; others are condition ids. */
export const partKeys = {
  capacitance: 'c',
  tolerance: 'tol',
  ratedVoltage: 'v',
  age: 'age',
} as const;
export const guidelineKey = 'g';
