import { line, type Path } from '../path.ts';

/** A slot for a screwdriver, across or on the slant. */
export const slot = (x: number, y: number, reach: number, slant = 0.5): Path => {
  const [dx, dy] = [reach * Math.cos(slant), reach * Math.sin(slant)];
  return line([x - dx, y - dy], [x + dx, y + dy]);
};
