import { specOfRow, type PartSpec } from '../../drawing/index.ts';
import type { ColourState, FormRow } from './state.ts';

/** Stands for a colour that is not known in a drawing. */
const OPEN = '';

const numberOf = (place: string): number => Number(place.slice(place.indexOf('-') + 1));

/** The part of a form as its table has it, with example colours. */
export const exampleSpec = (form: FormRow): PartSpec | undefined => specOfRow(form);

/** The part with the colours that the visitor has set, and its other places open. */
export const specOf = ({ form, layout, marks }: ColourState): PartSpec | undefined => {
  const base = specOfRow(form);
  if (base === undefined) return undefined;
  const numbered = (kind: string): string[] =>
    layout.painted
      .flatMap((place, at) =>
        place.startsWith(`${kind}-`) ? [{ at: numberOf(place), mark: marks[at] ?? OPEN }] : [],
      )
      .sort((a, b) => a.at - b.at)
      .map(({ mark }) => mark);
  const single = (name: string): string | undefined => {
    const at = layout.painted.indexOf(name);
    return at < 0 ? undefined : (marks[at] ?? OPEN);
  };
  return {
    ...base,
    // What is printed would be in the way of what is painted.
    marking: [],
    colour: single('colour') ?? (layout.painted.includes('colour') ? OPEN : base.colour),
    bands: numbered('bands'),
    dots: numbered('dots'),
    tip: single('tip'),
    otherTip: single('otherTip'),
  };
};
