import { boxSurface, canSurface, cylinderSurface } from '../equations/surface.ts';
import { mapRising, type Range } from '../quantities/range.ts';
import type { Body } from './body.ts';

/** Surface (m2) that cools a body of three sides (m), by its shape; the side on the board counts not. */
const surfaceOf = ({ shape }: Body, length: number, width: number, height: number): number => {
  switch (shape) {
    case 'can':
      return cylinderSurface(length, height, 1);
    case 'tube':
      return cylinderSurface(width, length, 2);
    case 'disc':
      return cylinderSurface(length, width, 2);
    default:
      return boxSurface(length, width, height);
  }
};

/**
 * Surface (m2) that cools a part, from its listed sides; of a body of which only the volume is
 * known, that of a can of the usual shape.
 */
export const coolingSurface = (body: Body): Range => {
  const { shape, length, width, height, volume } = body;
  return shape === undefined
    ? mapRising(volume, canSurface)
    : {
        min: surfaceOf(body, length.min, width.min, height.min),
        typ: surfaceOf(body, length.typ, width.typ, height.typ),
        max: surfaceOf(body, length.max, width.max, height.max),
      };
};
