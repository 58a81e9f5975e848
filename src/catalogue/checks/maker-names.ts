import type { Tables } from '../read-folder.ts';
import { cellFault, type Check } from './check.ts';
import { ofEachTable, remembered } from './remembered.ts';

const rule = 'maker-name';

/** Words of makers' names that are ordinary words too, and so name nobody by themselves. */
const ordinary = new Set(
  `advanced american analog art axial blue british capacitor capacitors ceramic ceramics chip
  circuit circuits company components condenser corporation cement data devices digital diodes
  distributor division dry electric electrical electro electronic electronics emission enterprise
  european film general german global group high hollywood illinois inc industrial industries
  instruments integrated international japan japanese labs leaded linear ltd made maker makers mark
  maxim metal micro microchip mica miniature monolithic motor national new north not ohm optical
  paper parts passive power precision quality radial radio resistor resistors semi semiconductor
  semiconductors series sheet south standard state switches system systems technical technologies
  technology texas tube tubes type united unknown unnamed valve various very west wire`
    .split(/\s+/)
    .filter((word) => word !== ''),
);

const SHORTEST_NAME = 3;

/** Columns that cite or point and are not our own text. */
const CITING = ['source', 'locator'];

const capitalised = (word: string): boolean => /^\p{Lu}/u.test(word);

/** Names of one publisher: each capitalised word that is no ordinary one, and each whole name. */
const namesOf = (publisher: string): string[] => {
  const wholes = publisher.split(/\s*[/,()]\s*|\s+-\s+/).filter((name) => name !== '');
  return wholes.flatMap((whole) => {
    const words = whole.match(/[\p{L}\d]+(?:-[\p{L}\d]+)*/gu) ?? [];
    const proper = words.filter(
      (word) =>
        word.length >= SHORTEST_NAME && capitalised(word) && !ordinary.has(word.toLowerCase()),
    );
    return words.length > 1 && words.every(capitalised) ? [whole, ...proper] : proper;
  });
};

const escape = (text: string): string => text.replaceAll(/[$()*+.?[\\\]^{|}]/g, '\\$&');

/** Matches any maker's name as a whole word; nothing where no maker is known. */
const makerPattern = remembered((tables: Tables): RegExp | undefined => {
  const names = tables['sources.csv'].rows
    .filter(({ cells }) => cells['kind'] === 'data-sheet')
    .flatMap(({ cells }) => namesOf(cells['publisher'] ?? ''));
  if (names.length === 0) return undefined;
  const longestFirst = [...new Set(names)].sort((a, b) => b.length - a.length);
  return new RegExp(
    `(?<![\\p{L}\\d])(?:${longestFirst.map(escape).join('|')})(?![\\p{L}\\d])`,
    'iu',
  );
});

export const makerNames: Check = {
  id: rule,
  about: 'Makers are named in citations, never in our own texts.',
  needs: ['sources.csv'],
  check: ofEachTable((tables, file) => {
    const pattern = makerPattern(tables);
    if (pattern === undefined || file === 'sources.csv') return [];
    return tables[file].rows.flatMap((row) =>
      Object.entries(row.cells).flatMap(([column, cell]) => {
        const found = CITING.includes(column) ? undefined : pattern.exec(cell)?.[0];
        if (found === undefined || !capitalised(found)) return [];
        return [
          cellFault(rule, file, row, column, {
            wrong: `names the maker ${found}`,
            expected: 'text that names no maker',
          }),
        ];
      }),
    );
  }),
};
