/** Signs of codes that a file name cannot carry on every system, in letters that it can. */
const SPELLED: Readonly<Record<string, string>> = {
  µ: 'micro',
  μ: 'micro',
  Ω: 'ohm',
  '%': 'percent',
  '/': '-',
  '.': '-point-',
  '±': 'both-ways-',
  '~': 'ac',
  '=': 'dc',
  '+': 'plus',
};

/** Cyrillic letters by the sound that they stand for. */
const CYRILLIC: Readonly<Record<string, string>> = Object.fromEntries(
  [...'абвгдежзийклмнопрстуфхцчшщыэюя'].map((letter, index) => [
    letter,
    'a b v g d e zh z i j k l m n o p r s t u f h c ch sh shch y e ju ja'.split(' ')[index] ?? '',
  ]),
);

/**
 * A code as part of an address: small letters, figures and hyphens alone, so that it is the same on
 * systems that do not tell capital from small letters. A code in small letters is told from the
 * same in capitals by `small-` in front, one in Cyrillic letters by `cyrillic-`.
 */
export const codeSlug = (code: string): string => {
  const small = /\p{Ll}/u.test(code) && !/\p{Lu}/u.test(code) && code.length === 1 ? 'small-' : '';
  const cyrillic = /\p{Script=Cyrillic}/u.test(code) ? 'cyrillic-' : '';
  const letters = Array.from(code, (character) => {
    const low = character.toLowerCase();
    return SPELLED[character] ?? CYRILLIC[low] ?? (/[a-z0-9]/.test(low) ? low : '-');
  }).join('');
  return (small + cyrillic + letters).replace(/-+/g, '-').replace(/^-|-$/g, '');
};
