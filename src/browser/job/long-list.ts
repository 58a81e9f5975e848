/** Lists of any length: what is looked at first is there at once, the rest follows in turns. */

/** One row of a list. */
export interface Row {
  /** What it shows: where that is the same as before, the row stays as it stands. */
  key: unknown;
  make: () => Node;
}

/** What a list is drawn with. */
export interface Rows {
  count: number;
  at: (index: number) => Row;
}

/** Rows that are drawn at once: more than a screen holds. */
const FIRST = 40;
/** Works so long at a stretch on the others, ms. */
const TURN = 25;

/** A list on the page. */
export interface LongList {
  show: (rows: Rows) => void;
  /** Draws what is not drawn yet, as paper is before it is printed. */
  drawAll: () => void;
}

/** What is under the hand of whoever works in a list. */
export interface Hand {
  /** Draws, and gives the focus back to where it was. */
  around: (draw: () => void) => void;
  /** Whether a row may not be replaced now; what is done there has to bring another drawing. */
  holds: (row: Element) => boolean;
}

/**
 * A list that has all its rows: search within the page, the keyboard and paper reach every one. Rows
 * out of sight cost little where their style has `content-visibility`.
 */
export const longList = (place: HTMLElement, { around, holds }: Hand): LongList => {
  const keys = new WeakMap<Node, unknown>();
  let rows: Rows = { count: 0, at: () => ({ key: undefined, make: () => new Text() }) };
  let drawn = 0;
  /** The row that stands where the next one goes; nothing at the end. */
  let there: Element | null = null;
  let timer = 0;

  const drawNext = (): void => {
    const { key, make } = rows.at(drawn);
    const before = there;
    drawn += 1;
    there = before?.nextElementSibling ?? null;
    if (before !== null && (keys.get(before) === key || holds(before))) return;
    const row = make();
    keys.set(row, key);
    if (before === null) place.append(row);
    else before.replaceWith(row);
  };
  const drawWhile = (goesOn: () => boolean): void => {
    around(() => {
      while (drawn < rows.count && goesOn()) drawNext();
      if (drawn < rows.count) return;
      while (there !== null) {
        const left: Element = there;
        there = left.nextElementSibling;
        left.remove();
      }
    });
    clearTimeout(timer);
    if (drawn < rows.count) timer = window.setTimeout(takeTurn);
  };
  const takeTurn = (): void => {
    const end = performance.now() + TURN;
    drawWhile(() => performance.now() < end);
  };

  const drawAll = (): void => {
    drawWhile(() => true);
  };

  addEventListener('beforeprint', drawAll);
  return {
    show: (next) => {
      rows = next;
      drawn = 0;
      there = place.firstElementChild;
      drawWhile(() => drawn < FIRST);
    },
    drawAll,
  };
};
