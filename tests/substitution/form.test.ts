import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { fieldsFor, readAddress } from '../../src/substitution/address.ts';
import { fieldSets } from '../../src/substitution/form.ts';

const catalogue = loadCatalogue();

const fieldsOf = (position: string, query = '') =>
  fieldsFor(
    catalogue,
    readAddress(catalogue, 'al-electrolytic-wet', position, new URLSearchParams(query)),
  );

describe('the numbers of a substitution page', () => {
  test.each(Object.keys(catalogue.positions))('all stand in one group: %s', (position) => {
    const fields = fieldsOf(position);
    const sets = fieldSets(fields);
    expect(sets.flatMap((set) => set.fields)).toHaveLength(fields.length);
    expect(sets[0]?.group).toBe('part');
    expect(sets.at(-1)?.group).toBe('place');
    expect(new Set(sets.map(({ title }) => title)).size).toBe(sets.length);
  });

  test.each([
    ['film-x2', 'mains-x', 'Rated voltage, AC'],
    ['paper-wax', 'mains-x', 'Rated voltage'],
  ])('say in which volts a %s is rated at %s', (type, position, label) => {
    const asked = readAddress(catalogue, type, position, new URLSearchParams());
    expect(fieldsFor(catalogue, asked).find(({ key }) => key === 'v')?.label).toBe(label);
  });

  test('are written with a unit, nothing at all included', () => {
    for (const position of Object.keys(catalogue.positions)) {
      for (const { key, text } of fieldsOf(position)) {
        const unit = catalogue.units[catalogue.conditionDefinitions[key]?.unit ?? ''];
        if (unit?.si !== 'ratio') expect(text, `${position} ${key}`).toMatch(/\d\s?[^\d\s.]+/u);
      }
    }
    const shelf = fieldsOf('interstage-coupling', 'shelf=0').find(({ key }) => key === 'shelf');
    expect(shelf?.text).toBe('0\u00A0years');
  });
});
