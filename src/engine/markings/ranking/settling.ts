import { hasMadeUp, type Candidate } from './candidate.ts';
import { meterFrequency, type Metering } from './measured.ts';
import { say } from '../meanings/say.ts';
import { spanHolds } from '../ratings/tolerances.ts';

/** Capacitances that are named where several are to be told apart by measuring. */
const MOST_NAMED = 4;

const measuring = (largestAt1kHz: number, candidates: readonly Candidate[]): string[] => {
  const byValue = new Map(
    candidates.flatMap(({ value, reading: { capacitance } }): [string, number][] =>
      capacitance === undefined ? [] : [[value, capacitance.typ]],
    ),
  );
  const rivals = [...byValue.values()];
  if (rivals.length < 2) return [];
  const at = meterFrequency(Math.min(...rivals), largestAt1kHz);
  const named = rivals.slice(0, MOST_NAMED).map((farads) => say(farads, 'F'));
  const others = rivals.length > MOST_NAMED ? ['another value'] : [];
  return [`measure at ${at}: ${[...named, ...others].join(' or ')}`];
};

/** Stretches that a rival with the same value takes otherwise, with both meanings. */
const otherwise = (candidates: readonly Candidate[], candidate: Candidate): string[] =>
  candidates
    .filter((other) => other !== candidate && other.value === candidate.value)
    .flatMap((other) =>
      candidate.reading.evidence.flatMap((own) =>
        other.reading.evidence
          .filter(
            ({ at, text, means }) => at === own.at && text === own.text && means !== own.means,
          )
          .map(
            ({ means }) => `where and when it was made: ${own.text} is ${own.means}, or ${means}`,
          ),
      ),
    );

/** What a stretch is taken for in some readings. */
const meansAt = (candidates: readonly Candidate[], at: number): string[] =>
  candidates.flatMap(({ reading }) =>
    reading.evidence.filter((own) => own.at === at).map(({ means }) => means),
  );

/** What other tables have a tolerance letter for behind a capacitance, beside the readings shown. */
const otherTolerances = (
  candidates: readonly Candidate[],
  { parse, reading }: Candidate,
): string[] => {
  const { capacitance } = reading;
  if (capacitance === undefined) return [];
  return parse.taken.flatMap(({ at, meaning: { content, means } }) => {
    if (content.says !== 'tolerance') return [];
    const shown = new Set(meansAt(candidates, at));
    const others = (content.elsewhere ?? [])
      .filter(({ fromF, belowF }) => spanHolds(capacitance.typ, { from: fromF, below: belowF }))
      .map((other) => other.means)
      .filter((other) => !shown.has(other));
    return others.length === 0
      ? []
      : [`who made it: tables have the letter for ${[means(), ...new Set(others)].join(', ')}`];
  });
};

/** How to find out the taper, where its letter means several. */
const tapers = ({ parse }: Candidate): string[] =>
  parse.taken.flatMap(({ meaning: { content } }) =>
    content.says === 'taper' ? [content.settle] : [],
  );

/** What would settle between a reading and its rivals. */
export const settling = (
  { largestAt1kHz }: Pick<Metering, 'largestAt1kHz'>,
  candidates: readonly Candidate[],
  candidate: Candidate,
): string[] => {
  if (candidates.some(({ parse }) => hasMadeUp(parse)))
    return [...measuring(largestAt1kHz, candidates), 'look again with a lens and slanting light'];
  const own = candidate.parse.value?.meaning.settle ?? '';
  const fromTables = candidates
    .filter((other) => other.value !== candidate.value)
    .map((other) => other.parse.value?.meaning.settle ?? '');
  const texts = fromTables.length === 0 ? [] : [own, ...fromTables];
  return [
    ...new Set([
      ...measuring(largestAt1kHz, candidates),
      ...texts,
      ...tapers(candidate),
      ...otherwise(candidates, candidate),
      ...otherTolerances(candidates, candidate),
    ]),
  ].filter((text) => text !== '');
};
