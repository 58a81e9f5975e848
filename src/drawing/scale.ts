/** The scale of all drawings that say nothing else: px of the drawing to the millimetre. */
export const USUAL_SCALE = 8;

/** Scales to choose from, the largest first; smaller ones are for cans and gangs. */
export const SCALES = [USUAL_SCALE, 6, 4, 3, 2] as const;

/** The scale that most of a page's drawings have; the larger of two that are as common. */
export const commonScale = (scales: readonly number[]): number => {
  const counts = SCALES.map((scale) => scales.filter((other) => other === scale).length);
  return SCALES[counts.indexOf(Math.max(...counts))] ?? USUAL_SCALE;
};

const divisor = (a: number, b: number): number => (b === 0 ? a : divisor(b, a % b));

/**
 * How a scale compares with that of the page's other drawings; nothing where it is the same. Short,
 * for it stands under drawings that are narrow themselves.
 */
export const scaleWords = (scale: number, pageScale: number): string => {
  if (scale === pageScale) return '';
  const common = divisor(scale, pageScale);
  return scale > pageScale
    ? `drawn ${Math.round((scale / pageScale) * 100) / 100} times as large`
    : `drawn ${scale / common}/${pageScale / common} as large`;
};
