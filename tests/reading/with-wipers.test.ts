import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { readMarking, type Catalogue } from '../../src/engine/index.ts';
import { withWipers } from '../../src/reading/with-wipers.ts';

const catalogue = loadCatalogue();

type Wiper = Catalogue['kinds'][string]['wiper'];

/** The tables with invented kinds of part, by what they say of a wiper. */
const withKinds = (kinds: Readonly<Record<string, Wiper>>): Catalogue => {
  const kind = catalogue.kinds['resistor'];
  if (kind === undefined) throw new Error('no kind to begin with');
  return {
    ...catalogue,
    kinds: Object.fromEntries(
      Object.entries(kinds).map(([id, wiper]) => [id, { ...kind, id, wiper }]),
    ),
  };
};

test.each<[mark: string, kinds: Record<string, Wiper>, left: string[]]>([
  // A taper is that of a part with a wiper, first of all one that is turned by hand.
  ['A50K', { fixed: '', screw: 'preset', knob: 'panel' }, ['knob', 'screw']],
  ['A50K', { knob: 'panel', slide: 'panel', fixed: '' }, ['knob', 'slide']],
  ['A50K', { fixed: '' }, []],
  ['47K', { fixed: '', screw: 'preset', knob: 'panel' }, ['fixed', 'screw', 'knob']],
])('%s, where the tables have %j, leads on to %j', (mark, kinds, left) => {
  const tables = withKinds(kinds);
  const readings = readMarking(catalogue, mark, { kind: 'resistor' });
  expect(Object.keys(withWipers(tables, readings).kinds)).toEqual(left);
});

test('nothing that was read leads to all kinds', () => {
  expect(withWipers(catalogue, [])).toBe(catalogue);
});
