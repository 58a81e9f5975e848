import { cellFault, type Check } from './check.ts';
import { goodRows } from './lookups.ts';
import { weightRow } from '../../schemas/look.ts';
import { valuesOf } from '../read-folder.ts';

const rule = 'look-complete';

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
  check: (tables) => {
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
    const inside = new Set(valuesOf(tables, 'look/styles.csv').flatMap(({ kinds }) => kinds));
    const shown = new Set(
      valuesOf(tables, 'look/kinds.csv')
        .filter(({ id }) => inside.has(id))
        .map(({ type }) => type),
    );
    const weights = new Set(tables['look/weights.csv'].rows.map(({ cells }) => cells['id']));
    return [
      ...goodRows(tables, 'look/styles.csv').flatMap((row) =>
        looks
          .filter(
            ({ id, kind }) => !(kind === 'range' ? spanned : usual).has(`${row.value.id} ${id}`),
          )
          .map(({ id }) =>
            cellFault(rule, 'look/styles.csv', row, 'id', {
              wrong: `nothing usual said of its ${id}`,
              expected: `a row for ${id} in look/features.csv or look/ranges.csv`,
            }),
          ),
      ),
      ...goodRows(tables, 'types.csv')
        .filter(({ value }) => value.union_of.length === 0 && !shown.has(value.id))
        .map((row) =>
          cellFault(rule, 'types.csv', row, 'id', {
            wrong: 'a type that no style shows',
            expected: 'a kind of this type in look/kinds.csv, inside a style',
          }),
        ),
      ...goodRows(tables, 'look/weights.csv')
        .slice(0, 1)
        .flatMap((row) =>
          weightRow.shape.id.options
            .filter((id) => !weights.has(id))
            .map((id) =>
              cellFault(rule, 'look/weights.csv', row, 'id', {
                wrong: `no weight ${id}`,
                got: '',
                expected: `a row for ${id}`,
              }),
            ),
        ),
    ];
  },
};
