import { coloursOf, forms } from '../../drawing/index.ts';
import { inkOn } from '../../drawing/paints.ts';
import { extentOf, type Extent } from '../../drawing/path.ts';
import type { View } from '../../drawing/shape.ts';
import type { Colours, PartSpec } from '../../drawing/spec.ts';
import { viewMarkup } from '../../drawing/view-markup.ts';
import type { Catalogue } from '../../engine/index.ts';
import { h, type Element } from '../../markup/node.ts';
import { arrangementOf, placesIn, type Arrangement, type PlaceBox } from './places.ts';
import { specOf } from './part-spec.ts';
import type { ColourState } from './state.ts';

/** Width of the drawing, px, and what a body may fill of it. */
const WIDTH = 340;
const BODY = { width: 262, height: 178 } as const;
/** Size of names and their distance from what they name, px. */
const NAME = 13;
const OFF = 8;
/** Names of neighbours nearer than this go to two lines, px. */
const CLOSE = 58;
/** Room above and below the body, and how much of a lead is shown there, px. */
const ABOVE = 36;
const BELOW = 42;
const LEAD = 34;
/** A fingertip, px. */
const FINGER = 46;

const round = (value: number): number => Math.round(value * 10) / 10;

/** One view of the part with the places that are on it. */
interface Side {
  view: View;
  /** The place's number and where it is. */
  places: { at: number; box: PlaceBox }[];
  arrangement: Arrangement;
}

/** The views that hold places, each with its own. */
const sidesOf = (spec: PartSpec, painted: readonly string[], scale: number): Side[] => {
  const views: readonly View[] = forms[spec.form].views(spec);
  const draws = (view: View, name: string): boolean =>
    view.shapes.some(({ place }) => place === name);
  const sides = views.map((view, i) => {
    // What no view draws belongs to the first.
    const own = [...painted.entries()].filter(
      ([, name]) => draws(view, name) || (i === 0 && !views.some((each) => draws(each, name))),
    );
    const boxes = placesIn(
      view,
      own.map(([, name]) => name),
      scale,
    );
    const places = own.flatMap(([at], n) => {
      const box = boxes[n];
      return box === undefined ? [] : [{ at, box }];
    });
    return { view, places, arrangement: arrangementOf(places.map(({ box }) => box)) };
  });
  return sides.filter(({ places }) => places.length > 0);
};

const text = (
  words: string,
  x: number,
  y: number,
  more: Readonly<Record<string, string | number | undefined>> = {},
): Element =>
  h(
    'text',
    { x: round(x), y: round(y), 'font-size': NAME, 'text-anchor': 'middle', ...more },
    words,
  );

interface Page {
  state: ColourState;
  colours: Colours;
  /** Number of the place that is being set. */
  current: number;
  spec: PartSpec;
  /** Px to the millimetre. */
  scale: number;
  /** Edges of the body, px. */
  bottom: number;
  right: number;
  top: number;
}

const nameOf = ({ state, colours }: Page, at: number): string => {
  const mark = state.marks[at];
  return mark === undefined ? '?' : (colours(mark)?.name ?? mark);
};

/** The name of a place's colour, where it does not run into its neighbours'. */
const nameMark = (page: Page, { places, arrangement }: Side, n: number): Element => {
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
    return text(words, box.x, box.bottom + NAME, {
      fill: inkOn(page.spec, page.colours),
      ...weight,
    });
  const [before, after] = [places[n - 1]?.box, places[n + 1]?.box];
  const pitch = Math.min(box.x - (before?.x ?? -Infinity), (after?.x ?? Infinity) - box.x);
  const line = pitch < CLOSE && n % 2 === 1 ? 1 : 0;
  return text(words, box.x, page.bottom + OFF + NAME * (1 + line * 1.2), weight);
};

