/** What an equation in plain text comes to. */
export type Term =
  | { kind: 'number'; text: string }
  | { kind: 'name'; text: string; sub?: string }
  | { kind: 'unit'; amount: string; unit: string }
  | { kind: 'words'; text: string }
  /** What stands in place of a name, as people read it; no text is read as one. */
  | { kind: 'value'; text: string }
  | { kind: 'operator'; sign: string }
  | { kind: 'group'; bars: boolean; inner: Term; sub?: string }
  | { kind: 'call'; name: string; of: Term }
  | { kind: 'power'; base: Term; exponent: Term }
  | { kind: 'product'; factors: Term[] }
  | { kind: 'fraction'; over: Term; under: Term }
  | { kind: 'row'; items: Term[] };

const functions: ReadonlySet<string> = new Set(
  'log2 log10 ln exp sqrt max min sin cos tan atan'.split(' '),
);

/** Words that may stand between equations; every other word is the name of a quantity. */
const WORDS = new Set('with where and or each at least most if in of for'.split(' '));

/** Longer than any equation that people write; it bounds how deep a text can nest. */
const LONGEST = 400;

const TOKEN =
  /\s*(?:(\d+(?:\.\d+)?(?:e-?\d+)?)|(\p{L}+\d*)|(_[\p{L}\d]+(?:,[\p{L}\d]+)*)|(<=|>=|~=|[-+*/^=<>(),;|%]))/uy;

interface Token {
  kind: 'number' | 'name' | 'sub' | 'sign';
  text: string;
}

const tokensOf = (text: string): Token[] | undefined => {
  const tokens: Token[] = [];
  const pattern = new RegExp(TOKEN);
  while (pattern.lastIndex < text.length) {
    const [, number, name, sub, sign] = pattern.exec(text) ?? [];
    if (number !== undefined) tokens.push({ kind: 'number', text: number });
    else if (name !== undefined) tokens.push({ kind: 'name', text: name });
    else if (sub !== undefined) tokens.push({ kind: 'sub', text: sub.slice(1) });
    else if (sign !== undefined) tokens.push({ kind: 'sign', text: sign });
    else return undefined;
  }
  return tokens;
};

/** The text is no equation; caught where the equation as a whole is read. */
class NoEquation extends Error {}

const row = (items: Term[]): Term => {
  const [only] = items;
  return items.length === 1 && only ? only : { kind: 'row', items };
};

/** Reads tokens from left to right; each method takes what it names off the front. */
class Reader {
  #at = 0;
  readonly #tokens: readonly Token[];

  constructor(tokens: readonly Token[]) {
    this.#tokens = tokens;
  }

  #next(): Token | undefined {
    return this.#tokens[this.#at];
  }

  #sign(...signs: string[]): string | undefined {
    const token = this.#next();
    if (token?.kind !== 'sign' || !signs.includes(token.text)) return undefined;
    this.#at += 1;
    return token.text;
  }

  #expect(sign: string): void {
    if (this.#sign(sign) === undefined) throw new NoEquation();
  }

  #sub(): { sub?: string } {
    const token = this.#next();
    if (token?.kind !== 'sub') return {};
    this.#at += 1;
    return { sub: token.text };
  }

  #words(): Term[] {
    const words: string[] = [];
    for (let token = this.#next(); token && WORDS.has(token.text); token = this.#next()) {
      words.push(token.text);
      this.#at += 1;
    }
    return words.length === 0 ? [] : [{ kind: 'words', text: words.join(' ') }];
  }

  /** The whole text: relations parted by commas and by words. */
  equation(): Term {
    const items: Term[] = [...this.#words(), this.relation()];
    while (this.#next()) {
      const comma = this.#sign(',', ';');
      const words = this.#words();
      if (comma === undefined && words.length === 0) throw new NoEquation();
      if (comma !== undefined) items.push({ kind: 'operator', sign: comma });
      items.push(...words, this.relation());
    }
    return row(items);
  }

  relation(): Term {
    return this.#chain(() => this.#sum(), ['=', '<=', '>=', '<', '>', '~=']);
  }

  #sum(): Term {
    const lead = this.#sign('-', '+');
    const sum = this.#chain(() => this.#product(), ['+', '-']);
    return lead === undefined ? sum : row([{ kind: 'operator', sign: lead }, sum]);
  }

  #chain(part: () => Term, signs: string[]): Term {
    const items = [part()];
    for (let sign = this.#sign(...signs); sign !== undefined; sign = this.#sign(...signs)) {
      items.push({ kind: 'operator', sign }, part());
    }
    return row(items);
  }

  #product(): Term {
    let factors = [this.#power()];
    for (let sign = this.#sign('*', '/'); sign !== undefined; sign = this.#sign('*', '/')) {
      const next = this.#power();
      if (sign === '*') factors.push(next);
      else factors = [{ kind: 'fraction', over: productOf(factors), under: next }];
    }
    return productOf(factors);
  }

  #power(): Term {
    const base = this.#atom();
    if (this.#sign('^') === undefined) return base;
    const minus = this.#sign('-');
    const exponent = this.#atom();
    return {
      kind: 'power',
      base,
      exponent: minus === undefined ? exponent : row([{ kind: 'operator', sign: '-' }, exponent]),
    };
  }

  #atom(): Term {
    const token = this.#next();
    this.#at += 1;
    if (token?.kind === 'number') return this.#amount(token.text);
    if (token?.kind === 'name' && functions.has(token.text)) return this.#call(token.text);
    if (token?.kind === 'name') return { kind: 'name', text: token.text, ...this.#sub() };
    if (token?.text === '(') {
      const inner = this.#list();
      this.#expect(')');
      return { kind: 'group', bars: false, inner, ...this.#sub() };
    }
    if (token?.text === '|') {
      const inner = this.#sum();
      this.#expect('|');
      return { kind: 'group', bars: true, inner };
    }
    throw new NoEquation();
  }

  /** A number, or a number with its unit behind it. */
  #amount(amount: string): Term {
    const token = this.#next();
    if (token?.text === '%') {
      this.#at += 1;
      return { kind: 'unit', amount, unit: '%' };
    }
    if (token?.kind !== 'name' || functions.has(token.text) || WORDS.has(token.text)) {
      return { kind: 'number', text: amount };
    }
    this.#at += 1;
    return { kind: 'unit', amount, unit: token.text };
  }

  #call(name: string): Term {
    return { kind: 'call', name, of: this.#power() };
  }

  #list(): Term {
    return this.#chain(() => this.relation(), [',']);
  }
}

const productOf = (factors: Term[]): Term => {
  const [only] = factors;
  return factors.length === 1 && only ? only : { kind: 'product', factors };
};

/**
 * Reads an equation in plain text, such as `f = 1 / (2*pi*R*C)`: names with subscripts (`V_DC`),
 * `+ - * / ^`, relations, groups, bars, functions, a number with its unit, and words between.
 *
 * @returns nothing where the text is not such an equation; never throws
 */
export const readEquation = (text: string): Term | undefined => {
  if (text.length > LONGEST) return undefined;
  const tokens = tokensOf(text.trim());
  if (tokens === undefined || tokens.length === 0) return undefined;
  try {
    return new Reader(tokens).equation();
  } catch (error) {
    if (error instanceof NoEquation) return undefined;
    throw error;
  }
};
