import { describe, expect, test } from 'vitest';
import { seriesResistorAt } from '../../../../src/engine/markings/beside/series-resistor.ts';
import { weights } from '../../../../src/engine/markings/meanings/weights.ts';
import { scanFor } from '../scans.ts';

/** Where it ends and what it says, for each token behind a sign at an index. */
const foundAt = (text: string, at: number): [number, string][] =>
  seriesResistorAt(scanFor(text), at).map(({ end, meaning }) => [
    end,
    meaning.means().replaceAll('\u00a0', ' '),
  ]);

const says = (ohms: string): string => `a resistor of ${ohms} in series with it in the same body`;

describe('a resistor in series in the body of a capacitor', () => {
  test.each<[text: string, at: number, found: [number, string][]]>([
    ['0.1µF+100Ω', 5, [[10, says('100 Ω')]]],
    ['0.1µF + 100 Ω', 6, [[13, says('100 Ω')]]],
    ['0.1µF&47 ohm', 5, [[12, says('47 Ω')]]],
    ['0.1+100R', 3, [[8, says('100 Ω')]]],
    ['0.1+4.7k', 3, [[8, says('4.7 kΩ')]]],
    ['0.1+1kΩ 250V', 3, [[7, says('1 kΩ')]]],
    // No unit of ohms: sections of a can, farads, volts, and a letter of capacitance alone.
    ['8+8', 1, []],
    ['8+8µF', 1, []],
    ['0.1+250V', 3, []],
    ['0.1+100n', 3, []],
    // A unit whose word goes on.
    ['0.1+100Rx', 3, []],
    // Another sign, no sign, nothing behind it, and the end.
    ['0.1-100Ω', 3, []],
    ['0.1 100Ω', 4, []],
    ['0.1+', 3, []],
    ['0.1+', 4, []],
  ])('%s at %d: %j', (text, at, found) => {
    expect(foundAt(text, at)).toEqual(found);
  });

  test('is a remark about any capacitor, behind a value', () => {
    const scan = scanFor('0.1µF+100Ω');
    const [token] = seriesResistorAt(scan, 5);
    expect(token).toMatchObject({
      at: 5,
      meaning: {
        content: { says: 'remark' },
        bodies: scan.lexicon.bodiesOfKind.capacitor,
        origins: scan.lexicon.origins.all,
        types: [],
        source: scan.lexicon.tables.unitWords.find(({ word }) => word === 'Ω')?.source,
      },
      weight: weights.seriesResistor,
      needs: ['value-before'],
      assumed: [],
    });
  });

  test('is not made up of worn characters', () => {
    expect(foundAt('0.1+1?0Ω', 3)).toEqual([]);
  });
});
