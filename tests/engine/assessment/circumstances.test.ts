import { expect, test } from 'vitest';
import { circumstancesOf } from '../../../src/engine/assessment/circumstances.ts';
import type { Catalogue } from '../../../src/engine/catalogue.ts';
import type { Request } from '../../../src/engine/index.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';
import { catalogue, given } from './setting.ts';

/** When the rating on the old part says something of the circuit, and so is kept. */

/** The catalogue with a type whose old parts were rated near, or far above, what they had to bear. */
const rated = (type: string, chosen: 'tight' | 'ample'): Catalogue => {
  const row = catalogue.types[type];
  if (row === undefined) throw new Error(`no type ${type}`);
  const old_ample_below = chosen === 'ample' ? 500 : undefined;
  return { ...catalogue, types: { ...catalogue.types, [type]: { ...row, old_ample_below } } };
};

const old = (type: string, volts?: number): Request => ({
  original: { type, ...(volts === undefined ? {} : { ratedVoltage: exactly(volts) }) },
  position: 'cathode-bypass',
});
const WET = 'al-electrolytic-wet';

test.each<[string, Catalogue, Request, number | undefined]>([
  ['it is chosen near its voltage, and marked', rated(WET, 'tight'), old(WET, 25), 25],
  ['nobody has read it', rated(WET, 'tight'), old(WET), undefined],
  ['old ones are often rated far too high', rated(WET, 'ample'), old(WET, 25), undefined],
  [
    'the voltage across it was measured',
    rated(WET, 'tight'),
    { ...old(WET, 25), conditions: given({ vdc: 9 }) },
    undefined,
  ],
  [
    'only something else was measured',
    rated(WET, 'tight'),
    { ...old(WET, 25), conditions: given({ 't-max': 60 }) },
    25,
  ],
  // What it bears of the mains says nothing of a direct voltage.
  ['it is rated for alternating volts', rated('film-x2', 'tight'), old('film-x2', 275), undefined],
])('a rating is kept, or not, where %s', (_what, from, request, kept) => {
  expect(circumstancesOf(from, request).kept).toBe(kept);
});
