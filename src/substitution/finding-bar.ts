import { rangeBar } from '../components/range-bar.ts';
import { formatValue, type Finding, type Habit, type Unit } from '../engine/index.ts';
import type { Markup } from '../markup/node.ts';

/** The old part's range and the stand-in's on one axis with the limit; nothing where there is no range to see. */
export const findingBar = (
  { standIn, original, limit, unit, name }: Finding,
  habit?: Habit,
): Markup | undefined => {
  if (standIn === undefined || standIn.min === standIn.max || unit === 'grade') return undefined;
  const rows = [
    ...(original === undefined ? [] : [{ label: 'old part', range: original }]),
    { label: 'stand-in', range: standIn },
  ];
  return rangeBar({
    toldBeside: true,
    title: name,
    rows,
    limit,
    scale: rows.every(({ range }) => range.min > 0) ? 'log' : 'linear',
    print: (value) => formatValue(value, unit as Unit, habit),
  });
};
