import { exactly, type Range } from '../../quantities/range.ts';
import type { DeviceModel } from '../model.ts';
import { comparePins, type PinComparison, type PinDifference } from '../pins.ts';

const byPins = (
  value: (comparison: PinComparison) => Range,
  working: (comparison: PinComparison) => string,
): DeviceModel => ({
  measure: (device, { catalogue, original }) => {
    const found = comparePins(catalogue, original, device);
    if (found === undefined) return { status: 'unknown', missing: ['pins'] };
    const { basis, sources } = found;
    return { status: 'known', value: value(found), properties: [], sources, bases: [basis] };
  },
  working: (device, { catalogue, original }) => {
    const found = comparePins(catalogue, original, device);
    return found === undefined ? 'not known' : working(found);
  },
});

const MOST_NAMED = 4;

const named = (differences: readonly PinDifference[]): string => {
  if (differences.length === 0) return 'every pin does the same';
  const first = differences
    .slice(0, MOST_NAMED)
    .map(({ pin, old, now }) => `pin ${pin}: ${old} becomes ${now}`);
  const left = differences.length - first.length;
  return [...first, ...(left > 0 ? [`${left} more`] : [])].join(', ');
};

/** Pins that the circuit needs and that differ. */
export const pins = byPins(
  ({ main }) => exactly(main.usual),
  ({ usual }) => named(usual.filter(({ role }) => role === 'main')),
);

/** Pins that may differ, because a number is sold with several orders. */
export const pinsInDoubt = byPins(
  ({ main }) => ({ min: 0, typ: 0, max: main.most - main.least }),
  ({ main }) =>
    main.most === main.least
      ? 'one order of pins is known for each'
      : `from ${main.least} to ${main.most} pins differ, by the order that each is sold with`,
);

/** Null, balance and compensation pins that differ. */
export const trimPins = byPins(
  ({ trim }) => ({ min: 0, typ: 0, max: trim }),
  ({ usual }) => named(usual.filter(({ role }) => role === 'trim')),
);
