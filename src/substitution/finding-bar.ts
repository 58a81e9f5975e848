import { rangeBar, scaleThatShows } from '../components/range-bar.ts';
import { formatValue, type Finding, type Habit, type Unit } from '../engine/index.ts';
import type { Markup } from '../markup/node.ts';
import { AMPLE } from './phrases.ts';

/**
 * The old part's range and the stand-in's on one axis with the limit; nothing where there is no
 * range to see, or the limit is so far off that it does not matter.
 */
export const findingBar = (
  { standIn, original, limit, unit, name, margin }: Finding,
  habit?: Habit,
): Markup | undefined => {
  if (standIn === undefined || standIn.min === standIn.max || unit === 'grade') return undefined;
  if (margin >= AMPLE) return undefined;
  const rows = [
    ...(original === undefined ? [] : [{ label: 'old part', range: original }]),
    { label: 'stand-in', range: standIn },
  ];
  return rangeBar({
    toldBeside: true,
    title: name,
    rows,
    limit,
    scale: scaleThatShows(rows, limit),
    print: (value) => formatValue(value, unit as Unit, habit),
  });
};
