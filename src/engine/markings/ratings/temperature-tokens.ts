import type { MarkingTables } from '../../../schemas/markings.ts';
import { endsBehindVolts } from '../lexicon/behind-volts.ts';
import type { Names } from '../lexicon/names.ts';
import { voltsFoundAt, type Item, type Scan } from '../lexicon/scan.ts';
import { tieTemperature, type TiedMeaning } from '../lexicon/temperature-codes.ts';
import { readTemperatureCharacteristic } from '../lexicon/temperatures.ts';
import {
  beforeThreeFigures,
  cutsRun,
  isAsWritten,
  isFigure,
  isLetter,
  othersAt,
  wordBegins,
  wordEnds,
  type Assumed,
  type Marking,
} from '../text/text.ts';
import type { Need, Token } from '../meanings/token.ts';
import { weightOf, weights } from '../meanings/weights.ts';
import type { FoundWord } from '../lexicon/word-tree.ts';

/** Whether a code may stand here: it cuts no run of letters or figures in two. */
const standsFree = (marking: Marking, at: number, end: number): boolean =>
  (!cutsRun(marking, at) || endsBehindVolts(marking, at, end)) && !cutsRun(marking, end);

/** A letter by itself that seldom means anything is looked at only where the body is known. */
const isAskedFor = ({ lexicon }: Scan, { said }: TiedMeaning): boolean =>
  said.alone || said.use !== 'rare' || said.bodies.includes(lexicon.hints.body ?? '');

/** A single letter stands alone, or begins a word that goes on with the value. */
const letterNeeds = (scan: Scan, at: number, end: number): Need[] => [
  beforeThreeFigures(scan.marking, at, end) ? 'touching-before-value' : 'whole-word',
];

/** Whether the last character of a code is the unit of a voltage as it is written. */
const endsInVolts = (scan: Scan, end: number): boolean =>
  voltsFoundAt(scan, end - 1).some((found) => found.end === end && found.assumed.length === 0);

/** What it costs to take a figure for the letter that a code begins with: `25V` is a voltage. */
const figureFirst = (scan: Scan, at: number, code: string): number => {
  if (!isFigure(scan.marking.text.charAt(at)) || !isLetter(code.charAt(0))) return 0;
  return endsInVolts(scan, at + code.length) ? weights.voltageForCode : weights.figureForLetter;
};

/** Codes that stand whole in a table, as words to be found. */
export const temperatureItems = (
  tables: MarkingTables,
  bodies: Names,
  origins: Names,
): [word: string, item: Item][] => {
  const codes = new Set([...tables.class1Codes, ...tables.class2Codes].map((row) => row.code));
  return [...codes].flatMap((code) =>
    readTemperatureCharacteristic(tables, code)
      .map((said) => tieTemperature(said, bodies, origins))
      .map((tied): [string, Item] => {
        const { said, meaning } = tied;
        const take = (scan: Scan, at: number, found: FoundWord<Item>): Token | undefined => {
          if (!standsFree(scan.marking, at, found.end) || !isAskedFor(scan, tied)) return undefined;
          // Two letters by themselves are too easily part of a name to be taken in small ones.
          if (!found.sameCase && code.length < 3) return undefined;
          if (found.assumed.length > 0 && code.length < 3) return undefined;
          return {
            at,
            end: found.end,
            meaning,
            weight:
              weightOf(said.alone ? weights.temperature : weights.temperatureLetter, said.use) +
              (found.sameCase ? 0 : weights.otherCase) +
              figureFirst(scan, at, code) +
              found.cost,
            needs: said.alone ? [] : letterNeeds(scan, at, found.end),
            assumed: found.assumed,
          };
        };
        return [code, { kind: 'word', take }];
      }),
  );
};

interface Code {
  code: string;
  assumed: readonly Assumed[];
  cost: number;
}

const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ'.split('');
const FIGURES = '0123456789'.split('');

