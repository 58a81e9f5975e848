import { inkOn } from '../../drawing/paints.ts';
import { toTenth } from '../../drawing/to-tenth.ts';
import { h, type Element } from '../../markup/node.ts';
import { LINE, NAME, OFF, text, WIDTH, type Page, type Side } from './entry-sheet.ts';

/** How wide a letter is with its share of the gap between names, px. */
const LETTER = 8;

/** What the colour of a place is called. */
const nameOf = ({ state, colours }: Pick<Page, 'state' | 'colours'>, at: number): string => {
  const mark = state.marks[at];
  return mark === undefined ? '?' : (colours(mark)?.name ?? mark);
};

/** The line that each name below a row stands in: the first where it does not run into another. */
export const linesOf = (page: Omit<Page, 'lines'>, { places }: Side): Map<number, number> => {
  const ends: number[] = [];
  const named = places.filter(({ at }) => page.state.marks[at] !== undefined);
  return new Map(
    named.map(({ at, box }) => {
      const half = (nameOf(page, at).length * LETTER) / 2;
      const free = ends.findIndex((end) => end <= box.x - half);
      const line = free < 0 ? ends.length : free;
      ends[line] = box.x + half;
      return [at, line];
    }),
  );
};

/** The name of a place's colour, where it does not run into its neighbours'. */
export const nameMark = (page: Page, { places, arrangement }: Side, n: number): Element => {
  const { at, box } = places[n] as Side['places'][number];
  const words = nameOf(page, at);
  const weight = at === page.current ? { 'font-weight': 700 } : {};
  if (page.state.layout.painted[at] === 'colour')
    return text(words, -page.right + NAME * 2, page.top - OFF, weight);
  if (arrangement === 'column')
    return text(words, page.right + OFF, box.y + NAME * 0.35, {
      'text-anchor': 'start',
      ...weight,
    });
  if (arrangement === 'grid')
    return text(words, box.x, box.bottom + NAME + 3, {
      fill: inkOn(page.spec, page.colours),
      ...weight,
    });
  return text(words, box.x, page.bottom + OFF + NAME + (page.lines.get(at) ?? 0) * LINE, weight);
};

/** A frame round the place that is being set, and what it is called. */
export const currentMark = (page: Page, { places, arrangement }: Side): Element[] => {
  const place = places.find(({ at }) => at === page.current);
  if (place === undefined) return [];
  const { box } = place;
  const label = page.state.layout.labels[page.current] ?? '';
  const gap = 3;
  // A halo of paper keeps the frame to be seen on a dark body.
  const frame = ['current-halo', 'current-frame'].map((name) =>
    h('rect', {
      class: name,
      x: toTenth(box.left - gap),
      y: toTenth(box.top - gap),
      width: toTenth(box.right - box.left + 2 * gap),
      height: toTenth(box.bottom - box.top + 2 * gap),
      rx: 3,
    }),
  );
  const side = WIDTH / 2 - label.length * NAME * 0.28;
  if (arrangement === 'column')
    return [
      ...frame,
      text(label, -page.right - OFF, box.y + NAME * 0.35, {
        class: 'current-label',
        'text-anchor': 'end',
      }),
    ];
  const x = Math.max(-side, Math.min(side, box.x));
  const y = page.top - OFF - (page.state.layout.painted.includes('colour') ? NAME * 1.3 : 0);
  return [...frame, text(label, x, y, { class: 'current-label' })];
};

/** What the drawing shows: `1st band yellow, 2nd band not known`. */
export const labelOf = (page: Page, ats: readonly number[]): string => {
  const { layout, form, marks } = page.state;
  const places = ats.map((at) => {
    const mark = marks[at];
    return `${layout.labels[at] ?? ''} ${mark === undefined ? 'not known' : nameOf(page, at)}`;
  });
  return `${form.name}: ${places.join(', ')}`;
};
