import { h, type Element } from '../markup/node.ts';
import { CHARACTER, fitted, LINE, wrapped, type Fitted } from './fit-text.ts';
import { inkOn, painted } from './paints.ts';
import { written } from './path-text.ts';
import { extentOf, type Extent } from './path.ts';
import type { Note, Print, Shape, View } from './shape.ts';
import type { Colours, PartSpec } from './spec.ts';
import { toTenth } from './to-tenth.ts';

/** Sizes of print on a body, px: smaller cannot be read, larger shouts. */
const SIZES = { least: 7.5, most: 13 } as const;
/** Size of words beside a part, px, and how many stand in a line. */
const BESIDE = 11;
const LONGEST = 18;
/** Lines beside a part, at most; the rest is in the label. */
const MOST_LINES = 8;
/** Size of signs and numbers of pins, px. */
const NOTE = 11;
/** From the body to what is printed beside it, px. */
const GAP = 14;

/** One view, in px about the middle of its part on the board. */
export interface Drawn {
  extent: Extent;
  /** Left edge of the body. */
  from: number;
  elements: readonly Element[];
}

interface Page {
  scale: number;
  colours: Colours;
  /** Signs of polarity and numbers of pins in ink beside the body. */
  notes?: boolean;
  /** Parts of a px that outlines are told apart to. */
  fine?: number | undefined;
}

const shapeMarkup = (shape: Shape, spec: PartSpec, { scale, colours, fine }: Page): Element => {
  const stroke = {
    ink: undefined,
    inner: inkOn(spec, colours),
    none: 'none',
  }[shape.line];
  return h('path', {
    d: written(shape.path, scale, [0, 0], fine),
    stroke: stroke === 'currentColor' ? undefined : stroke,
    ...(shape.fill === undefined ? {} : painted(shape.fill, spec, colours)),
    'data-place': shape.place,
  });
};

const linesMarkup = (
  { lines, size }: Fitted,
  [x, y]: readonly [number, number],
  attributes: Readonly<Record<string, string | undefined>>,
): Element[] =>
  lines.map((text, i) =>
    h(
      'text',
      { x: toTenth(x), y: toTenth(y + i * size * LINE), 'font-size': size, ...attributes },
      text,
    ),
  );

/** What is printed, on the body. */
const printed = (fit: Fitted, print: Print, spec: PartSpec, page: Page): Element[] => {
  const [x, y] = [print.at[0] * page.scale, print.at[1] * page.scale];
  const ink = inkOn(spec, page.colours);
  const first = y - ((fit.lines.length - 1) * fit.size * LINE) / 2 + fit.size * 0.35;
  return linesMarkup(fit, [x, first], {
    class: 'pd-print',
    'text-anchor': 'middle',
    fill: ink === 'currentColor' ? undefined : ink,
    transform: print.upright ? `rotate(-90 ${toTenth(x)} ${toTenth(y)})` : undefined,
  });
};

/** What is printed, beside the body where it is too small, with a line that leads to it. */
const beside = (
  marking: readonly string[],
  { at: [x, y] }: Print,
  extent: Extent,
  { scale }: Page,
): Drawn => {
  const lines = wrapped(marking, LONGEST);
  const shown = lines.slice(0, MOST_LINES);
  const cut = lines.length > shown.length ? [...shown.slice(0, -1), '…'] : shown;
  const words = cut.map((word) => (word.length > LONGEST ? `${word.slice(0, LONGEST)}…` : word));
  const left = extent.right + GAP;
  const top = extent.top + BESIDE;
  const middle = top - BESIDE * 0.35 + ((words.length - 1) * BESIDE * LINE) / 2;
  return {
    from: 0,
    extent: {
      left,
      right: left + Math.max(...words.map((word) => word.length)) * BESIDE * CHARACTER,
      top: top - BESIDE,
      bottom: top + (words.length - 1) * BESIDE * LINE + 3,
    },
    elements: [
      h('path', {
        class: 'pd-leader',
        d: `M${toTenth(x * scale)} ${toTenth(y * scale)}L${toTenth(left - 4)} ${toTenth(middle)}`,
      }),
      ...linesMarkup({ lines: words, size: BESIDE }, [left, top], { class: 'pd-print' }),
    ],
  };
};

/** Which way words run from their place: to the right, to the left, or both ways. */
const runs = (side: Note['side']): 'start' | 'middle' | 'end' => {
  if (side.endsWith('right')) return 'start';
  return side.endsWith('left') ? 'end' : 'middle';
};

const noteMarkup = ({ text, at, side }: Note, { scale }: Page): Drawn => {
  const anchor = runs(side);
  const across = { start: 4, middle: 0, end: -4 }[anchor];
  const down = side.startsWith('above') ? -5 : side === 'below' ? NOTE + 1 : NOTE * 0.35;
  const [x, y] = [at[0] * scale + across, at[1] * scale + down];
  const width = text.length * NOTE * 0.6;
  const left = { start: x, middle: x - width / 2, end: x - width }[anchor];
  return {
    from: 0,
    extent: { left, right: left + width, top: y - NOTE * 0.8, bottom: y + NOTE * 0.25 },
    elements: [
      h(
        'text',
        {
          class: 'pd-note',
          x: toTenth(x),
          y: toTenth(y),
          'font-size': NOTE,
          'text-anchor': anchor === 'start' ? undefined : anchor,
        },
        text,
      ),
    ],
  };
};

const joined = (extents: readonly Extent[]): Extent => ({
  left: Math.min(...extents.map(({ left }) => left)),
  top: Math.min(...extents.map(({ top }) => top)),
  right: Math.max(...extents.map(({ right }) => right)),
  bottom: Math.max(...extents.map(({ bottom }) => bottom)),
});

const scaledUp = ({ left, top, right, bottom }: Extent, scale: number): Extent => ({
  left: left * scale,
  top: top * scale,
  right: right * scale,
  bottom: bottom * scale,
});

/** One view with its print and its notes, px. */
export const viewMarkup = (view: View, spec: PartSpec, page: Page): Drawn => {
  const { scale } = page;
  const body = scaledUp(extentOf(...view.shapes.map(({ path }) => path)), scale);
  const notes = (page.notes === false ? [] : (view.notes ?? [])).map((note) =>
    noteMarkup(note, page),
  );
  const marking = (spec.marking ?? []).filter((text) => text.trim() !== '');
  const { print } = view;
  const drawn = (more: readonly Drawn[], elements: readonly Element[] = []): Drawn => ({
    from: view.from * scale,
    extent: joined([body, ...[...notes, ...more].map(({ extent }) => extent)]),
    elements: [
      ...view.shapes.map((shape) => shapeMarkup(shape, spec, page)),
      ...elements,
      ...[...notes, ...more].flatMap((other) => other.elements),
    ],
  });
  if (marking.length === 0 || print === undefined) return drawn([]);
  const [width, height] = [print.width * scale, print.height * scale];
  const fit = print.upright
    ? fitted(marking, height, width, SIZES)
    : fitted(marking, width, height, SIZES);
  return fit === undefined
    ? drawn([beside(marking, print, joined([body, ...notes.map(({ extent }) => extent)]), page)])
    : drawn([], printed(fit, print, spec, page));
};
