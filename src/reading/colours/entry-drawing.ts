import { coloursOf, forms } from '../../drawing/index.ts';
import { written } from '../../drawing/path-text.ts';
import { extentOf, mapped } from '../../drawing/path.ts';
import type { View } from '../../drawing/shape.ts';
import type { PartSpec } from '../../drawing/spec.ts';
import { toTenth } from '../../drawing/to-tenth.ts';
import { viewMarkup } from '../../drawing/view-markup.ts';
import type { Catalogue } from '../../engine/index.ts';
import { h, type Element } from '../../markup/node.ts';
import { currentMark, labelOf, linesOf, nameMark } from './entry-names.ts';
import { ABOVE, BELOW, LINE, NAME, OFF, text, WIDTH, type Page, type Side } from './entry-sheet.ts';
import { target } from './entry-targets.ts';
import { specOf } from './part-spec.ts';
import { arrangementOf, placesIn, type PlaceBox } from './places.ts';
import type { ColourState } from './state.ts';

/** What a body may fill of the drawing, px. */
const BODY = { width: 262, height: 178 } as const;
/** How much of a lead is shown below a standing part, px. */
const LEAD = 34;

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

/** Thin edges of all places, so that a light colour is seen on a light body. */
const edges = ({ scale }: Page, { shapes }: View): Element[] =>
  shapes
    .filter(({ place }) => place !== undefined)
    .map(({ path }) => h('path', { class: 'edge', d: written(path, scale, [0, 0]) }));

/** A dot that the form itself does not draw. */
const dot = ({ state, colours }: Page, at: number, { x, y, right }: PlaceBox): Element => {
  const fill = colours(state.marks[at] ?? '')?.fill ?? '';
  const paint = fill === '' ? { class: 'pd-open' } : { fill };
  return h('circle', { cx: toTenth(x), cy: toTenth(y), r: toTenth(right - x), ...paint });
};

/** Leads cut off at the edges of the drawing; nothing else reaches there. */
const cutLeads = (view: View, scale: number, foot: number): View => {
  const edge = WIDTH / 2 / scale;
  return {
    ...view,
    notes: [],
    shapes: view.shapes.map((shape) => ({
      ...shape,
      path: mapped(shape.path, ([x, y]) => [
        Math.max(-edge, Math.min(edge, x)),
        Math.min(y, foot / scale),
      ]),
    })),
  };
};

const sideMarkup = (plain: Omit<Page, 'lines'>, side: Side): Element => {
  const { view, places } = side;
  const page: Page = { ...plain, lines: linesOf(plain, side) };
  const { state, spec, scale, colours, top, bottom } = page;
  const below =
    side.arrangement === 'row'
      ? Math.max(BELOW, OFF * 2 + LINE * (1 + Math.max(0, ...page.lines.values())))
      : BELOW;
  const whole = extentOf(...view.shapes.map(({ path }) => path)).bottom * scale;
  const foot = Math.max(Math.min(whole, bottom + LEAD), bottom + below);
  const drawn = viewMarkup(cutLeads(view, scale, foot), spec, { scale, colours });
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
      viewBox: `${-WIDTH / 2} ${toTenth(top - ABOVE)} ${WIDTH} ${toTenth(foot - top + ABOVE)}`,
      fill: 'none',
      stroke: 'currentColor',
      'stroke-width': 1.3,
      'stroke-linejoin': 'round',
    },
    drawn.elements,
    edges(page, view),
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
