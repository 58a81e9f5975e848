import { UNKNOWN, type Fill } from './shape.ts';
import type { Colours, PartSpec } from './spec.ts';

/** Attributes of SVG that paint one outline. */
export type Painted = Readonly<Record<string, string | number | undefined>>;

/** Letters and lines that can be read on a light or on a dark surface, whatever the page's ink. */
const INKS = { dark: '#1d1c1a', light: '#f7f5ef' } as const;

const PAPER = '#ece7da';

/** What lines and letters on the body are drawn with: the page's ink where no colour is known. */
export const inkOn = (spec: PartSpec, colours: Colours): string => {
  if (spec.finish === 'metal') return INKS.dark;
  // The page shows through a clear body, so that only the page's own ink reads on it, light or dark.
  if (spec.finish === 'clear') return 'currentColor';
  const colour = spec.colour === undefined ? undefined : colours(spec.colour);
  return colour === undefined || colour.fill === '' ? 'currentColor' : INKS[colour.ink];
};

const byName = (id: string, colours: Colours, clear: boolean): Painted => {
  const fill = colours(id)?.fill ?? '';
  if (fill === '') return { class: 'pd-body' };
  return { fill, 'fill-opacity': clear ? 0.35 : undefined };
};

/** How a surface is painted: colours by name as they are, materials by the page's own style. */
export const painted = (fill: Fill, spec: PartSpec, colours: Colours): Painted => {
  if (typeof fill === 'object') {
    if (fill.colour === UNKNOWN) return { class: 'pd-open' };
    return fill.colour === 'none' ? { stroke: 'none' } : byName(fill.colour, colours, false);
  }
  switch (fill) {
    case 'body':
      if (spec.colour !== undefined) return byName(spec.colour, colours, spec.finish === 'clear');
      return { class: spec.finish === 'metal' ? 'pd-metal' : 'pd-body' };
    case 'metal':
      return { class: 'pd-metal' };
    case 'print':
      return { fill: inkOn(spec, colours) };
    case 'dark':
      return { fill: INKS.dark };
    case 'paper':
      return { fill: PAPER };
  }
};
