import type { MarkingTables } from '../../../schemas/markings.ts';
import { filledIn, sayFigures } from '../text/filled-in.ts';
import type { Hints } from '../meanings/reading.ts';
import type { Scan } from '../lexicon/scan.ts';
import { endOfWord, isBlank } from '../text/text.ts';
import type { Token, Use } from '../meanings/token.ts';
import { weightOf, weights } from '../meanings/weights.ts';

type Scheme = MarkingTables['dateSchemes'][number];

/** A date code under one scheme: every date that it can stand for, earliest first. */
export interface DateMeaning {
  scheme: string;
  /** `1959`, `1998-05`, `2002-03-13` or `1989-W23`. */
  dates: string[];
  use: Use;
  origins: readonly string[];
  bodies: readonly string[];
  source: string;
}

/** What has been read of a date code so far. */
interface Parts {
  rest: string;
  years?: readonly number[];
  month?: number;
  week?: number;
  day?: number;
}

const twoPlaces = (value: number): string => String(value).padStart(2, '0');

const yearsOfScheme = new WeakMap<Scheme, readonly number[]>();

const yearsOf = (scheme: Scheme): readonly number[] => {
  const known = yearsOfScheme.get(scheme);
  if (known !== undefined) return known;
  const { years_from: from, years_to: to } = scheme;
  const years = Array.from({ length: to - from + 1 }, (_, index) => from + index);
  yearsOfScheme.set(scheme, years);
  return years;
};

type Place = MarkingTables['dateSigns'][number]['place'];
type SignTable = ReadonlyMap<string, ReadonlyMap<string, readonly number[]>>;

/** What each sign stands for, by scheme, place and sign: looked up for every word of a marking. */
const signTables = new WeakMap<MarkingTables['dateSigns'], ReadonlyMap<string, SignTable>>();

const signTable = (rows: MarkingTables['dateSigns']): ReadonlyMap<string, SignTable> => {
  const known = signTables.get(rows);
  if (known !== undefined) return known;
  const made = new Map(
    [...Map.groupBy(rows, (row) => row.scheme)].map(([scheme, ofScheme]) => [
      scheme,
      new Map(
        [...Map.groupBy(ofScheme, (row) => row.place)].map(([place, ofPlace]) => [
          place,
          new Map(
            [...Map.groupBy(ofPlace, (row) => row.symbol)].map(([symbol, ofSymbol]) => [
              symbol,
              ofSymbol.map(({ value }) => value),
            ]),
          ),
        ]),
      ),
    ]),
  );
  signTables.set(rows, made);
  return made;
};

const NO_SIGN: readonly number[] = [];

const signs = (
  { dateSigns }: MarkingTables,
  scheme: Scheme,
  place: Place,
  symbol: string,
): readonly number[] => signTable(dateSigns).get(scheme.id)?.get(place)?.get(symbol) ?? NO_SIGN;

type Step = (tables: MarkingTables, scheme: Scheme, parts: Parts) => Parts | undefined;

const lettersOfYear: Step = (tables, scheme, parts) => {
  const years = signs(tables, scheme, 'year', parts.rest.charAt(0));
  return years.length === 0 ? undefined : { ...parts, rest: parts.rest.slice(1), years };
};

const figuresOfYear =
  (count: 1 | 2): Step =>
  (_, scheme, parts) => {
    const figures = parts.rest.slice(0, count);
    if (!/^\d+$/.test(figures) || figures.length < count) return undefined;
    const years = yearsOf(scheme).filter((year) => String(year).endsWith(figures));
    return years.length === 0 ? undefined : { ...parts, rest: parts.rest.slice(count), years };
  };

const MONTHS = 12;

/** Years that a run of months in one letter goes on for. */
const RUN = 4;

/** Characters that each sign of a date has, at least and at most. */
const spans: Record<string, readonly [least: number, most: number]> = {
  'year-figures': [2, 2],
  'week-figures': [2, 3],
  'day-figures': [2, 2],
  'maker-figures': [3, 4],
};
const ONE_CHARACTER = [1, 1] as const;

const spanOfScheme = new WeakMap<Scheme, readonly [least: number, most: number]>();

