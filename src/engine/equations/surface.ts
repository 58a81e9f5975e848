/** Surface (m2) of a cylinder (m): its side and as many of its ends as are free. */
export const cylinderSurface = (diameter: number, length: number, ends: 1 | 2): number =>
  Math.PI * diameter * length + (ends * Math.PI * diameter ** 2) / 4;

/** Surface (m2) of a box (m) that stands on a board: four sides and the top. */
export const boxSurface = (length: number, width: number, height: number): number =>
  2 * (length + width) * height + length * width;

/** Diameter (m) of a can of a volume (m3) that is so many times as high as wide. */
export const canDiameter = (volume: number, shape: number): number =>
  Math.cbrt((4 * volume) / (Math.PI * shape));

/** Surface (m2) that cools such a can: its side and its top. */
export const canSurface = (volume: number, shape: number): number => {
  const diameter = canDiameter(volume, shape);
  return cylinderSurface(diameter, shape * diameter, 1);
};
