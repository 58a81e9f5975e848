import type { Catalogue } from '../catalogue.ts';

/**
 * DC voltage (V) from which on every conductor counts as dangerous, as the caution says; where there is
 * none, from nought on.
 */
export const dangerousVoltage = ({ cautions }: Pick<Catalogue, 'cautions'>): number =>
  cautions.find(({ id }) => id === 'high-voltage')?.from ?? 0;