/** Characters of a whole date, at least and at most. */
const spanOf = (scheme: Scheme): readonly [least: number, most: number] => {
  const known = spanOfScheme.get(scheme);
  if (known !== undefined) return known;
  const each = scheme.order.map((name) => spans[name] ?? ONE_CHARACTER);
  const sum = (place: 0 | 1): number => each.reduce((total, span) => total + span[place], 0);
  const made = [sum(0), sum(1)] as const;
  spanOfScheme.set(scheme, made);
  return made;
};

/** How date codes are taken apart, by the names that `date-schemes.csv` uses for their signs. */
const steps: Record<string, Step> = {
  year: lettersOfYear,
  month: (tables, scheme, parts) => {
    const [month] = signs(tables, scheme, 'month', parts.rest.charAt(0));
    return month === undefined ? undefined : { ...parts, rest: parts.rest.slice(1), month };
  },
  week: (tables, scheme, parts) => {
    const [figure] = signs(tables, scheme, 'week', parts.rest.charAt(0));
    if (figure === undefined) return undefined;
    return { ...parts, rest: parts.rest.slice(1), week: (parts.week ?? 0) * 10 + figure };
  },
  'year-figure': figuresOfYear(1),
  'year-figures': figuresOfYear(2),
  'year-figure-letter': (tables, scheme, parts) => {
    const [figure] = signs(tables, scheme, 'year', parts.rest.charAt(0));
    if (figure === undefined) return undefined;
    const years = yearsOf(scheme).filter((year) => year % 10 === figure);
    return { ...parts, rest: parts.rest.slice(1), years };
  },
  'week-figures': (_, __, parts) => {
    const figures = /^-?(\d{2})/.exec(parts.rest);
    if (figures === null) return undefined;
    return { ...parts, rest: parts.rest.slice(figures[0].length), week: Number(figures[1]) };
  },
  'month-of-run': (tables, scheme, parts) => {
    const [count] = signs(tables, scheme, 'month-of-run', parts.rest.charAt(0));
    if (count === undefined) return undefined;
    const turn = Math.floor((count - 1) / MONTHS);
    const years = yearsOf(scheme).filter((year) => (year - scheme.years_from) % RUN === turn);
    return { ...parts, rest: parts.rest.slice(1), years, month: ((count - 1) % MONTHS) + 1 };
  },
  'day-figures': (_, __, parts) => {
    const figures = /^\d{2}/.exec(parts.rest)?.[0];
    if (figures === undefined) return undefined;
    return { ...parts, rest: parts.rest.slice(figures.length), day: Number(figures) };
  },
  'maker-figures': (_, __, parts) => {
    const figures = /^\d{3}-?/.exec(parts.rest)?.[0];
    return figures === undefined ? undefined : { ...parts, rest: parts.rest.slice(figures.length) };
  },
};

const isWeek = (week: number): boolean => week >= 1 && week <= 53;

/** Whether a month of a year has a day. */
const isDay = (year: number, month: number, day: number): boolean =>
  day >= 1 && day <= new Date(Date.UTC(year, month, 0)).getUTCDate();

/** The date in one of the years that it may be of; nothing where there is no such day or week. */
const dateOf = ({ month, week, day }: Parts, year: number): string | undefined => {
  if (month !== undefined) {
    const date = `${year}-${twoPlaces(month)}`;
    if (day === undefined) return date;
    return isDay(year, month, day) ? `${date}-${twoPlaces(day)}` : undefined;
  }
  if (week === undefined) return String(year);
  return isWeek(week) ? `${year}-W${twoPlaces(week)}` : undefined;
};

const datesOf = (parts: Parts): string[] =>
  (parts.years ?? []).flatMap((year) => dateOf(parts, year) ?? []);

const inEra = (date: string, era: Hints['era']): boolean =>
  era === undefined || (Number(date.slice(0, 4)) >= era.from && Number(date.slice(0, 4)) <= era.to);

/** Every date that a code may stand for, one entry a scheme; an era narrows them. */
export const readDateCode = (
  tables: MarkingTables,
  code: string,
  era?: Hints['era'],
): DateMeaning[] =>
  tables.dateSchemes.flatMap((scheme): DateMeaning[] => {
    const [least, most] = spanOf(scheme);
    if (code.length < least || code.length > most) return [];
    const parts = scheme.order.reduce<Parts | undefined>(
      (sofar, name) => (sofar === undefined ? undefined : steps[name]?.(tables, scheme, sofar)),
      { rest: code },
    );
    if (parts?.rest !== '') return [];
    const dates = datesOf(parts)
      .filter((date) => inEra(date, era))
      .sort();
    if (dates.length === 0) return [];
    const { id, use, origins, bodies, source } = scheme;
    return [{ scheme: id, dates, use, origins, bodies, source }];
  });

