import { byId } from '../page/by-id.ts';

/** Tables that are opened, dropped or pasted; what reads them is fetched apart from the page. */

/** What reads tables. */
export type TableIn = typeof import('./table-in.ts');

/** Hands what reads tables to who asks; where it cannot be had, that is said. */
export const withTables = async (use: (tables: TableIn) => Promise<void>): Promise<void> => {
  try {
    await use(await import('./table-in.ts'));
  } catch {
    byId('job-said', HTMLElement).textContent = 'What reads tables could not be fetched.';
  }
};

/** Makes tables from files work. */
export const startTables = (): void => {
  const open = (file: File | undefined): void => {
    if (file !== undefined) void withTables(({ openTable }) => openTable(file));
  };
  const input = byId('table-file', HTMLInputElement);
  input.addEventListener('change', () => {
    open(input.files?.[0]);
    input.value = '';
  });
  const parts = byId('parts', HTMLElement);
  parts.addEventListener('dragover', (event) => {
    event.preventDefault();
  });
  parts.addEventListener('drop', (event) => {
    const [file] = event.dataTransfer?.files ?? [];
    if (file === undefined) return;
    event.preventDefault();
    open(file);
  });
  // Pasted with no cell in hand, as rows copied from a spreadsheet are.
  document.addEventListener('paste', (event) => {
    const { target } = event;
    if (parts.hidden || target instanceof HTMLInputElement || target instanceof HTMLSelectElement)
      return;
    const text = event.clipboardData?.getData('text/plain') ?? '';
    if (text.trim() === '') return;
    event.preventDefault();
    void withTables(({ offerPasted }) => offerPasted(text));
  });
  // Once the page stands it is fetched in any case, so that it is there without a network.
  addEventListener('load', () => {
    import('./table-in.ts').catch(() => undefined);
  });
};
