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

/** A row as high as those that it stands for, px. */
const gapOf = (columns: number, height: number): HTMLTableRowElement => {
  const row = document.createElement('tr');
  row.ariaHidden = 'true';
  row.className = 'row-gap';
  const cell = row.insertCell();
  cell.colSpan = columns;
  cell.style.height = `${String(height)}px`;
  return row;
};

/** Numbers from one up to another, that one left out. */
const span = (from: number, to: number): number[] =>
  Array.from({ length: Math.max(0, to - from) }, (_, step) => from + step);

/** What a body of a table shows. */
interface Shown {
  readonly body: HTMLTableSectionElement;
  readonly columns: number;
  rows?: WindowRows;
  /** Rows on the page, by their index. */
  there: Map<number, HTMLTableRowElement>;
  /** Mean height of the rows, px: a name that needs two lines makes its row higher; 0 until one was seen. */
  height: number;
}

const isLong = ({ rows }: Shown): boolean => rows !== undefined && rows.count > ALL;

/** Indexes of the rows around the screen; however far away the list is, some of it is there. */
const aroundScreen = ({ body, height }: Shown, count: number): number[] => {
  const above = -body.getBoundingClientRect().top;
  const room = innerHeight * AROUND;
  const first = Math.floor((above - room) / (height * BLOCK)) * BLOCK;
  const last = Math.ceil((above + innerHeight + room) / (height * BLOCK)) * BLOCK;
  const from = Math.min(Math.max(0, first), Math.max(0, count - BLOCK));
  return span(from, Math.max(Math.min(count, last), Math.min(count, from + BLOCK)));
};

/** Indexes of the rows to be on the page: those around the screen, and the one that is worked in. */
const wanted = (shown: Shown, also: readonly number[] = []): number[] => {
  const count = shown.rows?.count ?? 0;
  if (!isLong(shown)) return span(0, count);
  const focused = [...shown.there].find(([, row]) => row.contains(document.activeElement))?.[0];
  const near = focused === undefined ? [] : [focused - 1, focused, focused + 1];
  return [...new Set([...aroundScreen(shown, count), ...near, ...also])]
    .filter((index) => index >= 0 && index < count)
    .toSorted((a, b) => a - b);
};

const put = (shown: Shown, indexes: readonly number[]): void => {
  const { body, columns, rows, there, height } = shown;
  if (rows === undefined) return;
  const next = new Map(indexes.map((index) => [index, there.get(index) ?? rows.make(index)]));
  for (const [index, row] of there) if (next.get(index) !== row) row.remove();
  for (const gap of body.querySelectorAll(':scope > .row-gap')) gap.remove();
  let at = 0;
  /** The row that the next one goes before: rows that stay are never moved, for they may have the focus. */
  let before = body.firstElementChild;
  const gapTo = (index: number): void => {
    if (index !== at) body.insertBefore(gapOf(columns, (index - at) * height), before);
  };
  for (const [index, row] of next) {
    gapTo(index);
    if (row === before) before = row.nextElementSibling;
    else body.insertBefore(row, before);
    at = index + 1;
  }
  gapTo(rows.count);
  shown.there = next;
};

const measure = (shown: Shown): void => {
  const rows = [...shown.there.values()];
  const total = rows.reduce((sum, row) => sum + row.getBoundingClientRect().height, 0);
  if (total > 0) shown.height = total / rows.length;
};

const update = (shown: Shown, also: readonly number[] = []): void => {
  const indexes = wanted(shown, also);
  const isSame =
    indexes.length === shown.there.size && indexes.every((index) => shown.there.has(index));
  if (!isSame) put(shown, indexes);
};

/** Follows the screen, once for each of its pictures. */
const followScrolling = (shown: Shown): void => {
  let frame = 0;
  const later = (): void => {
    if (!isLong(shown) || frame !== 0) return;
    frame = requestAnimationFrame(() => {
      frame = 0;
      update(shown);
    });
  };
  addEventListener('scroll', later, { passive: true });
};

/** Measures anew in another width: rows have other heights there, and none while the table is hidden. */
const followWidth = (shown: Shown): void => {
  let width = 0;
  new ResizeObserver(() => {
    const now = shown.body.getBoundingClientRect().width;
    if (now === width) return;
    width = now;
    if (!isLong(shown) || width === 0) return;
    measure(shown);
    put(shown, wanted(shown));
  }).observe(shown.body);
};

/** Has all rows on the page while it is printed. */
const followPrinting = (shown: Shown): void => {
  addEventListener('beforeprint', () => {
    const { body, rows } = shown;
    if (rows === undefined || body.offsetParent === null) return;
    body.replaceChildren(...span(0, rows.count).map((index) => rows.onPaper(index)));
  });
  addEventListener('afterprint', () => {
    if (shown.rows !== undefined) shown.body.replaceChildren(...shown.there.values());
    if (isLong(shown)) put(shown, wanted(shown));
  });
};

const show = (shown: Shown, rows: WindowRows): void => {
  shown.rows = rows;
  shown.there = new Map();
  shown.body.replaceChildren();
  // Its columns must not go by the rows that happen to be there.
  shown.body.closest('table')?.classList.toggle('is-long', isLong(shown));
  if (!isLong(shown)) {
    put(shown, span(0, rows.count));
    return;
  }
  put(shown, shown.height === 0 ? span(0, BLOCK) : wanted(shown));
  measure(shown);
  // Until the list has been seen nothing is known of its rows' height.
  if (shown.height > 0) put(shown, wanted(shown));
};

/** Makes a body of a table show rows of any number. */
export const rowWindow = (body: HTMLTableSectionElement, columns: number): RowWindow => {
  const shown: Shown = { body, columns, there: new Map(), height: 0 };
  followScrolling(shown);
  followWidth(shown);
  followPrinting(shown);
  return {
    show: (rows) => {
      show(shown, rows);
    },
    reach: (index) => {
      // A row far away gets its block with it, where the eye goes next.
      if (!shown.there.has(index)) update(shown, span(index - BLOCK / 2, index + BLOCK / 2));
      return shown.there.get(index);
    },
  };
};