const LOT_LETTER = /^(\d{4})[A-Z]$/;
const MAKER_DATE = /\d{3}-\d-\d{2}(?!\d)/y;
const LONGEST = 12;

/** Codes that are hardly anything else, and so may stand before the value. */
const WRITTEN_OUT = /^\d{4}$|-/;

/** Dates that are named one by one. */
const MOST_NAMED = 4;

const sayDates = (dates: readonly string[]): string =>
  dates.length > MOST_NAMED
    ? `made on one of ${dates.length} dates from ${dates[0]} to ${dates.at(-1)}`
    : `made ${dates.join(' or ')}`;

/** Meanings of several codes by their scheme, with the dates of all. */
const together = (meanings: readonly DateMeaning[]): DateMeaning[] => {
  const byScheme = new Map<string, DateMeaning>();
  for (const meaning of meanings) {
    const dates = [...(byScheme.get(meaning.scheme)?.dates ?? []), ...meaning.dates].sort();
    byScheme.set(meaning.scheme, { ...meaning, dates });
  }
  return [...byScheme.values()];
};

/** The code in a stretch of a marking; where a figure is worn, all that it may be, and its dates. */
const codeAt = ({ lexicon, marking }: Scan, at: number, end: number) => {
  const read = (text: string) => {
    const word = text.slice(at, end);
    const code = LOT_LETTER.exec(word)?.[1] ?? word;
    return { code, meanings: readDateCode(lexicon.tables, code, lexicon.hints.era) };
  };
  const filled = filledIn(marking, at, end - at).map((each) => ({
    ...read(each.text),
    worn: { at: each.at, as: each.as, why: 'worn' as const },
  }));
  const dated = filled.filter(({ meanings }) => meanings.length > 0);
  const [first] = dated;
  if (first === undefined) return { ...read(marking.text), assumed: [] };
  return {
    code: first.code,
    meanings: together(dated.flatMap(({ meanings }) => meanings)),
    assumed: [{ ...first.worn, as: sayFigures(dated.map(({ worn }) => worn.as)) }],
  };
};

const FEW_FIGURES = /^(?:\d|[1-9]\d{1,2})\d$/;

/** What it costs that a code is as well a usual voltage. */
const voltageCost = ({ lexicon }: Scan, code: string): number =>
  FEW_FIGURES.test(code) && lexicon.usualVolts.has(Number(code)) ? weights.dateForVoltage : 0;

/** A single letter is taken for a date only on parts of an origin that dated them so. */
const mayBeRead = ({ lexicon: { hints } }: Scan, code: string, { origins }: DateMeaning): boolean =>
  code.length > 1 || (hints.origin !== undefined && origins.includes(hints.origin));

/** Dates in the form of a whole word; a lot letter may follow the figures. */
export const datesAt = (scan: Scan, at: number): Token[] => {
  const { lexicon, marking } = scan;
  if (at > 0 && !isBlank(marking.text.charAt(at - 1))) return [];
  MAKER_DATE.lastIndex = at;
  const stretch = MAKER_DATE.exec(marking.text)?.[0];
  const end = stretch === undefined ? endOfWord(marking, at) : at + stretch.length;
  const next = marking.text.charAt(end);
  if (end - at > LONGEST || (next !== '' && !isBlank(next))) return [];
  const { code, meanings, assumed } = codeAt(scan, at, end);
  return meanings
    .filter((meaning) => mayBeRead(scan, code, meaning))
    .map((meaning) => ({
      at,
      end,
      meaning: {
        slot: 'date',
        content: { says: 'date', dates: meaning.dates },
        bodies: lexicon.bodies.bitsOf(meaning.bodies),
        origins: lexicon.origins.bitsOf(meaning.origins),
        types: [],
        means: () => sayDates(meaning.dates),
        source: meaning.source,
      },
      weight:
        weightOf(weights.date, meaning.use) +
        voltageCost(scan, code) +
        assumed.length * weights.wornFigure,
      needs: WRITTEN_OUT.test(code) ? [] : ['value-before'],
      assumed,
    }));
};
