/** A place in a drawing, in its own units. */
export type Place = readonly [x: number, y: number];

const px = (value: number): string => value.toFixed(1);

/** A line from place to place; steps keep their height until the next place. */
export const lineThrough = (places: readonly Place[], as: 'line' | 'steps'): string =>
  places
    .map(([x, y], index) => {
      if (index === 0) return `M${px(x)} ${px(y)}`;
      return as === 'steps' ? `H${px(x)}V${px(y)}` : `L${px(x)} ${px(y)}`;
    })
    .join('');

/** The surface between two lines over the same places. */
export const bandBetween = (lower: readonly Place[], upper: readonly Place[]): string =>
  lower.length === 0 ? '' : `${lineThrough([...lower, ...upper.toReversed()], 'line')}Z`;
