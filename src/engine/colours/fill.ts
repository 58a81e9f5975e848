import type { ColourId, Scheme } from './scheme.ts';
import { makesValue, type Marks } from './take.ts';

/** Unknown places of the value that are filled in with every colour; with more, no value is left. */
const MOST_GUESSED = 2;

/** Colours of all places with those filled in that were unknown. */
export interface Filling {
  marks: Marks;
  /** Zero-based places that were filled in. */
  guessed: readonly number[];
}

const coloursFor = ({ meanings }: Scheme, role: string): ColourId[] => [
  ...new Set(
    meanings
      .filter((row) => row.role === role && row.second === '')
      .map(({ colour }) => colour)
      .filter((colour) => colour !== 'none'),
  ),
];

/** Every way to fill in the unknown places of the value; other places stay unknown. */
export const fillings = (scheme: Scheme, marks: Marks): Filling[] => {
  const unknown = scheme.groups
    .filter(makesValue)
    .flatMap(({ role, at }) => at.map((place) => ({ role, place })))
    .filter(({ place }) => marks[place] === undefined);
  if (unknown.length > MOST_GUESSED) return [{ marks, guessed: [] }];
  const guessed = unknown.map(({ place }) => place);
  return unknown
    .reduce<Marks[]>(
      (all, { role, place }) =>
        all.flatMap((one) => coloursFor(scheme, role).map((colour) => one.with(place, colour))),
      [marks],
    )
    .map((filled) => ({ marks: filled, guessed }));
};
