/** Length over diameter of a usual can. */
const CAN_SHAPE = 1.6;

/** Surface (m2) of a cylinder (m): its side and as many of its ends as are free. */
export const cylinderSurface = (diameter: number, length: number, ends: 1 | 2): number =>
  Math.PI * diameter * length + (ends * Math.PI * diameter ** 2) / 4;

/** Surface (m2) of a box (m) that stands on a board: four sides and the top. */
export const boxSurface = (length: number, width: number, height: number): number =>
  2 * (length + width) * height + length * width;

/** Diameter (m) of a can of the usual shape and of a volume (m3). */
export const usualDiameter = (volume: number): number =>
  Math.cbrt((4 * volume) / (Math.PI * CAN_SHAPE));

/** Surface (m2) that cools a can of the usual shape and of a volume (m3): its side and its top. */
export const canSurface = (volume: number): number => {
  const diameter = usualDiameter(volume);
  return cylinderSurface(diameter, CAN_SHAPE * diameter, 1);
};
