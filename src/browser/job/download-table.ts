import { byId } from '../page/by-id.ts';
import { download, fileName } from './download.ts';
import { current } from './state.ts';

type Tables = typeof import('../../job/as-table.ts');

/** What writes tables; a copy has to follow its click at once, so it is fetched before one. */
export const tablesOut = (): Promise<Tables> => import('../../job/as-table.ts');

/** Gives out a part of the job as comma-separated values, by code that is fetched for it. */
export const downloadTable = async (
  part: string,
  write: (tables: Tables) => string,
): Promise<void> => {
  try {
    const tables = await tablesOut();
    download(fileName(current().title, part, 'csv'), write(tables), 'text/csv');
  } catch {
    byId('job-said', HTMLElement).textContent =
      'What writes tables could not be fetched; nothing is lost. Please try again.';
  }
};
