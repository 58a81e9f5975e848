import { link } from '../../components/link.ts';
import { formatQuantity, formatValue, waysPrinted, type Catalogue } from '../../engine/index.ts';
import { readToleranceLetter, type Tolerance } from '../../engine/markings/index.ts';
import { h, type Markup } from '../../markup/node.ts';
import { capital, listed, sentence } from '../../text/words.ts';
import { codePath, type ListedCode } from './listed.ts';
import { isShort } from '../printed/view.ts';
import { chips } from '../chips.ts';
import { mark, parted, sourceLink, table, type CodePage } from './page.ts';
import { rivalsSection } from './rivals.ts';
import { plainNumber, sayToleranceOf, shortBody } from './say.ts';

/** The capacitance that a three-figure code says, F. */
const codeValue = (code: string): number =>
  Number(`${code.slice(0, 2)}e${Number(code.slice(2)) - 12}`);

/** A value in its usual unit, then in those that old parts and drawings count in. */
const inEveryUnit = (value: number): string => {
  const first = formatValue(value, 'F');
  const others = [
    ...(value >= 1e-9 ? [`${plainNumber(value / 1e-6)}\u00a0µF`] : []),
    ...(value < 1e-6 ? [`${plainNumber(value / 1e-12)}\u00a0pF`] : []),
    ...(value >= 1e-6 ? [`${plainNumber(value / 1e-9)}\u00a0nF`] : []),
  ].filter((text) => text !== first);
  return others.length === 0 ? first : `${first} (${others.join(', ')})`;
};

/** Digits that tell the ends of a close tolerance apart. */
const DIGITS = { wide: 3, close: 4 } as const;

const between = (value: number, { minus, plus, unit }: Tolerance): string => {
  const [below, above] = unit === 'fraction' ? [value * minus, value * plus] : [minus, plus];
  return formatQuantity({ min: Math.max(0, value - below), typ: value, max: value + above }, 'F', {
    digits: above < 0.01 * value ? DIGITS.close : DIGITS.wide,
  });
};

/** The code with the letters that stand behind it most often, for a title and a sentence. */
const withOftenLetters = (
  { markings }: Catalogue,
  code: string,
): { marking: string; says: string }[] => {
  const value = codeValue(code);
  return markings.toleranceLetters
    .filter((row) => row.script === 'latin' && row.met === 'often' && row.use === 'usual')
    .filter((row) => row.unit !== 'pF' && row.minus === row.plus)
    .map(({ letter }) => {
      const [first] = readToleranceLetter(markings, letter, value);
      return {
        marking: code + letter,
        says:
          first === undefined
            ? ''
            : `${formatValue(value, 'F')} ${sayToleranceOf(first.tolerance)}`,
      };
    })
    .filter(({ says }) => says !== '');
};

const toleranceRows = (catalogue: Catalogue, code: string): Markup[][] => {
  const value = codeValue(code);
  const letters = new Set(
    catalogue.markings.toleranceLetters
      .filter((row) => row.script === 'latin')
      .map((row) => row.letter),
  );
  return [...letters]
    .flatMap((letter) => {
      const [first] = readToleranceLetter(catalogue.markings, letter, value);
      return first === undefined || first.use === 'rare' || first.origins.length > 0
        ? []
        : [{ letter, ...first }];
    })
    .toSorted((a, b) => a.tolerance.plus - b.tolerance.plus)
    .map(({ letter, tolerance, source }) => [
      // The word search must find this page by it before those that have it as an example.
      h('code', { 'data-pagefind-weight': '10' }, code + letter),
      sayToleranceOf(tolerance),
      between(value, tolerance),
      sourceLink(source),
    ]);
};

/** What else says the same value, by body. */
const otherWays = (catalogue: Catalogue, code: string): Markup[][] => {
  const ways = waysPrinted(catalogue, { capacitance: codeValue(code) }).filter(isShort);
  const byText = Map.groupBy(catalogue.markings.bodies, ({ id }) =>
    ways
      .filter((way) => way.bodies.includes(id))
      .map(({ text }) => text)
      .join('\n'),
  );
  return [...byText]
    .filter(([texts]) => texts !== '')
    .map(([texts, bodies]) => [
      capital(listed(bodies.map(({ id }) => shortBody(id)))),
      h('span', {}, ...parted(texts.split('\n').map(mark))),
    ]);
};

