import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { findKindStandIns, resolveKindSituation } from '../../../src/engine/index.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';

/** What stands across a resistor at switch-on where nobody says: no more than the old one stood. */

const catalogue = loadCatalogue();

const asked = (type: string, position: string, ohm: number, watt?: number) => ({
  original: {
    type,
    value: exactly(ohm),
    ...(watt === undefined ? {} : { rating: exactly(watt) }),
  },
  position,
});

const surge = (...of: Parameters<typeof asked>) =>
  resolveKindSituation(catalogue, asked(...of)).conditions.find(({ id }) => id === 'v-surge');

describe('the usual voltage at switch-on', () => {
  test.each([
    // 2.5 times the root of 0.25 W on 4.7 kΩ is 85.7 V, and 83.5 V at the lower end of its 5 %.
    ['carbon-film', 'plate-load', 4700, 0.25, 83.5, 'derived'],
    // Of 10 W on 950 Ω 243.7 V.
    ['wirewound', 'hv-dropper', 1000, 10, 243.7, 'derived'],
    // Of half a watt on 90 kΩ 530 V, so that the place's own 300 V hold.
    ['carbon-composition', 'plate-load', 100e3, 0.5, 300, 'default'],
    // Where a charge is limited the surge is the mains, whatever the part stands.
    ['wirewound', 'inrush-limiter', 10, 5, 325, 'default'],
  ])('%s in %s of %d Ω and %d W: %d V', (type, position, ohm, watt, volts, from) => {
    const found = surge(type, position, ohm, watt);
    expect(found?.range.typ).toBeCloseTo(volts, 1);
    expect(found?.from).toBe(from);
  });
});

test.each([
  ['carbon-film', 'plate-load', 4700, 0.25, 4700, 0.5],
  ['wirewound', 'hv-dropper', 1000, 10, 1000, 15],
])(
  '%s in %s of %d Ω and %d W is answered with its like',
  (type, position, ohm, watt, value, most) => {
    const [first] = findKindStandIns(catalogue, asked(type, position, ohm, watt));
    expect(first?.candidate.value).toBe(value);
    expect(first?.candidate.rating).toBeLessThanOrEqual(most);
  },
);
