import { link } from '../../components/link.ts';
import { formatValue, type Catalogue } from '../../engine/index.ts';
import { toleranceOf } from '../../engine/markings/ratings/tolerances.ts';
import { inOrderOfUse } from '../../engine/markings/meanings/use.ts';
import { h, type Markup } from '../../markup/node.ts';
import { listed as joined, typeset } from '../../text/words.ts';
import { codePath, type ListedCode } from './listed.ts';
import { chips } from '../chips.ts';
import { mark, sourceLink, table, type CodePage } from './page.ts';
import { partsOf, sayToleranceOf, useWords } from './say.ts';
import { lettersTapers } from './taper-page.ts';

type Use = 'usual' | 'other' | 'rare';

/** One meaning of a letter, by where it stands. */
interface LetterMeaning {
  where: string;
  example: string;
  means: string;
  use: Use;
  origins: readonly string[];
  source: string;
}

/** Tolerances of capacitors. */
const onCapacitors = ({ markings }: Catalogue, letter: string): LetterMeaning[] =>
  inOrderOfUse(markings.toleranceLetters.filter((row) => row.letter === letter)).map((row) => {
    const small = row.from_f === undefined && row.below_f !== undefined;
    const below = row.below_f === undefined ? '' : ` below ${formatValue(row.below_f, 'F')}`;
    return {
      where: `behind the value of a capacitor${below}`,
      example: small ? `4R7${letter}` : `473${letter}`,
      means: sayToleranceOf(toleranceOf(row)),
      use: row.use,
      origins: row.origins,
      source: row.source,
    };
  });

/** Tolerances of resistors. */
const onResistors = ({ markings }: Catalogue, letter: string): LetterMeaning[] =>
  inOrderOfUse(markings.resistorTolerances.filter((row) => row.letter === letter)).map((row) => ({
    where: 'behind the value of a resistor',
    example: `4K7${letter}`,
    means: sayToleranceOf({ minus: row.percent / 100, plus: row.percent / 100, unit: 'fraction' }),
    use: row.use,
    origins: row.origins,
    source: row.source,
  }));

/** Tapers of potentiometers. */
const onPotentiometers = (catalogue: Catalogue, letter: string): LetterMeaning[] =>
  lettersTapers(catalogue, letter).map(({ law, origins, use, source }) => ({
    where: `before or behind the value of a potentiometer, on ${partsOf(origins)}`,
    example: `${letter}50K`,
    means: `${law} taper`,
    use,
    origins: [],
    source,
  }));

type Stands = Catalogue['markings']['voltageSchemes'][number]['stands'];

/** A value with a letter for the voltage, where that stands beside the figures alone. */
const WITH_LETTER: Partial<Record<Stands, (letter: string) => string>> = {
  'before-figures': (letter) => `${letter}106`,
  'behind-figures': (letter) => `106${letter}`,
};

/** The letter among figures, before them, and on chips. */
const elsewhere = ({ markings }: Catalogue, letter: string): LetterMeaning[] => [
  ...markings.pointLetters
    .filter((row) => row.letter === letter)
    .map((row) => ({
      where: `in place of the decimal point, on a ${row.quantity === 'capacitance' ? 'capacitor' : 'resistor'}`,
      example: row.places.includes('middle') ? `4${letter}7` : `47${letter}`,
      means: formatValue(row.factor, row.quantity === 'capacitance' ? 'F' : 'ohm'),
      use: row.use,
      origins: row.origins,
      source: row.source,
    })),
  ...markings.voltageSchemes.flatMap(({ id, where, stands }) => {
    const marking = WITH_LETTER[stands];
    if (marking === undefined) return [];
    return markings.voltageCodes
      .filter((row) => row.code === letter && row.scheme === id)
      .map((row) => ({
        where,
        example: marking(letter),
        means: `${formatValue(row.volts_min, 'V')} rated`,
        use: row.use,
        origins: row.origins,
        source: row.source,
      }));
  }),
  ...markings.mantissaLetters
    .filter((row) => row.letter === letter && row.use === 'usual')
    .map((row) => ({
      where: 'before one figure on a small ceramic chip',
      example: `${letter}4`,
      means: `${row.value}, the figure counting the noughts`,
      use: row.use,
      origins: row.origins,
      source: row.source,
    })),
  ...markings.temperatureSystems
    .filter((system) => system.letter_where !== '')
    .flatMap((system) =>
      markings.class1Signs
        .filter((row) => row.symbol === letter && row.place === 'slope' && row.system === system.id)
        .map((row) => ({
          where: system.letter_where,
          example: `470J${letter}`,
          means: `${row.value < 0 ? '−' : ''}${Math.abs(row.value)} ppm/K`,
          // What is usual within such a system is not so among parts of today.
          use: row.use === 'usual' ? 'other' : row.use,
          origins: system.origins,
          source: row.source,
        })),
    ),
  ...markings.class2Codes
    .filter((row) => row.code === letter)
    .map((row) => ({
      where: 'by itself on a ceramic of class 2',
      example: letter,
      means: `−${Math.abs(row.low)}/+${row.high} % over ${row.t_min} to ${row.t_max} °C`.replace(
        ' -',
        ' −',
      ),
      use: row.use,
      origins: row.origins,
      source: row.source,
    })),
];

