import { weightRow } from '../../schemas/look.ts';
import type { Fault } from '../fault.ts';
import { valuesOf, type Tables } from '../read-folder.ts';
import { cellFault, type Check } from './check.ts';
import { goodRows } from './lookups.ts';

const rule = 'look-complete';

/** Styles of which nothing usual is said where a question about looks asks for it. */
const stylesWithoutLooks = (tables: Tables): Fault[] => {
  const questions = valuesOf(tables, 'look/questions.csv');
  // As the cells say it: a row with a fault of its own is there all the same.
  const features = tables['look/features.csv'].rows;
  const ranges = tables['look/ranges.csv'].rows;
  const about = ({ cells }: (typeof features)[number] | (typeof ranges)[number]): string =>
    `${cells['style']} ${cells['question']}`;
  const usual = new Set(
    features.filter(({ value }) => value === undefined || value.how === 'usual').map(about),
  );
  const spanned = new Set(ranges.map(about));
  // What no kind answers is asked of the style: the rest is measured.
  const ofKinds = new Set(
    [...features, ...ranges]
      .filter(({ cells }) => cells['kind'] !== '')
      .map(({ cells }) => cells['question']),
  );
  const looks = questions.filter(({ id, part }) => !ofKinds.has(id) && part === '');
  return goodRows(tables, 'look/styles.csv').flatMap((row) =>
    looks
      .filter(({ id, kind }) => !(kind === 'range' ? spanned : usual).has(`${row.value.id} ${id}`))
      .map(({ id }) =>
        cellFault(rule, 'look/styles.csv', row, 'id', {
          wrong: `nothing usual said of its ${id}`,
          expected: `a row for ${id} in look/features.csv or look/ranges.csv`,
        }),
      ),
  );
};

/** Types that nobody could tell by a look. */
const typesWithoutStyle = (tables: Tables): Fault[] => {
  const inside = new Set(valuesOf(tables, 'look/styles.csv').flatMap(({ kinds }) => kinds));
  const shown = new Set(
    valuesOf(tables, 'look/kinds.csv')
      .filter(({ id }) => inside.has(id))
      .map(({ type }) => type),
  );
  return goodRows(tables, 'types.csv')
    .filter(({ value }) => value.union_of.length === 0 && !shown.has(value.id))
    .map((row) =>
      cellFault(rule, 'types.csv', row, 'id', {
        wrong: 'a type that no style shows',
        expected: 'a kind of this type in look/kinds.csv, inside a style',
      }),
    );
};

/** Weights that the key reckons with and no row gives. */
const missingWeights = (tables: Tables): Fault[] => {
  const weights = new Set(tables['look/weights.csv'].rows.map(({ cells }) => cells['id']));
  const [first] = goodRows(tables, 'look/weights.csv');
  if (first === undefined) return [];
  return weightRow.shape.id.options
    .filter((id) => !weights.has(id))
    .map((id) =>
      cellFault(rule, 'look/weights.csv', first, 'id', {
        wrong: `no weight ${id}`,
        got: '',
        expected: `a row for ${id}`,
      }),
    );
};

export const lookComplete: Check = {
  id: rule,
  about:
    'Every style says what is usual of it in all that is asked of looks, every type has a style, and every weight is there.',
  needs: [
    'types.csv',
    'look/styles.csv',
    'look/kinds.csv',
    'look/questions.csv',
    'look/features.csv',
    'look/ranges.csv',
    'look/weights.csv',
  ],
  check: (tables) => [
    ...stylesWithoutLooks(tables),
    ...typesWithoutStyle(tables),
    ...missingWeights(tables),
  ],
};
