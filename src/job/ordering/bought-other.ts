import { formatValue } from '../../engine/index.ts';
import { pitchPhrase, ratingPhrase } from '../../substitution/phrases.ts';
import { printTolerance } from '../../substitution/typed-numbers.ts';
import { listed } from '../../text/words.ts';
import type { DeviceStandIn, KindStandIn } from '../planning/stand-in.ts';
import { nothingBought, type Bought, type ThingFor } from './thing.ts';

/** What to buy of a kind besides capacitors: value, tolerance, rating and what else it is ordered by. */
export const kindThing = (standIn: KindStandIn, kind: string, what: string): ThingFor => {
  const { value, unit, tolerance, rating, ratingUnit } = standIn.candidate;
  const thing: Bought = {
    ...nothingBought,
    kind,
    what,
    value: value === undefined || unit === undefined ? '' : formatValue(value, unit),
    tolerance: tolerance === undefined ? '' : printTolerance(tolerance),
    power: rating === undefined || ratingUnit === undefined ? '' : ratingPhrase(rating, ratingUnit),
    style: standIn.buy?.style ?? '',
    pitch: pitchPhrase(standIn),
    details: standIn.details.join(', '),
  };
  return { thing, each: standIn.inSeries ?? 1, notes: [] };
};

/** What to buy of a device: its number, and the body that its letters have to name. */
export const deviceThing = (
  { candidate, pins, pinNote }: DeviceStandIn,
  kind: string,
): ThingFor => {
  const { number, bodies, namesBody } = candidate;
  const body = listed([...bodies], 'or');
  const differing =
    pins.length === 0
      ? []
      : [`${String(pins.length)} pins do something else than in the old one: see the bench sheet`];
  return {
    thing: { ...nothingBought, kind, what: number, style: body },
    each: 1,
    notes: [
      ...(namesBody ? [`take one in ${body}: letters after the number may mean another body`] : []),
      ...differing,
      ...(pinNote === '' ? [] : [pinNote]),
    ],
  };
};
