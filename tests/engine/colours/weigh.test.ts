import { describe, expect, test } from 'vitest';
import { readColours, type ColourRequest } from '../../../src/engine/colours/index.ts';
import type { ColourTables } from '../../../src/schemas/marking-colours.ts';
import { catalogue } from '../markings/tables.ts';

/** Readings go by the weights of the table: with another number for one of them they are others. */

type Id = ColourTables['colourWeights'][number]['id'];

const { markings } = catalogue;

const readWith = (changed: Partial<Record<Id, number>>, request: ColourRequest) =>
  readColours(
    {
      ...catalogue,
      markings: {
        ...markings,
        colourWeights: markings.colourWeights.map((row) => ({
          ...row,
          value: changed[row.id] ?? row.value,
        })),
      },
    },
    request,
  );

const resistor = (text: string, more: Partial<ColourRequest> = {}): ColourRequest => ({
  form: 'resistor',
  colours: text.split(' '),
  ...more,
});

/** 1 kohm from the left end and 12 ohm from the right one, both in E12. */
const PLAIN = resistor('brown black red brown');

describe('weights of the table', () => {
  const first = (changed: Partial<Record<Id, number>>, request: ColourRequest) =>
    readWith(changed, request)[0];

  test('a value of a fine series, unless one of a coarse series is worth more', () => {
    const both = resistor('green brown red brown');
    expect(first({}, both)?.resistance?.typ).toBe(5100);
    expect(first({ 'coarse-series': 9 }, both)?.resistance?.typ).toBe(120);
  });

  test('the end that is given, unless turning is worth more', () => {
    expect(first({}, PLAIN)?.colours?.turned).toBe(false);
    expect(first({ turned: 9 }, PLAIN)?.colours?.turned).toBe(true);
  });

  test('how sure a reading is, by its lead', () => {
    const alone = resistor('yellow violet red gold');
    expect(first({}, alone)?.sure).toBe('sure');
    const [one, ...others] = readWith({}, PLAIN);
    expect([one?.sure, others.length > 0]).toEqual(['likely', true]);
    expect(first({ 'likely-lead': 99 }, PLAIN)?.sure).toBe('possible');
    expect(first({ 'sure-lead': 0 }, PLAIN)?.sure).toBe('sure');
  });

  test('how far behind the other end is shown', () => {
    const ends = (changed: Partial<Record<Id, number>>): boolean[] =>
      readWith(changed, PLAIN).map(({ colours }) => colours?.turned === true);
    expect(ends({})).toContain(true);
    expect(ends({ 'turned-within': 0 })).not.toContain(true);
  });
});
