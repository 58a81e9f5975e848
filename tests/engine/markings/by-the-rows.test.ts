import { expect, test } from 'vitest';
import { readMarking, type Hints, type Reading } from '../../../src/engine/markings/index.ts';
import { lexiconOf } from '../../../src/engine/markings/ways/lexicon-of.ts';
import { chipResistorsAt } from '../../../src/engine/markings/values/resistor-values.ts';
import { scanOf } from '../../../src/engine/markings/lexicon/scan.ts';
import { markingOf } from '../../../src/engine/markings/text/text.ts';
import { weights } from '../../../src/engine/markings/meanings/weights.ts';
import { resistancesPrinted } from '../../../src/engine/printed/resistor-values.ts';
import type { MarkingTables } from '../../../src/schemas/markings.ts';
import { catalogue, markings } from './tables.ts';

/** The best reading by tables in which some rows say something else. */
const bestBy = (tables: Partial<MarkingTables>, text: string, hints?: Hints): Reading | undefined =>
  readMarking({ ...catalogue, markings: { ...markings, ...tables } }, text, hints)[0];

const linesOn = (bodies: string[]): Partial<MarkingTables> => ({
  voltageCodes: markings.voltageCodes.map((row) =>
    row.code.endsWith('underlined') ? { ...row, bodies } : row,
  ),
});

// The tables say 50 V to 100 V of a line, and 500 V of none, which is told and not relied on.
test.each<[on: string[], hints: Hints, volts: [number, number] | undefined, told: string]>([
  [['mica'], { underlined: true, body: 'mica' }, [50, 100], 'underlined (mica, moulded'],
  [['mica'], { underlined: true }, [50, 100], 'underlined (mica, moulded'],
  [['mica'], { underlined: true, body: 'ceramic' }, undefined, ''],
  [['mica'], { underlined: false, body: 'mica' }, undefined, 'not underlined (mica, moulded'],
  [['mica'], { underlined: false, body: 'ceramic' }, undefined, ''],
  [['glass', 'mica'], { underlined: true, body: 'glass' }, [50, 100], 'clamped; glass)'],
])('a line rates the bodies that its row names: %j, %j', (on, hints, volts, told) => {
  const best = bestBy(linesOn(on), '104', hints);
  const { min, max } = best?.ratedVoltage ?? {};
  expect([min, max]).toEqual(volts ?? [undefined, undefined]);
  const lines = best?.evidence.map(({ means }) => means).filter((each) => each.includes('underl'));
  expect(lines).toEqual(told === '' ? [] : [expect.stringContaining(told)]);
});

test.each<[tables: Partial<MarkingTables>, percent: number, body: string]>([
  [{}, 1, 'resistor-chip'],
  [
    { eia96Codes: markings.eia96Codes.map((row) => ({ ...row, tolerance_percent: 0.5 })) },
    0.5,
    'resistor-chip',
  ],
  [
    {
      eia96Multipliers: markings.eia96Multipliers.map((row) => ({
        ...row,
        bodies: ['resistor-network'],
      })),
    },
    1,
    'resistor-network',
  ],
])('the code of a chip says what its rows say: %#', (tables, percent, body) => {
  const made = { ...catalogue, markings: { ...markings, ...tables } };
  const lexicon = lexiconOf(made, { body });
  const known = chipResistorsAt(scanOf(lexicon, markingOf('68C')), 0);
  const others = chipResistorsAt(scanOf(lexiconOf(made, {}), markingOf('68C')), 0);
  expect(known.map(({ meaning }) => lexicon.bodies.namesOf(meaning.bodies))).toEqual([[body]]);
  expect((known[0]?.weight ?? 0) - (others[0]?.weight ?? 0)).toBeCloseTo(weights.chipKnown, 12);
  const best = bestBy(tables, '68C', { body });
  expect(best?.resistance?.typ).toBeCloseTo(49.9e3, 6);
  expect(best?.tolerance?.plus).toBeCloseTo(percent / 100, 12);
  const printed = resistancesPrinted(made.markings, 49.9e3, undefined).filter(
    ({ text }) => text === '68C',
  );
  expect(printed.map((piece) => [piece.bodies, piece.implies?.plus])).toEqual([
    [[body], percent / 100],
  ]);
});

const apart = (shape: 'range' | 'span', ratio: object): Partial<MarkingTables> => ({
  valueForms: markings.valueForms.map((row) => (row.shape === shape ? { ...row, ...ratio } : row)),
});

// How far the ends of a range lie apart is what its row says.
test.each<[tables: Partial<MarkingTables>, text: string, means: string, isSo: boolean]>([
  [{}, '10-15', 'adjustable', false],
  [apart('range', { ratio_min: 1.5 }), '10-15', 'adjustable', true],
  [apart('range', { ratio_min: undefined }), '10-11', 'adjustable', true],
  [apart('range', { ratio_max: 9 }), '3-30', 'adjustable', false],
  [{}, '88-130 MFD 125VAC', 'from 88', false],
  [apart('span', { ratio_max: 1.5 }), '88-130 MFD 125VAC', 'from 88', true],
  [apart('span', { ratio_min: 1.25 }), '88-108 MFD 125VAC', 'from 88', false],
])('by its row %#, %s is %s: %s', (tables, text, means, isSo) => {
  const readings = readMarking({ ...catalogue, markings: { ...markings, ...tables } }, text);
  const said = readings.flatMap(({ evidence }) => evidence.map((each) => each.means));
  expect(said.some((each) => each.startsWith(means))).toBe(isSo);
});
