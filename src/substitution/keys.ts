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

/** Key of the address that names the type of a part that the visitor has; its numbers have keys by kind. */
export const havingTypeKey = 'have';
/** Id of the place in a page where that part's findings stand. */
export const havingId = 'have-part';

/** Keys of the address that speak of a capacitor that the visitor has and asks about. */
export const havingKeys = {
  type: havingTypeKey,
  capacitance: 'have-c',
  tolerance: 'have-tol',
  ratedVoltage: 'have-v',
} as const;

/** The same of a resistor, trimmer or pot. */
export const kindHavingKeys = {
  type: havingTypeKey,
  value: 'have-value',
  tolerance: 'have-tol',
  rating: 'have-rating',
} as const;
