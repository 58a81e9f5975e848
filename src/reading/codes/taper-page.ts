import { link } from '../../components/link.ts';
import type { Catalogue } from '../../engine/index.ts';
import { inOrderOfUse } from '../../engine/markings/meanings/use.ts';
import { h, type Markup } from '../../markup/node.ts';
import { listed as joined, sentence, typeset } from '../../text/words.ts';
import { codePath, type ListedCode } from './listed.ts';
import { chips } from '../chips.ts';
import { mark, parted, sourceLink, table, type CodePage } from './page.ts';
import { partsOf, useWords } from './say.ts';

type Row = Catalogue['markings']['tapers'][number];

/** What a letter means on potentiometers, what is usual first. */
export const lettersTapers = ({ markings }: Catalogue, letter: string): Row[] =>
  inOrderOfUse(markings.tapers.filter((row) => row.letter === letter));

const answerOf = (letter: string, rows: readonly Row[]): string =>
  `${letter} on a potentiometer is ${joined(
    rows.map(({ law, origins }, index) =>
      index === 0
        ? `${law.startsWith('S') ? 'an' : 'a'} ${law} taper on ${partsOf(origins)}`
        : `a ${law} one on ${partsOf(origins)}`,
    ),
    'but',
  )}.`;

const atHalf = ({ half_min_percent: least, half_max_percent: most }: Row): string =>
  `${least} to ${most}\u00a0%`;

/** The first sentence of a note: what follows is about its source. */
const firstOf = (note: string): string => /^.*?\.(?= |$)/.exec(note)?.[0] ?? note;

const rowOf = (row: Row): (Markup | Markup[])[] => [
  sentence(row.law).replace(/\.$/, ''),
  h('div', { class: 'short-words' }, firstOf(row.note)),
  atHalf(row),
  useWords[row.use],
  sourceLink(row.source),
];

const printed = (letter: string): Markup[] =>
  [`${letter}50K`, `50K${letter}`, `${letter}503`].map((text) =>
    link(`/read/?m=${text}`, mark(text)),
  );

/** The page of the letter of a taper: what it meant, by where and when the part was made. */
export const taperPage = (
  catalogue: Catalogue,
  own: ListedCode,
  codes: readonly ListedCode[],
): CodePage => {
  const { code: letter } = own;
  const rows = lettersTapers(catalogue, letter);
  const laws = [...new Set(rows.map(({ law }) => law))];
  const [first] = rows;
  const others = codes.filter((one) => one.kind === 'taper' && one !== own);
  const asTolerance = codes.find(({ kind, code }) => kind === 'letter' && code === letter);
  return {
    title: `${letter} on a potentiometer: ${joined(laws, 'or')} taper`,
    answer: answerOf(letter, rows),
    more:
      laws.length < 2
        ? []
        : ['The letter alone does not tell which; a measurement at half travel does.'],
    sections: [
      {
        id: 'meanings',
        title: 'By where and when it was made',
        content: [
          table(
            `Tapers with the letter ${letter}`,
            ['Taper', 'Met on', 'At half travel', 'How usual', 'Source'],
            rows.map(rowOf),
          ),
        ],
      },
      {
        id: 'tells',
        title: 'What tells',
        content: [h('p', {}, sentence(typeset(first?.settle ?? '')))],
      },
      {
        id: 'printed',
        title: 'As it is met',
        content: [
          h('p', {}, 'On a part of 50\u00a0kΩ: ', ...parted(printed(letter)), '.'),
          chips(
            laws.map((law) =>
              link(
                `/read/printed/?kind=resistor&c=50k&taper=${encodeURIComponent(law)}`,
                `Every mark of 50\u00a0kΩ, ${law}`,
              ),
            ),
          ),
        ],
      },
      {
        id: 'near',
        title: 'Other letters',
        content: [
          chips([
            ...others.map((one) =>
              link(
                codePath(one),
                `${one.code}: ${lettersTapers(catalogue, one.code)[0]?.law ?? ''}`,
              ),
            ),
            ...(asTolerance === undefined
              ? []
              : [link(codePath(asTolerance), `${letter} as a tolerance`)]),
          ]),
          h(
            'p',
            {},
            link('/read/potentiometer-tapers/', 'Letters and words for tapers'),
            ', each row with its source.',
          ),
        ],
      },
    ],
  };
};