/** Types that come in such a value and on bodies that carry the code, with their usual voltage. */
const typeLinks = (catalogue: Catalogue, code: string): Markup[] => {
  const value = codeValue(code);
  const way = waysPrinted(catalogue, { capacitance: value }).find(({ text }) => text === code);
  const families = new Set(
    catalogue.markings.bodies.filter(({ id }) => way?.bodies.includes(id)).map((row) => row.family),
  );
  return Object.values(catalogue.types)
    .filter((type) => families.has(type.family))
    .filter((type) => value >= type.old_c_min && value <= type.old_c_max)
    .map((type) =>
      link(
        `/replace/${type.id}/?c=${encodeURIComponent(
          formatValue(value, 'F')
            .replace(/[\s\u00a0]/g, '')
            .replace('µ', 'u')
            .replace('F', ''),
        )}`,
        `${type.short_name}, often ${formatValue(type.old_v_typical, 'V')}`,
      ),
    );
};

const neighbours = (codes: readonly ListedCode[], own: ListedCode): Markup[] => {
  const values = codes.filter(({ kind }) => kind === 'value');
  const at = values.indexOf(own);
  const pair = own.code.slice(0, 2);
  const decade = [Number(own.code.slice(2)) - 1, Number(own.code.slice(2)) + 1].map((count) =>
    values.find(({ code }) => code === `${pair}${count}`),
  );
  return [values[at - 1], values[at + 1], ...decade]
    .filter((code) => code !== undefined)
    .map((one) => link(codePath(one), `${one.code}: ${formatValue(codeValue(one.code), 'F')}`));
};

/** The page of a three-figure value code. */
export const valuePage = (
  catalogue: Catalogue,
  own: ListedCode,
  codes: readonly ListedCode[],
): CodePage => {
  const { code } = own;
  const value = codeValue(code);
  const count = Number(code.at(-1));
  const toleranced = withOftenLetters(catalogue, code);
  const noughts = ['no nought', '1 nought'][count] ?? `${count} noughts`;
  return {
    title: `${code} on a capacitor: ${formatValue(value, 'F')}`,
    sought: `${[code, ...toleranced.map(({ marking }) => marking)].join(', ')} on a capacitor: ${formatValue(value, 'F')}`,
    answer: [
      `${code} is ${inEveryUnit(value)}.`,
      sentence(listed(toleranced.map(({ marking, says }) => `${marking} is ${says}`))),
    ].join(' '),
    more: [`${code.slice(0, 2)} and ${noughts}, counted in picofarads.`],
    sections: [
      ...rivalsSection(catalogue, code),
      {
        id: 'tolerance',
        title: 'With a letter behind it',
        content: [
          table(
            `${code} with a tolerance letter`,
            ['Marking', 'Tolerance', 'The part is between', 'Source'],
            toleranceRows(catalogue, code),
          ),
        ],
      },
      {
        id: 'printed',
        title: 'The same value, printed otherwise',
        content: [
          table(
            `How ${formatValue(value, 'F')} is printed`,
            ['Body', 'Usual marks'],
            otherWays(catalogue, code),
          ),
          h(
            'p',
            {},
            link(
              `/read/printed/?c=${encodeURIComponent(formatValue(value, 'F').replace('\u00a0', ''))}`,
              'Every way, with tolerance and voltage',
            ),
          ),
        ],
      },
      {
        id: 'stand-ins',
        title: 'What replaces it',
        content: [
          h('p', {}, 'It depends on what the part is made of. Parts of this value and mark are:'),
          chips(typeLinks(catalogue, code)),
        ],
      },
      { id: 'near', title: 'Codes near it', content: [chips(neighbours(codes, own))] },
      {
        id: 'tables',
        title: 'Where it comes from',
        content: [
          h(
            'p',
            {},
            link(
              `/read/value-forms/#three-figures${value < 1e-9 ? '-small' : ''}`,
              'Values in figures',
            ),
            ' and ',
            link('/read/multipliers/', 'what the last figure counts'),
            ', each row with its source.',
          ),
        ],
      },
    ],
  };
};