/** What the character at an index may be in a code, where that place takes figures or letters. */
const placesAt = (
  marking: Marking,
  at: number,
  wantsFigure: boolean,
  mayBeWorn: boolean,
): Code[] => {
  const fits = wantsFigure ? isFigure : (each: string) => each >= 'A' && each <= 'Z';
  if (marking.worn[at]) {
    const symbols = mayBeWorn ? (wantsFigure ? FIGURES : LETTERS) : [];
    return symbols.map((as) => ({
      code: as,
      assumed: [{ at, as, why: 'worn' }],
      cost: weights.worn,
    }));
  }
  const written = marking.text.charAt(at).toUpperCase();
  return [
    ...(fits(written) ? [{ code: written, assumed: [], cost: 0 }] : []),
    ...othersAt(marking, at)
      .filter(({ as }) => fits(as))
      .map(({ as, cost }): Code => ({ code: as, assumed: [{ at, as, why: 'look-alike' }], cost })),
  ];
};

/** Whether figures and letters take turns in the three characters from an index on. */
const takesTurns = (text: string, at: number): boolean => {
  const figureFirst = isFigure(text.charAt(at));
  return (
    isFigure(text.charAt(at + 1)) !== figureFirst && isFigure(text.charAt(at + 2)) === figureFirst
  );
};

/** Codes of three places at an index, in each of which figures and letters take turns. */
const codesAt = (marking: Marking, at: number): Code[] => {
  const asWritten =
    isAsWritten(marking, at) && isAsWritten(marking, at + 1) && isAsWritten(marking, at + 2);
  if (asWritten && !takesTurns(marking.text, at)) return [];
  const worn = [at, at + 1, at + 2].filter((index) => marking.worn[index]).length;
  if (worn > 1) return [];
  return [false, true].flatMap((figureFirst) =>
    [0, 1, 2].reduce<Code[]>(
      (codes, place) => {
        if (codes.length === 0) return codes;
        const next = placesAt(marking, at + place, figureFirst === (place % 2 === 0), true);
        return codes.flatMap((sofar) =>
          next.map(({ code, assumed, cost }) => ({
            code: sofar.code + code,
            assumed: [...sofar.assumed, ...assumed],
            cost: sofar.cost + cost,
          })),
        );
      },
      [{ code: '', assumed: [], cost: 0 }],
    ),
  );
};

/** Three-place codes that are put together by rule. */
const ruledAt = (scan: Scan, at: number): Token[] => {
  const { lexicon, marking } = scan;
  const end = at + 3;
  if (end > marking.text.length || !standsFree(marking, at, end)) return [];
  const wholeWord = wordBegins(marking, at) && wordEnds(marking, end);
  return codesAt(marking, at).flatMap(({ code, assumed, cost }) =>
    lexicon.temperatureCodes
      .ruled(code)
      .filter(
        ({ said }) => wholeWord || (said.characteristic.class === 2 && !isFigure(code.charAt(0))),
      )
      .map(({ said, meaning }) => ({
        at,
        end,
        meaning,
        weight:
          weightOf(weights.temperature, said.use) +
          (assumed.length > 0 || marking.text.startsWith(code, at) ? 0 : weights.otherCase) +
          figureFirst(scan, at, code) +
          cost,
        needs: [],
        assumed,
      })),
  );
};

const BEHIND_TOLERANCE: readonly Need[] = ['touching-tolerance'];

/** Whether a word goes on behind a letter, with another letter in the second place. */
const runsOn = (marking: Marking, end: number): boolean =>
  !wordEnds(marking, end) && isLetter(marking.text.charAt(end + 1));

/** A slope letter behind the tolerance letter; that of a voltage may follow. */
const slopeLettersAt = ({ lexicon, marking }: Scan, at: number): Token[] =>
  runsOn(marking, at + 1) || !isLetter(marking.text.charAt(at - 1))
    ? []
    : lexicon.temperatureCodes.slope(marking.text.charAt(at)).map(({ said, meaning }) => ({
        at,
        end: at + 1,
        meaning,
        weight: weightOf(weights.temperatureLetter, said.use),
        needs: BEHIND_TOLERANCE,
        assumed: [],
      }));

/** Temperature characteristics at an index that are not words of a table. */
export const temperaturesAt = (scan: Scan, at: number): Token[] => [
  ...ruledAt(scan, at),
  ...slopeLettersAt(scan, at),
];
