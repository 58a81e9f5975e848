const CYRILLIC = /\p{Script=Cyrillic}/u;
const LATIN = /[A-Z]/iu;

/** Latin capitals by the Cyrillic ones that look alike, else by those that sound alike. */
const BY_LOOK = new Map(
  [...'ABCEHKMOPTXYDFGILNRSUVZ'].map((letter, at) => [
    letter,
    'АВСЕНКМОРТХУДФГИЛНРСУВЗ'.charAt(at),
  ]),
);

/** The same with what sounds alike first: who puts Cyrillic numbers into Latin letters writes MP for МП. */
const BY_SOUND = new Map([...BY_LOOK, ['P', 'П'], ['B', 'Б'], ['H', 'Х'], ['C', 'Ц']]);

const isMixed = (word: string): boolean => CYRILLIC.test(word) && LATIN.test(word);

const inCyrillic = (word: string, letters: ReadonlyMap<string, string>): string =>
  word.toUpperCase().replaceAll(/[A-Z]/gu, (letter) => letters.get(letter) ?? letter);

/**
 * A mark as it stands, or with words that mix Latin and Cyrillic letters, such as `MP42Б`, in Cyrillic
 * ones alone: by how letters look, then by how they sound. No register mixes the two.
 */
export const inOneScript = (mark: string): string[] => {
  const words = mark.split(/(?<=\s)|(?=\s)/u);
  if (!words.some(isMixed)) return [mark];
  return [BY_LOOK, BY_SOUND].map((letters) =>
    words.map((word) => (isMixed(word) ? inCyrillic(word, letters) : word)).join(''),
  );
};
