import { forms, isForm } from '../../drawing/forms/index.ts';
import type { Fault } from '../fault.ts';
import { valuesOf, type TableName, type Tables } from '../read-folder.ts';
import { cellFault, type Check } from './check.ts';
import { goodRows } from './lookups.ts';

const rule = 'drawing';

/** Tables whose rows say how a part is drawn. */
const DRAWN = [
  'type-looks.csv',
  'look/drawings.csv',
  'job/part-outlines.csv',
  'job/package-looks.csv',
  'markings/colour-forms.csv',
] as const satisfies TableName[];

const formFaults = (tables: Tables): Fault[] =>
  DRAWN.flatMap((file) =>
    goodRows(tables, file)
      .filter(({ value }) => !isForm(value.form))
      .map((row) =>
        cellFault(rule, file, row, 'form', {
          wrong: 'no such form is drawn',
          expected: `one of ${Object.keys(forms).join(', ')}`,
        }),
      ),
  );

const typeFaults = (tables: Tables): Fault[] => {
  const drawn = new Set(tables['type-looks.csv'].rows.map(({ cells }) => cells['type']));
  return goodRows(tables, 'types.csv')
    .filter(({ value }) => !drawn.has(value.id))
    .map((row) =>
      cellFault(rule, 'types.csv', row, 'id', {
        wrong: 'nothing says how this type looks',
        expected: 'a row in type-looks.csv',
      }),
    );
};

/** Styles that parts are told by and that nobody could see. */
const lookFaults = (tables: Tables): Fault[] => {
  const drawn = new Set(tables['look/drawings.csv'].rows.map(({ cells }) => cells['style']));
  return tables['look/styles.csv'].rows
    .filter(({ cells }) => !drawn.has(cells['id']))
    .map((row) =>
      cellFault(rule, 'look/styles.csv', row, 'id', {
        wrong: 'nothing says how this style is drawn',
        expected: `a row ${row.cells['id'] ?? ''} in look/drawings.csv`,
      }),
    );
};

const key = (type: string | undefined, style: string | undefined): string => `${type} ${style}`;

/** Styles that are offered and have a size, each once; that sizes are of offers is another rule. */
const styleFaults = (tables: Tables): Fault[] => {
  const looks = valuesOf(tables, 'type-looks.csv');
  const drawn = new Set(looks.map(({ type, style }) => key(type, style)));
  const offered = new Set(
    valuesOf(tables, 'market.csv').map(({ type, style }) => key(type, style)),
  );
  const missing = new Map(
    goodRows(tables, 'bodies.csv')
      .map((row) => [key(row.value.type, row.value.style), row] as const)
      .filter(([style]) => offered.has(style) && !drawn.has(style)),
  );
  return [...missing.values()].map((row) =>
    cellFault(rule, 'bodies.csv', row, 'style', {
      wrong: `nothing says how this style of ${row.value.type} looks`,
      expected: 'a row in type-looks.csv',
    }),
  );
};

export const drawings: Check = {
  id: rule,
  about:
    'Every type, every look, and every style that has a size, is drawn in a form that there is.',
  needs: [
    'type-looks.csv',
    'look/drawings.csv',
    'look/styles.csv',
    'types.csv',
    'bodies.csv',
    'market.csv',
  ],
  check: (tables) => [
    ...formFaults(tables),
    ...typeFaults(tables),
    ...lookFaults(tables),
    ...styleFaults(tables),
  ],
};
