import { link } from '../components/link.ts';
import type { LikelyStyle, StyleId } from '../engine/index.ts';
import { h, type Markup } from '../markup/node.ts';
import { printNumber } from '../text/numbers.ts';
import { midSentence } from '../text/mid-sentence.ts';
import { sentence } from '../text/words.ts';
import { apartMarkup } from './apart-view.ts';
import { foundStyle, type Found } from './found-style.ts';
import { styleName } from './names.ts';
import { likelihoodPercent, likelihoodWord } from './phrases.ts';

/** Styles that are shown, and from which likelihood on. */
const SHOWN_MOST = 6;
const SHOWN_LEAST = 3;
const WORTH_SHOWING = 0.03;

const signMarkup = ({ result: { sign } }: Found): Markup | undefined =>
  sign &&
  h(
    'p',
    {},
    `Loss at 120 Hz over that at 1 kHz is ${printNumber(sign.ratio)}: `,
    sign.sign === undefined
      ? 'the data name no cause for a ratio like this.'
      : midSentence(sentence(sign.sign.says)),
  );

/** The likeliest style in one sentence. */
export const answerText = ({ catalogue, result }: Found): string => {
  const [first, second] = result.styles;
  if (first === undefined || second === undefined) return '';
  const said = (style: LikelyStyle): string =>
    `${styleName(catalogue, style.id)}, ${likelihoodWord(style.likelihood)} (${likelihoodPercent(style.likelihood)})`;
  return second.likelihood >= first.likelihood / 2
    ? `${said(first)}; ${said(second)}.`
    : `${said(first)}.`;
};

/**
 * The styles that are left, each with what speaks for it and against it, and what would tell the
 * first two apart.
 *
 * @param open whether the grounds of a style stand open
 */
export const resultsMarkup = (found: Found, open: (style: StyleId) => boolean): Markup[] => {
  const { result } = found;
  const shown = result.styles
    .slice(0, SHOWN_MOST)
    .filter(({ likelihood }, i) => i < SHOWN_LEAST || likelihood >= WORTH_SHOWING);
  const pieces = [
    h('h2', {}, 'What it may be'),
    signMarkup(found),
    h(
      'ol',
      { class: 'found' },
      shown.map((style) => foundStyle(found, style, open(style.id))),
    ),
    result.apart && apartMarkup(found.catalogue, result.apart),
    h(
      'p',
      { class: 'small quiet' },
      'Worked out by rules of thumb: common practice. ',
      link('/look/how/', 'How'),
      '.',
    ),
  ];
  return pieces.filter((piece) => piece !== undefined);
};
