import { alternating } from '../../substitution/rated-voltage.ts';

/**
 * The conditions of a line with a working voltage that is marked as alternating where alternating
 * voltages stand: `250~` across a part is no steady voltage.
 */
export const withAlternating = (
  conditions: Readonly<Record<string, string>>,
): Record<string, string> => {
  const { vdc = '', vac = '', ...rest } = conditions;
  const steady = alternating(vdc);
  if (steady !== undefined && vac.trim() === '') return { ...rest, vdc: '0 V', vac: steady };
  return {
    ...rest,
    ...(vdc === '' ? {} : { vdc }),
    ...(vac === '' ? {} : { vac: alternating(vac) ?? vac }),
  };
};
