import { h, type Element } from '../../markup/node.ts';

/** A small circuit round the part in question. */
export interface Schematic {
  /** What the circuit shows, for those who do not see it. */
  name: string;
  /** Steps of the grid across and down. */
  size: readonly [width: number, height: number];
  draw: readonly (readonly Element[])[];
}

const STEP = 10;

/** A circuit as an SVG: one line weight in the ink of the page, the part in question in its accent. */
export const schematicMarkup = ({ name, size, draw }: Schematic): Element => {
  const [width, height] = size.map((steps) => steps * STEP);
  return h(
    'svg',
    {
      class: 'schematic',
      role: 'img',
      'aria-label': name,
      width,
      height,
      viewBox: `0 0 ${width} ${height}`,
      fill: 'none',
      stroke: 'currentColor',
      'stroke-width': 1.3,
      'stroke-linejoin': 'round',
      'stroke-linecap': 'round',
      'font-size': 11,
    },
    draw,
  );
};
