import type { Fault } from '../fault.ts';
import { valuesOf, type Tables, type ValueOf } from '../read-folder.ts';
import { cellFault, type Check } from './check.ts';
import { byId, goodRows, type GoodRow } from './lookups.ts';

const rule = 'colour-code';

const SCHEMES = 'markings/colour-schemes.csv';
const MEANINGS = 'markings/colour-meanings.csv';
const LAYOUTS = 'markings/colour-layouts.csv';

type Scheme = ValueOf<typeof SCHEMES>;
type Meaning = ValueOf<typeof MEANINGS>;

/** As many places as the body has, and each with a colour that means something there. */
const faultsOfScheme = (
  row: GoodRow<typeof SCHEMES>,
  places: number | undefined,
  meanings: readonly Meaning[],
): Fault[] => {
  const { value: scheme } = row;
  const fault = (column: string, wrong: string, expected: string) =>
    cellFault(rule, SCHEMES, row, column, { wrong, expected });
  const own = meanings.filter(({ code }) => scheme.codes.includes(code));
  const dumb = scheme.places.filter((place) => !own.some(({ role }) => role === place));
  const silent = scheme.absent.filter(
    (place) => !own.some(({ role, colour }) => role === place && colour === 'none'),
  );
  const idle = scheme.codes.filter((code) => !own.some((meaning) => tells(scheme, meaning, code)));
  return [
    ...(places === undefined || places === scheme.places.length
      ? []
      : [fault('places', `${scheme.places.length} places`, `${places}, as its layout has`)]),
    ...dumb.map((place) => fault('places', `no colour has a meaning as ${place}`, 'a code for it')),
    ...silent.map((place) =>
      fault('absent', `nothing says what no ${place} means`, 'a meaning of the colour none'),
    ),
    ...idle.map((code) =>
      fault('codes', `${code} tells nothing here`, 'codes with a meaning for one of the places'),
    ),
  ];
};

const tells = ({ places, absent }: Scheme, { code, role, colour }: Meaning, wanted: string) =>
  code === wanted && (places.includes(role) || (absent.includes(role) && colour === 'none'));

export const colourCodes: Check = {
  id: rule,
  about: 'Each place of a colour scheme has colours that mean something, and each code is used.',
  needs: [SCHEMES, MEANINGS, LAYOUTS],
  check: (tables: Tables) => {
    const layouts = byId(valuesOf(tables, LAYOUTS));
    const meanings = valuesOf(tables, MEANINGS);
    const used = new Set(valuesOf(tables, SCHEMES).flatMap(({ codes }) => codes));
    return [
      ...goodRows(tables, SCHEMES).flatMap((row) =>
        faultsOfScheme(row, layouts.get(row.value.layout)?.labels.length, meanings),
      ),
      ...goodRows(tables, LAYOUTS)
        .filter(({ value }) => value.painted.length !== value.labels.length)
        .map((row) =>
          cellFault(rule, LAYOUTS, row, 'painted', {
            wrong: `${row.value.painted.length} places of a drawing`,
            expected: `${row.value.labels.length}, as there are labels`,
          }),
        ),
      ...goodRows(tables, MEANINGS)
        .filter(({ value }) => !used.has(value.code))
        .map((row) =>
          cellFault(rule, MEANINGS, row, 'code', {
            wrong: 'no scheme uses this code',
            expected: 'a code that some scheme names',
          }),
        ),
    ];
  },
};
