import { h, type Element, type Markup } from '../../markup/node.ts';
import type { ColourRow } from './state.ts';

const SIDE = 20;

/** A patch of paint with an outline; empty and dashed where nothing is painted. */
export const swatch = (colour: Pick<ColourRow, 'fill'> | undefined): Element =>
  h(
    'svg',
    {
      class: 'swatch',
      width: SIDE,
      height: SIDE,
      viewBox: `0 0 ${SIDE} ${SIDE}`,
      'aria-hidden': 'true',
    },
    h('rect', {
      x: 1,
      y: 1,
      width: SIDE - 2,
      height: SIDE - 2,
      ...(colour === undefined || colour.fill === ''
        ? { class: 'swatch-empty' }
        : { fill: colour.fill }),
    }),
    colour === undefined &&
      h('text', { x: SIDE / 2, y: SIDE / 2 + 5, 'text-anchor': 'middle', 'font-size': 14 }, '?'),
  );

/** A colour as it is shown everywhere: its paint and its name. */
export const colourName = (
  colour: Pick<ColourRow, 'fill' | 'name'> | undefined,
  otherwise = 'cannot tell',
): Markup =>
  h('span', { class: 'colour-name' }, swatch(colour), h('span', {}, colour?.name ?? otherwise));
