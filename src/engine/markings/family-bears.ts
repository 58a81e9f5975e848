import type { Catalogue } from '../catalogue.ts';

/**
 * Whether bodies of a family are met with a rated voltage as high, by the table of bodies; of a family
 * without a body there is nothing to tell by.
 * @param volts V
 */
export const familyBears = (
  { markings }: { markings: Pick<Catalogue['markings'], 'bodies'> },
  family: string,
  volts: number,
): boolean => {
  const bodies = markings.bodies.filter((row) => row.family === family);
  return bodies.length === 0 || bodies.some((row) => volts <= row.v_max);
};