/** The usual tolerances in one sentence. */
const answerOf = (
  letter: string,
  capacitors: readonly LetterMeaning[],
  resistors: readonly LetterMeaning[],
): string => {
  const plain = capacitors.filter(({ use, origins }) => use !== 'rare' && origins.length === 0);
  const above = plain.find(({ where }) => !where.includes('below'));
  const below = plain.find(({ where }) => where.includes('below'));
  const resistor = resistors.find(({ use }) => use !== 'rare') ?? resistors[0];
  const parts = [
    ...(above === undefined
      ? []
      : [
          `${above.means} on a capacitor${resistor?.means === above.means ? ' or a resistor' : ''}`,
        ]),
    ...(below === undefined
      ? []
      : [`${below.means} ${below.where.replace(/.*(?= below)/, '').trim()}`]),
    ...(resistor === undefined || resistor.means === above?.means
      ? []
      : [`${resistor.means} on a resistor`]),
  ];
  const named = letter.length === 1 ? `The letter ${letter}` : letter;
  return `${named} behind a value is a tolerance: ${joined(parts)}.`;
};

/** What the parts are that bear a letter. */
const kindsOf = (
  capacitors: readonly LetterMeaning[],
  resistors: readonly LetterMeaning[],
): string => {
  if (resistors.length === 0) return 'a capacitor';
  return capacitors.length === 0 ? 'a resistor' : 'a capacitor or resistor';
};

const notesOf = ({ markings }: Catalogue, letter: string): string[] =>
  markings.toleranceLetters
    .filter((row) => row.letter === letter)
    .map(({ note }) => note)
    .filter((note) => note !== '');

/** The page of a letter: what it means behind, among and before figures. */
export const letterPage = (
  catalogue: Catalogue,
  own: ListedCode,
  codes: readonly ListedCode[],
): CodePage => {
  const { code: letter } = own;
  const capacitors = onCapacitors(catalogue, letter);
  const resistors = onResistors(catalogue, letter);
  const all = [
    ...capacitors,
    ...resistors,
    ...onPotentiometers(catalogue, letter),
    ...elsewhere(catalogue, letter),
  ];
  const letters = codes.filter(({ kind }) => kind === 'letter');
  const rows: Markup[][] = all.map(({ where, example, means, use, origins, source }) => [
    mark(example),
    typeset(means),
    where +
      (origins.length === 0 || origins.includes('international') ? '' : ` (${joined(origins)})`),
    useWords[use],
    sourceLink(source),
  ]);
  return {
    title: `Tolerance ${letter} on ${kindsOf(capacitors, resistors)}`,
    answer: answerOf(letter, capacitors, resistors),
    // Words such as GMV are explained by their row; a letter has too many rows for that.
    more: letter.length === 1 ? [] : notesOf(catalogue, letter),
    sections: [
      {
        id: 'meanings',
        title: 'By where it stands',
        content: [
          table(
            `Meanings of the letter ${letter}`,
            ['As in', 'Means', 'Where', 'How usual', 'Source'],
            rows,
          ),
        ],
      },
      {
        id: 'near',
        title: 'Other letters',
        content: [
          chips(letters.filter((one) => one !== own).map((one) => link(codePath(one), one.code))),
          h(
            'p',
            {},
            link('/read/tolerance-letters/', 'Tolerances of capacitors'),
            ' and ',
            link('/read/resistor-tolerances/', 'of resistors'),
            ', each row with its source.',
          ),
        ],
      },
    ],
  };
};
