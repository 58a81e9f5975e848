import type { Evidence } from '../markings/meanings/reading.ts';
import { placeGiven, type Candidate } from './candidate.ts';
import { sayMeaning, sayMeanings } from './say.ts';
import type { ColourId, ColourReadingTables, LayoutRow } from './scheme.ts';
import type { Taken } from './take.ts';

const nameOf = (tables: ColourReadingTables, id: ColourId | undefined): string =>
  tables.colours.find((row) => row.id === id)?.name ?? id ?? '';

const labelsOf = (candidate: Candidate, { at }: Taken, { labels }: LayoutRow): string =>
  at.map((place) => labels[placeGiven(place, candidate)] ?? '').join(' and ');

/** What the colours of a group are called, with a question mark where they were filled in. */
const coloursOf = (tables: ColourReadingTables, candidate: Candidate, group: Taken): string => {
  const names = group.at.map((at) => nameOf(tables, candidate.taking.marks[at]));
  const guessed = group.at.some((at) => candidate.guessed.includes(at));
  return `${names.join(' and ')}${guessed ? '?' : ''}`;
};

/** A place without a mark that was read in the colour of the body. */
const bareNote = (tables: ColourReadingTables, { scheme, taking }: Candidate, group: Taken) =>
  scheme.row.bare && group.at.some((at) => taking.marks[at] === 'none')
    ? `, in the colour of the body, ${nameOf(tables, taking.marks[0])}`
    : '';

/** What each place was taken for, in the order in which they are read, then what is told by absence. */
export const evidenceOf = (tables: ColourReadingTables, candidate: Candidate): Evidence[] => {
  const { taking, scheme } = candidate;
  const places = taking.taken.flatMap((group): Evidence[] => {
    const [usual] = group.meanings;
    if (usual === undefined) return [];
    return [
      {
        text: `${coloursOf(tables, candidate, group)} (${labelsOf(candidate, group, scheme.layout)})`,
        at: placeGiven(group.at[0] ?? 0, candidate),
        means: sayMeanings(group.meanings) + bareNote(tables, candidate, group),
        source: usual.source,
      },
    ];
  });
  const absent = taking.absent.map((row) => ({
    text: `no ${scheme.form.mark} for the ${row.role}`,
    at: taking.marks.length,
    means: sayMeaning(row),
    source: row.source,
  }));
  return [...places, ...absent];
};

/** Places without a meaning here, and those that one cannot tell. */
export const notUnderstoodOf = (
  tables: ColourReadingTables,
  candidate: Candidate,
  layout: LayoutRow,
): string[] =>
  candidate.taking.taken
    .filter(({ meanings }) => meanings.length === 0)
    .map((group) => {
      const label = labelsOf(candidate, group, layout);
      return group.colours === undefined
        ? `${label}, not known`
        : `${coloursOf(tables, candidate, group)} (${label})`;
    });
