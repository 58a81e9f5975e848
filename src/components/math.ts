import { h, type Element, type Markup } from '../markup/node.ts';
import { printUnit } from '../text/numbers.ts';
import { readEquation, type Term } from './equation-tree.ts';
import { plainText, withValues } from './equation-values.ts';

const GREEK: ReadonlyMap<string, string> = new Map(
  Object.entries({
    alpha: 'α',
    beta: 'β',
    delta: 'δ',
    eta: 'η',
    lambda: 'λ',
    mu: 'µ',
    omega: 'ω',
    phi: 'φ',
    pi: 'π',
    rho: 'ρ',
    tau: 'τ',
    theta: 'θ',
  }),
);

const SIGNS: ReadonlyMap<string, string> = new Map(
  Object.entries({
    '-': '\u2212',
    '<=': '≤',
    '>=': '≥',
    '~=': '≈',
  }),
);

const INVISIBLE_TIMES = '\u2062';
const TIMES = '\u22c5';
const APPLY = '\u2061';

const mo = (sign: string): Element => h('mo', {}, SIGNS.get(sign) ?? sign);
const mrow = (...children: Markup[]): Element => h('mrow', {}, ...children);

/** Change of a quantity: a `d` and the name of the quantity, such as `dV` and `dt`. */
const CHANGE = /^d(?:[CIQTV]|[ft])$/;

const nameMarkup = (text: string): Element => {
  const letters = GREEK.get(text) ?? text;
  if (!CHANGE.test(text)) return h('mi', {}, letters);
  return mrow(h('mi', { mathvariant: 'normal' }, 'd'), h('mi', {}, letters.slice(1)));
};

const withSub = (base: Element, sub: string | undefined): Element =>
  sub === undefined ? base : h('msub', {}, base, h('mtext', {}, sub.replaceAll(',', ', ')));

/** A number; a power of ten as such. */
const numberMarkup = (text: string): Element => {
  const [mantissa = '', exponent] = text.split('e');
  if (exponent === undefined) return h('mn', {}, mantissa);
  const signed = exponent.replace('-', '\u2212');
  const power = h('msup', {}, h('mn', {}, '10'), h('mn', {}, signed));
  return mantissa === '1' ? power : mrow(h('mn', {}, mantissa), mo(TIMES), power);
};

const functionName = (name: string): Element => {
  const base = /^log(\d+)$/.exec(name)?.[1];
  return base === undefined
    ? h('mi', {}, name)
    : h('msub', {}, h('mi', {}, 'log'), h('mn', {}, base));
};

/** Without the parentheses that a fraction bar or a root makes needless. */
const bare = (term: Term): Term =>
  term.kind === 'group' && !term.bars && term.sub === undefined ? term.inner : term;

/** A name of several letters would run into its neighbour. */
const isWord = (term: Term | undefined): boolean =>
  term?.kind === 'name' && term.text.length > 1 && !GREEK.has(term.text) && !CHANGE.test(term.text);

const isCall = (term: Term | undefined): boolean => term?.kind === 'call' && term.name !== 'sqrt';

/** Kinds that begin with a figure, or look as if they did. */
const STANDS_APART: ReadonlySet<Term['kind']> = new Set(['number', 'unit', 'value', 'fraction']);

const isAmount = ({ kind }: Term): boolean =>
  kind === 'fraction' || kind === 'unit' || kind === 'value';

const timesBetween = (left: Term | undefined, right: Term): string => {
  const apart = STANDS_APART.has(right.kind) || (left !== undefined && isAmount(left));
  return apart || isWord(left) || isWord(right) || isCall(right) || isCall(left)
    ? TIMES
    : INVISIBLE_TIMES;
};

const callMarkup = (name: string, of: Term): Element =>
  name === 'sqrt'
    ? h('msqrt', {}, termMarkup(bare(of)))
    : mrow(functionName(name), h('mo', {}, APPLY), termMarkup(of));

/** A number and its unit, which stands upright. */
const amountMarkup = (amount: string, unit: string): Element =>
  mrow(numberMarkup(amount), h('mspace', { width: '0.17em' }), h('mtext', {}, printUnit(unit)));

const groupMarkup = ({ bars, inner, sub }: Extract<Term, { kind: 'group' }>): Element => {
  const [open, close] = bars ? ['|', '|'] : ['(', ')'];
  return withSub(mrow(h('mo', {}, open), termMarkup(inner), h('mo', {}, close)), sub);
};

const productMarkup = (factors: readonly Term[]): Element =>
  mrow(
    ...factors.flatMap((factor, index) => [
      ...(index === 0 ? [] : [h('mo', {}, timesBetween(factors[index - 1], factor))]),
      termMarkup(factor),
    ]),
  );

const termMarkup = (term: Term): Element => {
  switch (term.kind) {
    case 'number':
      return numberMarkup(term.text);
    case 'name':
      return withSub(nameMarkup(term.text), term.sub);
    case 'unit':
      return amountMarkup(term.amount, term.unit);
    case 'words':
      return h('mtext', {}, `\u00a0${term.text}\u00a0`);
    case 'value':
      return h('mtext', {}, term.text);
    case 'operator':
      return mo(term.sign);
    case 'group':
      return groupMarkup(term);
    case 'call':
      return callMarkup(term.name, term.of);
    case 'power':
      return h('msup', {}, termMarkup(term.base), termMarkup(bare(term.exponent)));
    case 'product':
      return productMarkup(term.factors);
    case 'fraction':
      return h('mfrac', {}, termMarkup(bare(term.over)), termMarkup(bare(term.under)));
    case 'row':
      return mrow(...term.items.map(termMarkup));
  }
};

/** No names stand for values. */
const NONE: ReadonlyMap<string, string> = new Map();

/**
 * An equation of the tables as MathML, with its plain text for readers that have no MathML; as code
 * where the text is no equation that this site can read. Never throws.
 *
 * @param text such as `f = 1 / (2*pi*R*C)`
 * @param values what stands in place of names, as people read it, by name with subscript: `V_DC`
 */
export const equationMarkup = (text: string, values = NONE): Element => {
  const tree = readEquation(text);
  if (tree === undefined) return h('code', {}, text);
  const filled = values.size === 0 ? tree : withValues(tree, values);
  return h(
    'math',
    { alttext: values.size === 0 ? text : plainText(filled), displaystyle: 'true' },
    termMarkup(filled),
  );
};
