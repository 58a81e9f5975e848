import { TRADE } from '../markings/lexicon/trade.ts';
import type { Reading } from '../markings/meanings/reading.ts';
import { ruleOf, type WithRules } from '../rule-of-thumb.ts';
import { asRead, type Candidate } from './candidate.ts';
import { composed, toleranceOf } from './compose.ts';
import { endEvidence } from './ends.ts';
import { fillings } from './fill.ts';
import { preferenceOf } from './preferred.ts';
import { distinct, settled, shortlist } from './rank.ts';
import { schemesFor, type ColourReadingTables, type Scheme } from './scheme.ts';
import { takingOf, type Marks } from './take.ts';
import { scoreOf, weightsOf, type ColourWeights } from './weigh.ts';
import type { ColourRequest } from './request.ts';

/** What reading colours needs of the catalogue. */
export interface ColourCatalogue extends WithRules {
  markings: ColourReadingTables;
}

/** The tables, and what ways to read by them are weighed by. */
interface Weighed {
  tables: ColourReadingTables;
  weights: ColourWeights;
}

const candidatesOf = (
  { tables, weights }: Weighed,
  scheme: Scheme,
  given: Marks,
  turned: boolean,
  request: ColourRequest,
): Candidate[] =>
  fillings(scheme, asRead(given, turned)).flatMap(({ marks, guessed }) => {
    const taking = takingOf(scheme, marks);
    if (taking === undefined) return [];
    const tolerance = toleranceOf(taking);
    const candidate = {
      scheme,
      turned,
      taking,
      guessed,
      tolerance,
      preference:
        taking.figures === undefined ? undefined : preferenceOf(taking.figures, tolerance, tables),
    };
    return [{ ...candidate, score: scoreOf(weights, candidate, request) }];
  });

/**
 * Every way in which the colours on a part can be understood, best first; none where no scheme fits
 * them. Never throws. Values in F, ohm, V, 1/K and as fractions.
 *
 * An unknown colour of the value gives a reading for each colour that it may have had, preferred
 * values first; where more than two are unknown, no value is read. Other unknown colours leave open
 * what they would tell. Both ends are tried where nothing on the body says which comes first. All
 * schemes that fit are offered; `settleBy` says what tells them apart.
 */
export const readColours = (catalogue: ColourCatalogue, request: ColourRequest): Reading[] => {
  const { markings: tables } = catalogue;
  const weights = weightsOf(tables);
  const known = new Set(tables.colours.map(({ id }) => id));
  const colours = request.colours.map((id) => (id !== undefined && known.has(id) ? id : undefined));
  if (colours.every((colour) => colour === undefined)) return [];
  const candidates = schemesFor(tables, request, colours.length).flatMap((scheme) =>
    (scheme.layout.turn ? [false, true] : [false]).flatMap((turned) =>
      candidatesOf({ tables, weights }, scheme, colours, turned, request),
    ),
  );
  const ranked = shortlist(weights, candidates).map((candidate) => {
    const reading = composed(tables, candidate);
    const evidence = [...endEvidence(tables, candidate, request), ...reading.evidence];
    return { candidate, reading: { ...reading, evidence } };
  });
  return settled(
    { weights, largestAt1kHz: ruleOf(catalogue, TRADE.largestAt1kHz) },
    distinct(ranked),
  );
};
