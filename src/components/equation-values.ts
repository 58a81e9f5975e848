import type { Term } from './equation-tree.ts';

/**
 * An equation with values in place of the names that have one, on both sides of a relation: what it
 * comes to stands left, what it is worked out from stands right.
 */
export const withValues = (term: Term, values: ReadonlyMap<string, string>): Term => {
  const filled = (inner: Term): Term => withValues(inner, values);
  switch (term.kind) {
    case 'name': {
      const value = values.get(term.sub === undefined ? term.text : `${term.text}_${term.sub}`);
      return value === undefined ? term : { kind: 'value', text: value };
    }
    case 'group':
      return { ...term, inner: filled(term.inner) };
    case 'call':
      return { ...term, of: filled(term.of) };
    case 'power': {
      const base = filled(term.base);
      // `(10 V)^2`, not `10 V^2`.
      const closed: Term =
        base.kind === 'value' ? { kind: 'group', bars: false, inner: base } : base;
      return { ...term, base: closed, exponent: filled(term.exponent) };
    }
    case 'product':
      return { ...term, factors: term.factors.map(filled) };
    case 'fraction':
      return { ...term, over: filled(term.over), under: filled(term.under) };
    case 'row':
      return { ...term, items: term.items.map(filled) };
    default:
      return term;
  }
};

/** Names of quantities in an equation, each as `V` or `V_DC`. */
export const namesIn = (term: Term): string[] => {
  switch (term.kind) {
    case 'name':
      return [term.sub === undefined ? term.text : `${term.text}_${term.sub}`];
    case 'group':
      return namesIn(term.inner);
    case 'call':
      return namesIn(term.of);
    case 'power':
      return [...namesIn(term.base), ...namesIn(term.exponent)];
    case 'product':
      return term.factors.flatMap(namesIn);
    case 'fraction':
      return [...namesIn(term.over), ...namesIn(term.under)];
    case 'row':
      return term.items.flatMap(namesIn);
    default:
      return [];
  }
};

const SIGNS: Readonly<Record<string, string>> = { '-': '−', '<=': '≤', '>=': '≥', '~=': '≈' };

/** An equation in one line of plain text. */
export const plainText = (term: Term): string => {
  switch (term.kind) {
    case 'number':
    case 'words':
    case 'value':
      return term.text;
    case 'name':
      return term.sub === undefined ? term.text : `${term.text}_${term.sub}`;
    case 'unit':
      return `${term.amount} ${term.unit}`;
    case 'operator':
      return ` ${SIGNS[term.sign] ?? term.sign} `;
    case 'group':
      return term.bars ? `|${plainText(term.inner)}|` : `(${plainText(term.inner)})`;
    case 'call':
      return `${term.name}${plainText(term.of)}`;
    case 'power':
      return `${plainText(term.base)}^${plainText(term.exponent)}`;
    case 'product':
      return term.factors.map(plainText).join(' × ');
    case 'fraction':
      return `${plainText(term.over)} / ${plainText(term.under)}`;
    case 'row':
      return term.items.map(plainText).join('');
  }
};
