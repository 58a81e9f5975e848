export { readColours } from './read-colours.ts';
export type { ApartHint, ColourRequest } from './request.ts';
export { coloursPainted, type Painted } from './painted.ts';
export { bandsOf, type Banded } from './bands-of.ts';
