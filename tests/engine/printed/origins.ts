/** Where values were written by codes and letters: everywhere but on old British parts. */
export const ALL_BUT_BRITISH = [
  'international',
  'soviet',
  'german',
  'french',
  'american',
  'chinese',
  'japanese',
  'czech',
];
