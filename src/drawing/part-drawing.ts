import { h, type Element, type Markup } from '../markup/node.ts';
import { partInWords } from './describe.ts';
import { forms } from './forms/index.ts';
import type { Form } from './forms/form.ts';
import { RULE_HEIGHT, ruleMarkup } from './rule.ts';
import { SCALES, scaleWords, USUAL_SCALE } from './scale.ts';
import type { Colours, PartSpec } from './spec.ts';
import { toTenth } from './to-tenth.ts';
import { viewMarkup, type Drawn } from './view-markup.ts';

export interface DrawingOptions {
  /** Px to the millimetre; the scale of the page unless given. */
  pxPerMm?: number | undefined;
  /** Px to the millimetre of the page's other drawings: a scale that is not theirs is said. */
  pageScale?: number | undefined;
  /** Finds the paint and the name of a colour. */
  colours?: Colours;
  /** Without the rule, where a neighbour at the same scale has one. */
  rule?: boolean;
  /** Every view that helps, or only the one with the marking. */
  views?: 'all' | 'first' | undefined;
  /** Without the signs in ink beside the body, where they would be larger than the part. */
  notes?: boolean;
  /** Parts of a px that outlines are told apart to, where tenths are more than is seen. */
  fine?: number;
  /** Beside words that say the same: hidden from those who listen. */
  decorative?: boolean;
  /** What is said instead of the drawing's own words. */
  label?: string;
}

/** A part among several in one drawing, with a name in ink below it. */
export interface NamedPart {
  spec: PartSpec;
  name?: string;
}

/** Between views of one part and between parts, px; and round the whole. */
const BETWEEN_VIEWS = 22;
const BETWEEN_PARTS = 40;
const EDGE = 3;
const NAME = 12;

/** What the rule needs, px: how far to the right its last number reaches, and its height with its words. */
const roomOfRule = (end: number, words: string): { right: number; height: number } => ({
  right: end + 24,
  height: RULE_HEIGHT + (words === '' ? 0 : 14),
});
/** Without it the gap above it falls away. */
const NO_RULE = { right: -Infinity, height: -6 } as const;

interface Placed extends Drawn {
  x: number;
}

/** Views in a row, each as far to the right as the one before allows. */
const inRow = (groups: readonly (readonly Drawn[])[]): Placed[] => {
  let right = 0;
  return groups.flatMap((group, part) =>
    group.map((drawn, i): Placed => {
      const gap = i === 0 ? (part === 0 ? 0 : BETWEEN_PARTS) : BETWEEN_VIEWS;
      const x = right + gap - drawn.extent.left;
      right = x + drawn.extent.right;
      return { ...drawn, x };
    }),
  );
};

/** What is said of parts instead of showing them. */
const labelOf = (parts: readonly NamedPart[], colours: Colours, scaleSaid: string): string =>
  [
    ...parts.map(({ spec, name }) => [name, partInWords(spec, colours)].filter(Boolean).join(': ')),
    scaleSaid,
  ]
    .filter((text) => text !== '')
    .join('; ');

/** The name of a part below its first view. */
const nameMarkup = (name: string, { x, from }: Placed, bottom: number): Element =>
  h(
    'text',
    {
      class: 'pd-name',
      x: toTenth(x + from),
      y: toTenth(bottom + NAME + 6),
      'font-size': NAME,
    },
    name,
  );

/**
 * Parts beside each other, to one scale, over a millimetre rule that begins at the first body's
 * left edge. All stand or lie on the same board.
 */
export const partsDrawing = (
  parts: readonly NamedPart[],
  options: DrawingOptions = {},
): Element => {
  const { pageScale = USUAL_SCALE, colours = () => undefined, rule = true, notes = true } = options;
  const scale = options.pxPerMm ?? pageScale;
  const groups = parts.map(({ spec }) => {
    const form: Form = forms[spec.form];
    const views = form.views(spec);
    const shown = options.views === 'first' ? views.slice(0, 1) : views;
    return shown.map((view) =>
      viewMarkup(view, spec, { scale, colours, notes, fine: options.fine }),
    );
  });
  const placed = inRow(groups);
  const [first] = placed;
  const top = Math.min(...placed.map(({ extent }) => extent.top));
  const bottom = Math.max(...placed.map(({ extent }) => extent.bottom));
  const right = Math.max(...placed.map(({ x, extent }) => x + extent.right));
  const start = first === undefined ? 0 : first.x + first.from;
  const length = Math.max(10, Math.floor((right - start) / scale / 5) * 5);
  const named = parts.some(({ name }) => name !== undefined) ? NAME * 1.7 : 0;
  const below = bottom + 6 + named;
  const words = scaleWords(scale, pageScale);
  const ruled = rule ? roomOfRule(start + length * scale, words) : NO_RULE;
  const width = Math.max(right, ruled.right) + 2 * EDGE;
  const height = below - top + ruled.height + 2 * EDGE;
  const label = options.label ?? labelOf(parts, colours, words);
  let index = 0;
  return h(
    'svg',
    {
      class: 'part-drawing',
      ...(options.decorative
        ? { 'aria-hidden': 'true' }
        : { role: 'img', 'aria-label': `${label}.` }),
      width: Math.ceil(width),
      height: Math.ceil(height),
      viewBox: `${-EDGE} ${toTenth(top - EDGE)} ${Math.ceil(width)} ${Math.ceil(height)}`,
      'data-px-per-mm': scale,
    },
    parts.map(({ name }, part) => {
      const own = placed.slice(index, (index += groups[part]?.length ?? 0));
      const [head] = own;
      return [
        ...own.map(({ x, elements }) =>
          h('g', { transform: `translate(${toTenth(x)} 0)` }, elements),
        ),
        name !== undefined && head !== undefined && nameMarkup(name, head, bottom),
      ];
    }),
    rule && ruleMarkup({ x: start, y: below, length, scale }),
    rule &&
      words !== '' &&
      h(
        'text',
        {
          class: 'pd-note',
          x: toTenth(start),
          y: toTenth(below + RULE_HEIGHT + 9),
          'font-size': 10,
        },
        words,
      ),
  );
};

/** A part to scale beside a millimetre rule, with its marking as printed. */
export const partDrawing = (spec: PartSpec, options: DrawingOptions = {}): Markup =>
  partsDrawing([{ spec }], options);

/** Room for a drawing, px: what a phone shows beside its margins. */
const ROOM = { width: 352, height: 440 } as const;

/**
 * The largest scale, px to the millimetre and no larger than the usual one, at which the parts have
 * room beside each other: on a phone unless more room is given, so that no drawing is shrunk to
 * another scale there.
 * @param room px across
 */
export const scaleFor = (
  parts: readonly NamedPart[],
  { views, room = ROOM.width }: Pick<DrawingOptions, 'views'> & { room?: number } = {},
): number =>
  SCALES.find((scale) => {
    const { attributes } = partsDrawing(parts, { views, pageScale: scale });
    return Number(attributes['width']) <= room && Number(attributes['height']) <= ROOM.height;
  }) ?? Math.min(...SCALES);
