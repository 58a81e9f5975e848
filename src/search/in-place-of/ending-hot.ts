import { parseQuantity, type Catalogue } from '../../engine/index.ts';

/** Highest temperatures that parts are marked with, degC, by the tables of codes for them. */
const marked = ({ markings: { climateLetters, class2Signs } }: Catalogue): ReadonlySet<number> =>
  new Set(
    [
      ...climateLetters.filter(({ place }) => place === 'high').map(({ degc }) => degc),
      ...class2Signs.filter(({ place }) => place === 'high').map(({ high }) => high),
    ].filter((one) => one !== undefined),
  );

/** Words of the longest way to write a temperature: `105 degrees C`. */
const MOST_WORDS = 3;

/** A number with nothing behind it, which has no unit. */
const BARE = /\d$/u;

/**
 * The highest temperature that a text ends with, degC, and what stands before it. What parts are not marked
 * with is none: the C of `47C` is a tolerance.
 */
export const endingHot = (
  catalogue: Catalogue,
  text: string,
): { degrees?: number; before: string } => {
  const temperatures = marked(catalogue);
  const starts = [...text.matchAll(/\S+/gu)].map(({ index }) => index).slice(-MOST_WORDS);
  for (const start of starts) {
    const said = text.slice(start).trim();
    const read = BARE.test(said) ? undefined : parseQuantity(said, 'degC');
    if (read?.ok === true && temperatures.has(read.value.typ))
      return { degrees: read.value.typ, before: text.slice(0, start).trim() };
  }
  return { before: text };
};
