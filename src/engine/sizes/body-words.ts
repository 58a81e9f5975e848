import type { BodyRow } from '../../schemas/sizes.ts';
import { formatValue } from '../quantities/index.ts';
import type { Body, Shape } from './body.ts';

const SHAPES: Record<Shape, string> = {
  can: 'can',
  tube: 'tube',
  box: 'box',
  disc: 'disc',
  drop: 'drop',
  chip: 'chip',
};

/** Sides of a body in millimetres, as the trade writes them: a diameter first where it is round. */
export const sidesInWords = (
  shape: Shape,
  { length, width, height }: Record<'length' | 'width' | 'height', number>,
): string => {
  const print = (millimetres: number): string => String(Math.round(millimetres * 10) / 10);
  switch (shape) {
    case 'can':
      return `⌀${print(length)} × ${print(height)}\u00A0mm`;
    case 'tube':
      return `⌀${print(width)} × ${print(length)}\u00A0mm`;
    case 'disc':
      return `⌀${print(length)} × ${print(width)}\u00A0mm`;
    case 'box':
    case 'drop':
    case 'chip':
      return `${print(length)} × ${print(width)} × ${print(height)}\u00A0mm`;
  }
};

/** Sides of a tabulated body. */
const rowInWords = ({ shape, length_mm, width_mm, height_mm }: BodyRow): string =>
  `${SHAPES[shape]} of ${sidesInWords(shape, { length: length_mm, width: width_mm, height: height_mm })}`;

const holding = ({ c_max: farads, voltage }: BodyRow): string =>
  `${formatValue(farads, 'F')} ${formatValue(voltage, 'V')}`;

/** How a body was found, for a working. */
export const bodyWords = (body: Body): string => {
  const [first, second] = body.rows;
  switch (body.from) {
    case 'listed':
      return first === undefined ? '' : `a listed ${rowInWords(first)}`;
    case 'covering':
      return first === undefined ? '' : `a ${rowInWords(first)} that takes ${holding(first)}`;
    case 'between':
      return first === undefined || second === undefined
        ? ''
        : `between the ${rowInWords(first)} for ${holding(first)} and the ` +
            `${rowInWords(second)} for ${holding(second)}`;
    case 'members':
      return 'what such a part may be';
    case 'together':
      return `two bodies, ${body.rows.map(rowInWords).join(' and ')}`;
    case 'estimate':
      return 'not listed, so estimated from the charge that the type packs in';
  }
};
