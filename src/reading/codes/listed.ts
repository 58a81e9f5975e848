import type { Catalogue } from '../../engine/index.ts';
import { voltageCodesThat } from '../../engine/markings/ratings/voltage-codes.ts';
import { remembered } from '../../search/remembered.ts';
import { madeCodes } from './made-codes.ts';
import { codeSlug } from './slug.ts';

/** What the list of codes is made from. */
export type CodeCatalogue = Pick<Catalogue, 'markings' | 'series'>;

export type CodeKind = 'value' | 'voltage' | 'temperature' | 'letter' | 'taper';

/** A code that has a page of its own. */
export interface ListedCode {
  code: string;
  kind: CodeKind;
  /** Last part of its address. */
  slug: string;
  /** Other ways of writing the same code, which lead to the same page. */
  also: readonly string[];
}

/** Kinds whose codes are single letters, which a name in front tells apart. */
const LETTERS: ReadonlySet<CodeKind> = new Set(['letter', 'taper']);

const listed = (kind: CodeKind, code: string, also: readonly string[] = []): ListedCode => ({
  code,
  kind,
  slug: (LETTERS.has(kind) ? `${kind}-` : '') + codeSlug(code),
  also,
});

/** Figures that count the noughts of the codes listed: from 10 pF below 10 µF. */
const NOUGHTS = [0, 1, 2, 3, 4, 5];

/** The three-figure codes of the E24 series from 10 pF to 10 µF, in order of value. */
const valueCodes = ({ series }: CodeCatalogue): string[] => {
  const pairs = series
    .filter((row) => row.series === 'E24')
    .map((row) => Math.round(row.value * 10))
    .toSorted((a, b) => a - b);
  return [...NOUGHTS.flatMap((count) => pairs.map((pair) => `${pair}${count}`)), '106'];
};

const unique = <Item>(items: readonly Item[]): Item[] => [...new Set(items)];

/** The codes of voltages that stand before a value or behind it, in order of voltage. */
const voltageCodes = ({ markings }: CodeCatalogue): string[] =>
  unique(
    voltageCodesThat(markings, 'beside')
      .toSorted((a, b) => a.volts_min - b.volts_min)
      .map((row) => row.code),
  );

/** Temperature codes of more than one letter; those of one system that say the same are one. */
const temperatureCodes = ({ markings }: CodeCatalogue): string[][] => {
  const said = [
    ...markings.class1Codes.map(({ code, system, min_ppm: low, typ_ppm: typ, max_ppm: high }) => ({
      code,
      says: [system, low, typ, high].join(),
    })),
    ...markings.class2Codes.map(({ code, system, t_min: from, t_max: to, low, high }) => ({
      code,
      says: [system, from, to, low, high, code.length > 2 ? '' : code].join(),
    })),
  ].filter(({ code }) => code.length > 1);
  const seen = new Set<string>();
  const named = [...Map.groupBy(said, ({ says }) => says).values()].flatMap((group) => {
    const own = unique(group.map(({ code }) => code)).filter((code) => !seen.has(code));
    for (const code of own) seen.add(code);
    return own.length === 0 ? [] : [own];
  });
  const made = madeCodes(markings).filter((code) => !seen.has(code));
  return [...named, ...made.map((code) => [code])];
};

/** Capital letters that say a tolerance, on capacitors or resistors. */
const letters = ({ markings }: CodeCatalogue): string[] =>
  unique(
    [...markings.toleranceLetters, ...markings.resistorTolerances]
      .filter((row) => row.script === 'latin')
      .map((row) => row.letter),
  ).toSorted();

/** Letters that say a taper; a word such as LOG says it itself, and a Cyrillic letter looks like another in an address. */
const tapers = ({ markings }: CodeCatalogue): string[] =>
  unique(
    markings.tapers.map((row) => row.letter).filter((word) => /^[A-Z]$/.test(word)),
  ).toSorted();

/** Every code that has a page of its own; what would say no more than its row in a table has none. */
export const listedCodes = remembered((catalogue: CodeCatalogue): ListedCode[] => [
  ...valueCodes(catalogue).map((code) => listed('value', code)),
  ...voltageCodes(catalogue).map((code) => listed('voltage', code)),
  ...temperatureCodes(catalogue).map(([code = '', ...also]) => listed('temperature', code, also)),
  ...letters(catalogue).map((code) => listed('letter', code)),
  ...tapers(catalogue).map((code) => listed('taper', code)),
]);

/** The address of a code's page, below the base. */
export const codePath = ({ slug }: ListedCode): `/${string}` => `/read/codes/${slug}/`;
