import { coloursOf, partsDrawing } from '../../drawing/index.ts';
import type { Catalogue } from '../../engine/index.ts';
import { h, type Element, type Markup } from '../../markup/node.ts';
import { capital, countOf } from '../../text/words.ts';
import { exampleSpec } from './part-spec.ts';
import { paints } from './paints.ts';
import type { ColourRow, ColourState, FormRow, LayoutRow } from './state.ts';
import { colourName, swatch } from './swatch.ts';

/** Room for a small drawing of a body, px. */
const SMALL = { width: 96, height: 46 } as const;

/** The longest wire that is drawn beside a lying part, as a share of what it adds to its length. */
const WITH_LEADS = 1.8;

const smallDrawing = (catalogue: Catalogue, form: FormRow): Markup | undefined => {
  const spec = exampleSpec(form);
  if (spec === undefined) return undefined;
  const pxPerMm = Math.min(
    SMALL.width / (spec.length * WITH_LEADS),
    SMALL.height / (spec.height * WITH_LEADS),
  );
  return partsDrawing([{ spec }], {
    colours: coloursOf(catalogue),
    pxPerMm,
    rule: false,
    views: 'first',
    decorative: true,
  });
};

const radio = (
  name: string,
  value: string,
  checked: boolean,
  label: readonly (Markup | undefined)[],
  of = '',
): Element =>
  h(
    'label',
    { class: `pick ${of}`.trim() },
    h('input', { type: 'radio', name, value, checked, autocomplete: 'off' }),
    ...label,
  );

/** What is coloured: a body to choose by its drawing. */
export const formChoice = (catalogue: Catalogue, { form }: ColourState): Element =>
  h(
    'fieldset',
    { class: 'picks' },
    h('legend', {}, 'What is coloured?'),
    h(
      'div',
      { class: 'pick-cards' },
      catalogue.markings.colourForms.map((row) =>
        radio(
          'form',
          row.id,
          row.id === form.id,
          [smallDrawing(catalogue, row), h('span', {}, capital(row.name))],
          'pick-card',
        ),
      ),
    ),
  );

/** Layouts of one body, the fewest places first. */
const layoutsOf = ({ markings }: Catalogue, form: string): LayoutRow[] =>
  markings.colourLayouts.filter((row) => row.form === form);

/** How many coloured places it has; nothing where there is but one way. */
export const countChoice = (
  catalogue: Catalogue,
  { form, layout }: ColourState,
): Element | undefined => {
  const layouts = layoutsOf(catalogue, form.id);
  if (layouts.length < 2) return undefined;
  return h(
    'fieldset',
    { class: 'picks' },
    h('legend', {}, 'How many?'),
    h(
      'div',
      { class: 'pick-line' },
      layouts.map((row) =>
        radio('layout', row.id, row.id === layout.id, [
          h('span', {}, countOf(row.labels.length, form.mark)),
        ]),
      ),
    ),
  );
};

const colourOf = ({ markings }: Catalogue, id: string | undefined): ColourRow | undefined =>
  markings.colours.find((row) => row.id === id);

/** The places of the part with what they are set to: one is the place to be set. */
export const markChoice = (catalogue: Catalogue, state: ColourState, current: number): Element =>
  h(
    'fieldset',
    { class: 'picks' },
    h('legend', {}, `Which ${state.form.mark}?`),
    h(
      'div',
      { class: 'pick-line' },
      state.layout.labels.map((label, at) =>
        radio(
          'mark',
          String(at),
          at === current,
          [
            swatch(colourOf(catalogue, state.marks[at])),
            h(
              'span',
              {},
              `${capital(label)}: `,
              h('b', {}, colourOf(catalogue, state.marks[at])?.name ?? 'not set'),
            ),
          ],
          'pick-mark',
        ),
      ),
    ),
  );

/** Colours that are offered: shades and bare places only where some scheme of the layout has them. */
export const offered = ({ markings }: Catalogue, { layout }: ColourState): ColourRow[] => {
  const schemes = markings.colourSchemes.filter((row) => row.layout === layout.id);
  const bare = schemes.some((scheme) => scheme.bare);
  const used = new Set(
    schemes.flatMap((scheme) =>
      markings.colourMeanings
        .filter(({ code, role }) => scheme.codes.includes(code) && scheme.places.includes(role))
        .flatMap(({ colour, second }) => [colour, second]),
    ),
  );
  return paints(markings).filter((row) =>
    row.id === 'none' ? bare || used.has('none') : row.shade_of === '' || used.has(row.id),
  );
};

/** The colours to choose from for the place that is being set. */
export const palette = (catalogue: Catalogue, state: ColourState, current: number): Element => {
  const mark = state.marks[current];
  return h(
    'fieldset',
    { class: 'picks' },
    h('legend', {}, `${capital(state.layout.labels[current] ?? '')}: its colour`),
    h(
      'div',
      { class: 'pick-paints' },
      offered(catalogue, state).map((row) =>
        radio('colour', row.id, row.id === mark, [colourName(row)], 'pick-paint'),
      ),
      radio('colour', '', mark === undefined, [colourName(undefined)], 'pick-paint'),
    ),
  );
};

/** Which end has a place that stands apart; nothing where that tells nothing. */
export const apartChoice = (catalogue: Catalogue, state: ColourState): Element | undefined => {
  const { layout, form, apart } = state;
  const told = catalogue.markings.colourSchemes.some(
    (row) => row.layout === layout.id && row.apart !== '',
  );
  if (!layout.turn || !told) return undefined;
  return h(
    'fieldset',
    { class: 'picks' },
    h('legend', {}, `Is a ${form.mark} broader, or set apart from the others?`),
    h(
      'div',
      { class: 'pick-line' },
      radio('apart', '', apart === undefined, [h('span', {}, 'Cannot tell')]),
      radio('apart', 'first', apart === 'first', [h('span', {}, 'The left one')]),
      radio('apart', 'last', apart === 'last', [h('span', {}, 'The right one')]),
    ),
  );
};
