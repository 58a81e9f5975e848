/**
 * Prints what pages of each kind weigh beside what they may: `npm run page-weight`. The site must be
 * built. Thousands of bytes, packed by gzip at level 9: the middle page and the heaviest.
 */
import { budgetOf, tooHeavy, type Budgeted } from './weight/budgets.ts';
import type { Weight } from './weight/measure.ts';
import { weighedPages, type Weighed } from './weight/pages.ts';

const inThousands = (bytes: number): string => (bytes / 1000).toFixed(1);

const COLUMNS = ['html', 'css', 'script', 'later', 'data'] as const satisfies (keyof Weight)[];

const isBudgeted = (column: keyof Weight): column is Budgeted =>
  column === 'html' || column === 'css' || column === 'script';

const byColumn = (pages: readonly Weighed[], column: keyof Weight): Weighed[] =>
  pages.toSorted((a, b) => a.weight[column] - b.weight[column]);

const row = (kind: string, pages: readonly Weighed[]): string => {
  const budget = budgetOf(kind);
  const cells = COLUMNS.map((column) => {
    const sorted = byColumn(pages, column);
    const middle = sorted[Math.floor(sorted.length / 2)]?.weight[column] ?? 0;
    const worst = sorted.at(-1)?.weight[column] ?? 0;
    const limit = isBudgeted(column) ? ` of ${inThousands(budget[column])}` : '';
    return `${inThousands(middle)}-${inThousands(worst)}${limit}`.padEnd(20);
  });
  const heaviest = byColumn(pages, 'html').at(-1)?.path ?? '';
  return [kind.padEnd(22), String(pages.length).padStart(5), ' ', ...cells, heaviest].join(' ');
};

const head = ['kind'.padEnd(22), 'pages', ' ', ...COLUMNS.map((column) => column.padEnd(20))];
console.log([...head, 'with the most HTML'].join(' '));
const kinds = [...weighedPages()].toSorted(([a], [b]) => (a < b ? -1 : 1));
for (const [kind, pages] of kinds) console.log(row(kind, pages));

const heavy = kinds.flatMap(([kind, pages]) =>
  pages.flatMap(({ path, weight }) =>
    tooHeavy(kind, weight).map((of) => `${path} ${of} ${inThousands(weight[of])}`),
  ),
);
for (const line of heavy.slice(0, 40)) console.error(`too heavy: ${line}`);
if (heavy.length > 0) {
  console.error(`${heavy.length} weights are over their budget`);
  process.exitCode = 1;
}
