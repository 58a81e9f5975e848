/**
 * The rows of a long table: those on the screen and a good way around them stand on the page, gaps of
 * the same height stand for the others. A table of some hundred rows has all of them.
 */

/** What the rows are made of. */
export interface WindowRows {
  count: number;
  make: (index: number) => HTMLTableRowElement;
  /** The same row for paper, which has all of them and nothing to type in. */
  onPaper: (index: number) => HTMLTableRowElement;
}

export interface RowWindow {
  /** Shows rows; all are made anew. */
  show: (rows: WindowRows) => void;
  /** Brings a row onto the page, whether it is seen or not. */
  reach: (index: number) => HTMLTableRowElement | undefined;
}

/** So many rows stand on the page all at once. */
const ALL = 200;
/** Rows are put on the page and taken away by so many, so that scrolling seldom does either. */
const BLOCK = 10;
/** So many heights of the screen stand ready above and below it. */
const AROUND = 1;

const gapOf = (columns: number): { row: HTMLTableRowElement; set: (pixels: number) => void } => {
  const row = document.createElement('tr');
  row.ariaHidden = 'true';
  row.className = 'row-gap';
  const cell = row.insertCell();
  cell.colSpan = columns;
  return {
    row,
    set: (pixels) => {
      cell.style.height = `${String(pixels)}px`;
    },
  };
};

/** Numbers from one up to another, that one left out. */
const span = (from: number, to: number): number[] =>
  Array.from({ length: Math.max(0, to - from) }, (_, step) => from + step);

/** Makes a body of a table show rows of any number. */
export const rowWindow = (body: HTMLTableSectionElement, columns: number): RowWindow => {
  let rows: WindowRows | undefined;
  /** Rows on the page, by their index. */
  let there = new Map<number, HTMLTableRowElement>();
  let height = 0;
  let frame = 0;

  const isLong = (): boolean => rows !== undefined && rows.count > ALL;

  /** Indexes of the rows around the screen, with the one that is worked in. */
  const wanted = (also: readonly number[]): number[] => {
    const count = rows?.count ?? 0;
    if (!isLong()) return span(0, count);
    const above = -body.getBoundingClientRect().top;
    const room = innerHeight * AROUND;
    const first = Math.floor((above - room) / (height * BLOCK)) * BLOCK;
    const last = Math.ceil((above + innerHeight + room) / (height * BLOCK)) * BLOCK;
    // However far away the list is, some of it is there.
    const from = Math.min(Math.max(0, first), Math.max(0, count - BLOCK));
    const to = Math.max(Math.min(count, last), Math.min(count, from + BLOCK));
    const focused = [...there].find(([, row]) => row.contains(document.activeElement))?.[0];
    const near = focused === undefined ? [] : [focused - 1, focused, focused + 1];
    return [...new Set([...span(from, to), ...near, ...also])]
      .filter((index) => index >= 0 && index < count)
      .toSorted((a, b) => a - b);
  };

  const put = (indexes: readonly number[]): void => {
    const made = rows;
    if (made === undefined) return;
    const next = new Map(indexes.map((index) => [index, there.get(index) ?? made.make(index)]));
    for (const [index, row] of there) if (next.get(index) !== row) row.remove();
    for (const gap of body.querySelectorAll(':scope > .row-gap')) gap.remove();
    let at = 0;
    /** The row that the next one goes before: rows that stay are never moved, for they may have the focus. */
    let before = body.firstElementChild;
    const gapTo = (index: number): void => {
      if (index === at) return;
      const gap = gapOf(columns);
      gap.set((index - at) * height);
      body.insertBefore(gap.row, before);
    };
    for (const [index, row] of next) {
      gapTo(index);
      if (row === before) before = row.nextElementSibling;
      else body.insertBefore(row, before);
      at = index + 1;
    }
    gapTo(made.count);
    there = next;
  };

  /** Mean height of the rows on the page: a name that needs two lines makes its row higher. */
  const measure = (): void => {
    const shown = [...there.values()];
    const total = shown.reduce((sum, row) => sum + row.getBoundingClientRect().height, 0);
    if (total > 0) height = total / shown.length;
  };

  const update = (also: readonly number[] = []): void => {
    const indexes = wanted(also);
    const isSame = indexes.length === there.size && indexes.every((index) => there.has(index));
    if (!isSame) put(indexes);
  };

  const later = (): void => {
    if (!isLong() || frame !== 0) return;
    frame = requestAnimationFrame(() => {
      frame = 0;
      update();
    });
  };
  addEventListener('scroll', later, { passive: true });
  let width = 0;
  // Rows have other heights in another width, and none while the table is hidden.
  new ResizeObserver(() => {
    const now = body.getBoundingClientRect().width;
    if (now === width) return;
    width = now;
    if (!isLong() || width === 0) return;
    measure();
    put(wanted([]));
  }).observe(body);
  addEventListener('beforeprint', () => {
    const made = rows;
    if (made === undefined || body.offsetParent === null) return;
    body.replaceChildren(...span(0, made.count).map((index) => made.onPaper(index)));
  });
  addEventListener('afterprint', () => {
    if (rows !== undefined) body.replaceChildren(...there.values());
    if (isLong()) put(wanted([]));
  });

  return {
    show: (next) => {
      rows = next;
      there = new Map();
      body.replaceChildren();
      // Its columns must not go by the rows that happen to be there.
      body.closest('table')?.classList.toggle('is-long', isLong());
      if (!isLong()) {
        put(span(0, next.count));
        return;
      }
      put(height === 0 ? span(0, BLOCK) : wanted([]));
      measure();
      // Until the list has been seen nothing is known of its rows' height.
      if (height > 0) put(wanted([]));
    },
    reach: (index) => {
      if (!there.has(index)) {
        // A row far away gets its block with it, where the eye goes next.
        update(span(index - BLOCK / 2, index + BLOCK / 2));
      }
      return there.get(index);
    },
  };
};
