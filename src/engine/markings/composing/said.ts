import type { Parse } from '../ways/parse.ts';
import type { ReadingKind } from '../meanings/reading.ts';
import type { Content } from '../meanings/token.ts';

/** What tokens say of one thing. */
export type Said<Says extends Content['says']> = Extract<Content, { says: Says }>;

/** Everything that the tokens of a way say of one thing, in the order of the marking. */
export const said = <Says extends Content['says']>(parse: Parse, says: Says): Said<Says>[] =>
  parse.taken
    .map((token) => token.meaning.content)
    .filter((content): content is Said<Says> => content.says === says);

/** The value that a way gives the part, and what it is the value of. */
export const valueSaid = (parse: Parse): Said<'capacitance' | 'resistance'> | undefined => {
  const content = parse.value?.meaning.content;
  return content?.says === 'capacitance' || content?.says === 'resistance' ? content : undefined;
};

/** What a way makes of the part. */
export const kindOf = (parse: Parse): ReadingKind => {
  const isResistor =
    parse.value === undefined
      ? said(parse, 'style').length + said(parse, 'power').length > 0
      : valueSaid(parse)?.says === 'resistance';
  return isResistor ? 'resistor' : 'capacitor';
};
