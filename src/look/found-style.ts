import { basisMark } from '../components/basis-mark.ts';
import { link } from '../components/link.ts';
import {
  writeQuantity,
  type Catalogue,
  type Ground,
  type LikelyStyle,
  type LookAnswers,
  type LookResult,
} from '../engine/index.ts';
import { h, type Markup } from '../markup/node.ts';
import { sentence, typeset } from '../text/words.ts';
import { likelihoodMark } from './likelihood-mark.ts';
import { kindLinks } from './names.ts';
import { groundText } from './phrases.ts';
import { styleDrawing } from './style-drawing.ts';

/** Kinds inside a style that are named, from this share of it on. */
const KIND_SHARE = 0.1;

/** What results are drawn from. */
export interface Found {
  catalogue: Catalogue;
  answers: LookAnswers;
  result: LookResult;
}

/** The value that is known, as the pages of stand-ins take it. */
const valueQuery = ({ numbers }: LookAnswers): string => {
  const value = numbers?.['capacitance'];
  if (value === undefined) return '';
  const point = { min: value.typ, typ: value.typ, max: value.typ };
  return `?${new URLSearchParams({ c: writeQuantity(point, 'F') }).toString()}`;
};

const groundsList = (
  { catalogue }: Found,
  title: string,
  grounds: readonly Ground[],
): Markup | undefined =>
  grounds.length === 0
    ? undefined
    : h(
        'div',
        {},
        h('h4', {}, title),
        h(
          'ul',
          {},
          grounds.map((ground) =>
            h(
              'li',
              {},
              typeset(groundText(catalogue, ground)),
              ' ',
              basisMark(ground),
              ground.note !== '' && [' ', h('span', { class: 'quiet' }, sentence(ground.note))],
            ),
          ),
        ),
      );

/** What in such a part can kill or maim, each with its caution on the page of the style. */
const dangers = ({ cautions, look }: Catalogue, { id, kinds }: LikelyStyle): Markup | undefined => {
  const types = kinds.flatMap((one) => look.kinds.find((kind) => kind.id === one.id)?.type ?? []);
  const due = cautions.filter(
    (caution) =>
      caution.severity === 'danger' && caution.types.some((type) => types.includes(type)),
  );
  if (due.length === 0) return undefined;
  return h(
    'p',
    { class: 'small in-line' },
    h('strong', { class: 'caution-word' }, 'Danger'),
    ' ',
    due.flatMap((caution) => [link(`/look/${id}/#${caution.id}`, caution.title), ' ']),
  );
};

/** A style that the part may be: its drawing, what may be inside, what speaks for and against. */
export const foundStyle = (found: Found, style: LikelyStyle, open: boolean): Markup => {
  const { catalogue, answers } = found;
  const row = catalogue.look.styles.find(({ id }) => id === style.id);
  const inside = style.kinds
    .filter(({ likelihood }) => likelihood >= KIND_SHARE * style.likelihood)
    .map(({ id }) => id);
  return h(
    'li',
    { class: 'found-style', 'data-style': style.id },
    h(
      'div',
      { class: 'found-head' },
      h(
        'h3',
        {},
        link(`/look/${style.id}/`, row?.name ?? style.id),
        ' ',
        likelihoodMark(style.likelihood),
      ),
      styleDrawing(catalogue, style.id, 'list'),
    ),
    h('p', { class: 'small' }, typeset(row?.recognise ?? '')),
    h('ul', { class: 'inside' }, kindLinks(catalogue, inside, valueQuery(answers))),
    dangers(catalogue, style),
    (style.for.length > 0 || style.against.length > 0) &&
      h(
        'details',
        { class: 'grounds', open },
        h(
          'summary',
          {},
          `${style.for.length} for it, ${style.against.length === 0 ? 'none' : style.against.length} against it`,
        ),
        groundsList(found, 'For', style.for),
        groundsList(found, 'Against', style.against),
      ),
  );
};
