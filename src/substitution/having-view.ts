import type { Assessment, Judgement } from '../engine/index.ts';
import { h, type Markup } from '../markup/node.ts';
import { capital, sentence } from '../text/words.ts';
import { inputMarkup, noteMarkup } from './form.ts';
import type { HavingField } from './having-fields.ts';
import { havingId } from './keys.ts';
import { reformingPart } from './judge-view.ts';
import { reasonPhrase, type AnyPart } from './phrases.ts';
import { openItem } from './results.ts';
import { citedSources, type Shown } from './shown.ts';
import { inHand, whyWorse } from './why-worse.ts';

/** A type that may be chosen. */
export interface TypeChoice {
  id: string;
  name: string;
  family: string;
}

const typeField = (types: readonly TypeChoice[], field: HavingField): Markup => {
  const families = Map.groupBy(types, ({ family }) => family);
  const { key, label } = field;
  return h(
    'p',
    { class: 'field field-wide' },
    h('label', { for: `field-${key}` }, label),
    h(
      'select',
      { id: `field-${key}`, name: key, 'aria-describedby': `${key}-note` },
      h('option', { value: '' }, 'choose …'),
      ...[...families].map(([family, members]) =>
        h(
          'optgroup',
          { label: capital(family) },
          ...members.map(({ id, name }) => h('option', { value: id }, capital(name))),
        ),
      ),
    ),
    noteMarkup(field),
  );
};

/** The form that asks for a part that the visitor has: its type, and what of its numbers is known. */
export const havingForm = (
  types: readonly TypeChoice[],
  [type, ...numbers]: readonly [HavingField, ...HavingField[]],
): Markup[] => [
  h(
    'fieldset',
    {},
    h('legend', {}, 'The part that you have'),
    typeField(types, type),
    ...numbers.map(inputMarkup),
  ),
  h(
    'p',
    { class: 'small quiet' },
    'Only the type is needed. A number left open is taken from what is sold, or from what was usual for the type.',
  ),
];

const VERDICT_IN_HAND = {
  fits: 'A sound one fits',
  'fits-if': 'A sound one fits if this is in order',
  stopgap: 'A sound one is a stopgap',
  'keep-out': 'Nor is a sound one of any use here',
} as const;

/**
 * For a part that is not made: what one from the drawer comes to, and whether to trust it, where
 * there are rules for that.
 */
const inHandLine = <P extends AnyPart>(
  { having, habit }: Shown<P> & { having: Assessment<P> },
  { advice, reasons }: Partial<Pick<Judgement, 'advice' | 'reasons'>>,
): Markup | undefined => {
  const sound = inHand(having);
  if (sound === undefined) return undefined;
  const why = reasons?.[0] === undefined ? '' : ` ${sentence(reasons[0].why)}`;
  if (advice === 'replace') return h('p', {}, `Not from old stock either.${why}`);
  const concerns = sound.concerns.map((finding) => reasonPhrase(finding, habit)).join('; ');
  const words = `${VERDICT_IN_HAND[sound.verdict]}${concerns === '' ? '' : `: ${concerns}`}.`;
  const test =
    advice === 'test' && sound.verdict !== 'keep-out' ? ` Test it before you fit it.${why}` : '';
  return h('p', {}, words, test);
};

/** The part that the visitor asks about, as one of the stand-ins, with all its findings open. */
export const havingResult = <P extends AnyPart>(
  shown: Shown<P> & { having: Assessment<P> },
  judgement?: Judgement,
): Markup[] => {
  const { catalogue, assessments, having, habit } = shown;
  const best = assessments[0];
  const beside =
    best === undefined || best.verdict === 'keep-out'
      ? 'No part made today fits here as it stands.'
      : whyWorse(catalogue, having, best, habit);
  return [
    h(
      'ul',
      { class: 'stand-ins' },
      openItem(having, havingId, { shown, cited: citedSources(shown) }, [
        inHandLine(shown, judgement ?? {}),
        judgement !== undefined &&
          inHand(having) !== undefined &&
          judgement.advice !== 'replace' &&
          reformingPart(judgement.reforming),
        h('p', {}, beside),
      ]),
    ),
  ];
};
