import {
  coloursOf,
  drawingOfOldPart,
  drawingOfPart,
  partsDrawing,
  scaleFor,
  sidesInShort,
  type DrawnPart,
} from '../drawing/index.ts';
import type { Assessment, Catalogue, Part } from '../engine/index.ts';
import { h, type Markup } from '../markup/node.ts';
import { basisWords, capital } from '../text/words.ts';

/** How the sides of a drawn part are known. */
export const SIDES_FROM: Record<DrawnPart['sides'], string> = {
  listed: 'as listed for this value and voltage',
  between: 'read between two listed sizes',
  estimated: 'estimated from the volume that such a part needs',
  usual: 'of a usual part, whatever its value',
};

/** A drawn part with what it is called below its drawing. */
export interface NamedDrawing extends DrawnPart {
  name: string;
}

/** What one buys of a stand-in: one part, or the two that it is made of. */
const boughtParts = ({ candidate, buy }: Assessment): (Part & { style?: string | undefined })[] =>
  candidate.made?.parts ?? [{ ...candidate, style: buy?.style }];

/** The old part as it is mostly met, and what is bought of a stand-in, if there is one. */
export const drawnParts = (
  catalogue: Catalogue,
  old: Part,
  assessment: Assessment | undefined,
): NamedDrawing[] => {
  const bought = assessment === undefined ? [] : boughtParts(assessment);
  const oldPart = drawingOfOldPart(catalogue, old);
  return [
    ...(oldPart === undefined ? [] : [{ ...oldPart, name: 'old part' }]),
    ...bought.flatMap((part, i) => {
      const drawn = drawingOfPart(catalogue, part);
      const name = bought.length > 1 ? `stand-in, part ${i + 1}` : 'stand-in';
      return drawn === undefined ? [] : [{ ...drawn, name }];
    }),
  ];
};

/**
 * The old part as it usually is, and a stand-in, on one board and over one rule.
 * @param room px across; a phone's unless given
 */
export const drawnBeside = (
  catalogue: Catalogue,
  old: Part,
  assessment: Assessment,
  room?: number,
): Markup => {
  const parts = drawnParts(catalogue, old, assessment);
  const views = 'first';
  const pageScale = scaleFor(parts, { views, ...(room === undefined ? {} : { room }) });
  return h(
    'figure',
    { class: 'drawn-beside' },
    partsDrawing(parts, { views, pageScale, colours: coloursOf(catalogue) }),
    h(
      'figcaption',
      { class: 'small' },
      h(
        'ul',
        { class: 'plain' },
        ...parts.map(({ name, spec, sides, basis }) =>
          h(
            'li',
            {},
            `${capital(name)}: `,
            h('span', { class: 'qty' }, sidesInShort(spec)),
            `, ${SIDES_FROM[sides]} (${basisWords[basis]?.meaning ?? basis}).`,
          ),
        ),
      ),
      h(
        'p',
        { class: 'quiet' },
        'Old parts differ widely: measure yours. Colour and marking are only what is usual.',
      ),
    ),
  );
};
