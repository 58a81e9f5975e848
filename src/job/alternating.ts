/** A voltage marked as alternating: `250~`, `250 V~`, `275 VAC`. */
const MARKED = /^(.*?\d)\s*(k?V)?\s*(?:~|a\.?c\.?)\s*(V)?$/iu;

/** A voltage without the sign that says it alternates; nothing where it has none. */
export const alternating = (text: string): string | undefined => {
  const [, number, before, after] = MARKED.exec(text.trim()) ?? [];
  return number === undefined ? undefined : `${number} ${before ?? after ?? 'V'}`;
};

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
