import type { Evidence } from '../markings/meanings/reading.ts';
import { say } from '../markings/meanings/say.ts';
import { asRead, type Candidate } from './candidate.ts';
import { preferenceOf } from './preferred.ts';
import type { ColourReadingTables } from './scheme.ts';
import { takingOf, unfitGroup, type Taking } from './take.ts';
import { toleranceOf } from './compose.ts';
import type { ColourRequest } from './request.ts';
import { inRange } from './weigh.ts';

const ROLE_WORDS: Partial<Record<string, string>> = {
  digit: 'a figure',
  multiplier: 'the multiplier',
};

/** What the same colours would make under the same scheme from the other end. */
const sayOther = (tables: ColourReadingTables, { scheme }: Candidate, taking: Taking): string => {
  const { value, figures } = taking;
  if (value === undefined) return 'a value with a figure unknown';
  const said = say(value, scheme.row.quantity === 'resistance' ? 'Ω' : 'F');
  if (figures?.startsWith('0') === true) return `${said}, with a nought in front`;
  if (!inRange({ scheme, taking })) return `${said}, which such parts do not have`;
  const { series, old } = preferenceOf(figures ?? '', toleranceOf(taking), tables);
  return series === undefined && !old ? `${said}, which is in no series of values` : said;
};

/** Why the other end was not taken first, or that it may be. */
const reasonOf = (
  tables: ColourReadingTables,
  candidate: Candidate,
  { apart }: ColourRequest,
): string => {
  const { scheme, taking, turned } = candidate;
  const other = taking.marks.toReversed();
  const unfit = unfitGroup(scheme, other);
  if (unfit !== undefined) {
    const name = tables.colours.find(({ id }) => id === unfit.colours?.[0])?.name ?? '';
    return `from the other end ${name} would be ${ROLE_WORDS[unfit.role] ?? `the ${unfit.role}`}, which it never is`;
  }
  const there = takingOf(scheme, other);
  const value = there === undefined ? 'nothing' : sayOther(tables, candidate, there);
  const hint =
    apart === undefined || scheme.row.apart === ''
      ? ''
      : `the ${scheme.form.mark} that stands apart is the ${(apart === 'first') === turned ? 'last' : 'first'} one; `;
  return `${hint}from the other end it would be ${value}`;
};

/** The end at which the reading begins and why, as evidence; nothing where only one end is possible. */
export const endEvidence = (
  tables: ColourReadingTables,
  candidate: Candidate,
  request: ColourRequest,
): Evidence[] => {
  const { scheme, turned, taking } = candidate;
  const { layout } = scheme;
  const same = asRead(taking.marks, true).every((mark, at) => mark === taking.marks[at]);
  if (!layout.turn || same) return [];
  const first = layout.labels[turned ? layout.labels.length - 1 : 0] ?? '';
  return [
    {
      text: `begins at the ${first}`,
      at: 0,
      means: reasonOf(tables, candidate, request),
      source: layout.source,
    },
  ];
};
