import type { Line } from './job.ts';

/** What a line is called: by its designators, else by what is printed on its part or said of it. */
export const lineName = ({ designators, marking, value, type }: Line): string =>
  [designators, marking, value, type].find((text) => text.trim() !== '') ?? 'No designator';