/** A frame round the place that is being set, and what it is called. */
const currentMark = (page: Page, { places, arrangement }: Side): Element[] => {
  const place = places.find(({ at }) => at === page.current);
  if (place === undefined) return [];
  const { box } = place;
  const label = page.state.layout.labels[page.current] ?? '';
  const gap = 3;
  // A halo of paper keeps the frame to be seen on a dark body.
  const frame = ['current-halo', 'current-frame'].map((name) =>
    h('rect', {
      class: name,
      x: round(box.left - gap),
      y: round(box.top - gap),
      width: round(box.right - box.left + 2 * gap),
      height: round(box.bottom - box.top + 2 * gap),
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

const middle = (a: number, b: number): number => (a + b) / 2;

/** A box made at least as large as a fingertip. */
const padded = ({ x, y, left, right, top, bottom }: PlaceBox): Extent => ({
  left: Math.min(left, x - FINGER / 2),
  right: Math.max(right, x + FINGER / 2),
  top: Math.min(top, y - FINGER / 2),
  bottom: Math.max(bottom, y + FINGER / 2),
});

/** Where a finger may come down for a place: halfway to its neighbours. */
const areaOf = (page: Page, { places, arrangement }: Side, n: number): Extent => {
  const { at, box } = places[n] as Side['places'][number];
  const whole = {
    left: -WIDTH / 2,
    right: WIDTH / 2,
    top: page.top - ABOVE,
    bottom: page.bottom + BELOW,
  };
  const { painted } = page.state.layout;
  if (painted[at] === 'colour') return whole;
  if (arrangement === 'grid' || painted.includes('colour')) return padded(box);
  const [before, after] = [places[n - 1]?.box, places[n + 1]?.box];
  return arrangement === 'row'
    ? {
        ...whole,
        left: before === undefined ? whole.left : middle(before.x, box.x),
        right: after === undefined ? whole.right : middle(box.x, after.x),
      }
    : {
        ...whole,
        top: before === undefined ? whole.top : middle(before.bottom, box.top),
        bottom: after === undefined ? whole.bottom : middle(box.bottom, after.top),
      };
};

const target = (page: Page, side: Side, n: number): Element => {
  const { left, right, top, bottom } = areaOf(page, side, n);
  return h('rect', {
    class: 'target',
    'data-mark': side.places[n]?.at,
    x: round(left),
    y: round(top),
    width: round(right - left),
    height: round(bottom - top),
  });
};

/** What the drawing shows: `1st band yellow, 2nd band not known`. */
const labelOf = (page: Page, ats: readonly number[]): string => {
  const { layout, form, marks } = page.state;
  const places = ats.map((at) => {
    const mark = marks[at];
    return `${layout.labels[at] ?? ''} ${mark === undefined ? 'not known' : nameOf(page, at)}`;
  });
  return `${form.name}: ${places.join(', ')}`;
};

/** A dot that the form itself does not draw. */
const dot = ({ state, colours }: Page, at: number, { x, y, right }: PlaceBox): Element => {
  const fill = colours(state.marks[at] ?? '')?.fill ?? '';
  const paint = fill === '' ? { class: 'pd-open' } : { fill };
  return h('circle', { cx: round(x), cy: round(y), r: round(right - x), ...paint });
};

const sideMarkup = (page: Page, side: Side): Element => {
  const { view, places } = side;
  const { state, spec, scale, colours, top, bottom } = page;
  const drawn = viewMarkup({ ...view, notes: [] }, spec, { scale, colours });
  const foot = Math.max(Math.min(drawn.extent.bottom, bottom + LEAD), bottom + BELOW);
  const open = places.filter(({ at }) => state.marks[at] === undefined);
  return h(
    'svg',
    {
      class: 'part-drawing entry-drawing',
      role: 'img',
      'aria-label': labelOf(
        page,
        places.map(({ at }) => at),
      ),
      viewBox: `${-WIDTH / 2} ${round(top - ABOVE)} ${WIDTH} ${round(foot - top + ABOVE)}`,
      fill: 'none',
      stroke: 'currentColor',
      'stroke-width': 1.3,
      'stroke-linejoin': 'round',
    },
    drawn.elements,
    places.filter(({ box }) => box.laidOver).map(({ at, box }) => dot(page, at, box)),
    open.map(({ box }) => text('?', box.x, box.y + NAME * 0.35)),
    places.map(({ at }, n) =>
      state.marks[at] === undefined ? undefined : nameMark(page, side, n),
    ),
    currentMark(page, side),
    places.map((_, n) => target(page, side, n)),
  );
};

/**
 * The part, large, with every coloured place named and the one that is being set in a frame. Places
 * can be pressed: `data-mark` holds the number of each.
 */
export const entryDrawing = (
  catalogue: Catalogue,
  state: ColourState,
  current: number,
): Element[] => {
  const spec = specOf(state);
  if (spec === undefined) return [];
  const views: readonly View[] = forms[spec.form].views(spec);
  const { top } = extentOf(...(views[0]?.shapes.map(({ path }) => path) ?? []));
  const scale = Math.min(BODY.width / spec.length, BODY.height / -top);
  const page = {
    state,
    colours: coloursOf(catalogue),
    current,
    spec,
    scale,
    right: (spec.length / 2) * scale,
    bottom: 0,
    top: top * scale,
  };
  return sidesOf(spec, state.layout.painted, scale).map((side) => sideMarkup(page, side));
};
