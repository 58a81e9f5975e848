import { mountedOtherwise, type Assessment, type Catalogue } from '../../engine/index.ts';
import { otherwisePhrase, partPhrase } from '../../substitution/phrases.ts';
import { typeNameIn } from './type-name.ts';

const wordsIn = (text: string): string[] => text.toLowerCase().split(/[^\p{L}]+/u);

/** The first word of a style: `axial` of an `axial can`. */
const mountingOf = (style: string): string => wordsIn(style)[0] ?? '';

/**
 * That what goes in, or else another part that serves no worse, is sold as the words of a line say that
 * the old one is mounted. Nothing where they do not say so.
 * @param words what the list says of the old part
 * @param serving what goes in, and what serves no worse; asked for where the words name a way of mounting
 */
export const soldAsOldNote = (
  catalogue: Catalogue,
  words: string,
  serving: () => readonly [Assessment, ...Assessment[]],
): string => {
  const said = new Set(wordsIn(words));
  if (!catalogue.offers.some(({ style }) => said.has(mountingOf(style)))) return '';
  const [standIn, ...others] = serving();
  for (const { candidate, buy } of [standIn, ...others]) {
    const other = buy && mountedOtherwise(catalogue, candidate, buy);
    if (other === undefined || !said.has(mountingOf(other.style))) continue;
    const sold = `sold as ${other.style}${otherwisePhrase(other)}`;
    const part = `${typeNameIn(catalogue, candidate.type)} ${partPhrase(candidate)}`;
    const isThis = candidate.type === standIn.candidate.type;
    const which = isThis ? `also ${sold}` : `${part} serves too and is ${sold}`;
    return `the old one is ${mountingOf(other.style)}: ${which}`;
  }
  return '';
};
