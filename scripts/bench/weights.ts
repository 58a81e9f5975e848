import { existsSync, globSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import { LISTS } from '../../src/offline/lists.ts';
import { MOST_SHELL_BYTES, SHELL } from '../offline-shell.ts';
import { SITE } from '../site-folder.ts';
import { budgetOf, type Budgeted } from '../weight/budgets.ts';
import { show, type Row } from './measuring.ts';

/** What is sent and kept: pages by kind, packed by gzip, and the site without a network. */

const THOUSAND = 1000;
const OF: readonly Budgeted[] = ['html', 'css', 'script'];

const listsSchema = z.object({ files: z.number(), bytes: z.number() });

const inThousands = (bytes: number): string => show(bytes / THOUSAND);

/** Bytes of the files that patterns name. */
const bytesOf = (patterns: readonly string[]): number =>
  globSync([...patterns], { cwd: SITE })
    .map((name) => statSync(join(SITE, name)))
    .filter((file) => file.isFile())
    .reduce((sum, { size }) => sum + size, 0);

const offline = (): Row[] => {
  const lists = listsSchema.parse(JSON.parse(readFileSync(join(SITE, LISTS), 'utf8')));
  return [
    [
      'kept at a first visit',
      inThousands(bytesOf(SHELL)),
      'kB, not packed',
      `at most ${inThousands(MOST_SHELL_BYTES)}`,
    ],
    ['all that can be kept', inThousands(lists.bytes), 'kB, not packed', `${lists.files} files`],
  ];
};

/** Rows of the table, of the built site: the heaviest page of each kind beside its budget. */
export const weights = async (): Promise<Row[]> => {
  if (!existsSync(join(SITE, LISTS)))
    return [['page weight', 'not measured', '', 'needs a built site']];
  const { weighedPages } = await import('../weight/pages.ts');
  const kinds = [...weighedPages()].toSorted(([a], [b]) => (a < b ? -1 : 1));
  const rows = kinds.flatMap(([kind, pages]) =>
    OF.map((of): Row => {
      const worst = Math.max(...pages.map(({ weight }) => weight[of]));
      const most = `at most ${inThousands(budgetOf(kind)[of])}`;
      return [`${of} of ${kind}, the heaviest`, inThousands(worst), 'kB', most];
    }),
  );
  return [...rows, ...offline()];
};
