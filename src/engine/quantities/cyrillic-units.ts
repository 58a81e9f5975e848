/** Units as Cyrillic letters write them, in any mixture of small and capital letters. */
const UNITS: Readonly<Record<string, string>> = {
  ...{ ф: 'F', ом: 'ohm', в: 'V', а: 'A', вт: 'W', гц: 'Hz', гн: 'H', дж: 'J', с: 's', сек: 's' },
  ...{ мин: 'min', ч: 'h', год: 'years', года: 'years', лет: 'years' },
};

/** Prefixes in small letters; М and м are nine decades apart, as in Latin. */
const PREFIXES: Readonly<Record<string, string>> = {
  ...{ мк: 'u', п: 'p', н: 'n', м: 'm', к: 'k', г: 'G', т: 'T' },
};

const WRITTEN = new RegExp(
  `^(${Object.keys(PREFIXES).join('|')})?(${Object.keys(UNITS).join('|')})?$`,
  'iu',
);

const prefixOf = (written: string): string =>
  written === 'М' ? 'M' : (PREFIXES[written.toLowerCase()] ?? '');

/** A unit in Latin letters, `мкФ` as `uF` and `МОм` as `Mohm`; what is none stays as it is. */
export const inLatin = (written: string): string => {
  const found = WRITTEN.exec(written);
  if (found === null || written === '') return written;
  const [, prefix = '', unit = ''] = found;
  return prefixOf(prefix) + (UNITS[unit.toLowerCase()] ?? '');
};
