import {
  isAtLeast,
  isChip,
  ruleOf,
  type Assessment,
  type Catalogue,
  type Leaning,
  type PositionId,
  type Range,
  type RuleOfThumb,
  type TypeId,
} from '../engine/index.ts';
import { madeOf, needsPads, typeRowOf } from './any-kind.ts';
import type { AnyPart } from './phrases.ts';
import { FLOAT_ERROR } from '../engine/quantities/within.ts';

/** The old part by its type, and where it sits: what every request says. */
export interface OldInPlace {
  original: { type: TypeId; capacitance?: Range | number | undefined };
  position: PositionId;
}

/** The family that one takes a type for a member of: by `families.csv` film for paper. */
const kinOf = (catalogue: Catalogue, type: TypeId): string | undefined => {
  const family = typeRowOf(catalogue, type)?.family;
  return catalogue.families[family ?? '']?.kin || family;
};

/** What one takes a type for instead of the plain part of its family; nothing for plain ones. */
const chosenFor = (catalogue: Catalogue, type: TypeId): string =>
  catalogue.types[type]?.chosen_for ?? '';

/** What a place wants that some type of a family is made for; nothing where none is. */
const wantedOf = (
  catalogue: Catalogue,
  { position }: Pick<OldInPlace, 'position'>,
  type: TypeId,
): string => {
  const wanted = catalogue.positions[position]?.chosen_for ?? '';
  const family = catalogue.types[type]?.family;
  const isMade = Object.values(catalogue.types).some(
    (other) => other.family === family && other.chosen_for === wanted,
  );
  return isMade ? wanted : '';
};

/**
 * Whether parts of a type are made for what the place does not want; where it wants nothing special of
 * them, what the old part was taken for will do.
 */
const isSpecial = (catalogue: Catalogue, old: OldInPlace, type: TypeId): boolean => {
  const wanted = wantedOf(catalogue, old, type) || chosenFor(catalogue, old.original.type);
  return !['', wanted].includes(chosenFor(catalogue, type));
};

/** Whether a place wants more than a plain part is made for, and parts of a type are plain. */
const isTooPlain = (catalogue: Catalogue, old: OldInPlace, type: TypeId): boolean =>
  chosenFor(catalogue, type) === '' && wantedOf(catalogue, old, type) !== '';

/**
 * What its family counts against a type: where a place has a family of its own, that is no stranger
 * than the old part's, unless that was an electrolytic, which may have been as large as it had to be.
 */
const ofOtherFamily = (
  catalogue: Catalogue,
  { original, position }: OldInPlace,
  type: TypeId,
): number => {
  const home = catalogue.positions[position]?.home ?? '';
  const isHome = home !== '' && typeRowOf(catalogue, type)?.family === home;
  const isRoomy = catalogue.families[typeRowOf(catalogue, original.type)?.family ?? '']?.roomy;
  const isKin = kinOf(catalogue, type) === kinOf(catalogue, original.type);
  const isAsUsual = isKin || (isHome && isRoomy !== true);
  return (
    (isAsUsual ? 0 : ruleOf(catalogue, 'against-other-family')) +
    (home === '' || isHome ? 0 : ruleOf(catalogue, 'against-away'))
  );
};

/**
 * What the market of a type counts against it: of the old part's own nothing, if it is still sold and not
 * made for what the place does not want.
 */
const ofMarket = (catalogue: Catalogue, old: OldInPlace, type: TypeId): number => {
  const market = typeRowOf(catalogue, type)?.market;
  if (market === 'common') return 0;
  if (market !== 'current') return ruleOf(catalogue, 'against-rare');
  const wanted = wantedOf(catalogue, old, type);
  const isOwn = type === old.original.type && ['', wanted].includes(chosenFor(catalogue, type));
  return isOwn ? 0 : ruleOf(catalogue, 'against-less-common');
};

/** How far parts of a type are at least from what one has in the drawer; from `strangeness`. */
export const strangenessOfType = (catalogue: Catalogue, old: OldInPlace, type: TypeId): number =>
  ofMarket(catalogue, old, type) +
  ofOtherFamily(catalogue, old, type) +
  (isSpecial(catalogue, old, type) || isTooPlain(catalogue, old, type)
    ? ruleOf(catalogue, 'against-special')
    : 0);

/** Whether a part is one of those small ones of its family that one rather replaces by film. */
const isSmall = (catalogue: Catalogue, candidate: AnyPart): boolean => {
  const family = catalogue.families[typeRowOf(catalogue, candidate.type)?.family ?? ''];
  return 'capacitance' in candidate && isAtLeast(family?.film_up_to ?? 0, candidate.capacitance);
};

/** Whether the value of a part is another than the old one's, beyond a step of preferred values. */
const isFar = (
  catalogue: Catalogue,
  { original: { capacitance } }: OldInPlace,
  candidate: AnyPart,
): boolean => {
  if (capacitance === undefined || !('capacitance' in candidate)) return false;
  const ratio =
    candidate.capacitance / (typeof capacitance === 'number' ? capacitance : capacitance.typ);
  return Math.max(ratio, 1 / ratio) > ruleOf(catalogue, 'another-value') * (1 + FLOAT_ERROR);
};

/** Whether the old part will have been a chip as well, since none of its type has leads in such a value. */
const wasChip = (catalogue: Catalogue, { original }: OldInPlace, candidate: AnyPart): boolean =>
  candidate.type === original.type &&
  'capacitance' in candidate &&
  !catalogue.offers.some(
    ({ type, style, c_min, c_max }) =>
      type === original.type &&
      !isChip(catalogue, style) &&
      isAtLeast(candidate.capacitance, c_min) &&
      isAtLeast(c_max, candidate.capacitance),
  );

/**
 * How far a stand-in is from what one has in the drawer: a sentence names single parts before pairs,
 * and stocked types with leads of the old part's family before others of the same verdict, save
 * for electrolytics as small as film, and for what has another value than the old part.
 */
export const strangeness = (
  catalogue: Catalogue,
  old: OldInPlace,
  {
    candidate,
    buy,
  }: Pick<Assessment<AnyPart>, 'candidate'> & { buy?: { style: string } | undefined },
): number => {
  const ofType = strangenessOfType(catalogue, old, candidate.type);
  const rare = ruleOf(catalogue, 'against-rare');
  const onPads = needsPads(catalogue, { candidate, buy }) && !wasChip(catalogue, old, candidate);
  const isSeldom = buy !== undefined && catalogue.seldomStyles.includes(buy.style);
  const counted = (counts: boolean, rule: RuleOfThumb): number =>
    counts ? ruleOf(catalogue, rule) : 0;
  return (
    ofType +
    counted(madeOf(candidate) !== undefined, 'against-pair') +
    counted(onPads && ofType < rare, 'against-rare') +
    counted(isSmall(catalogue, candidate), 'against-small') +
    counted(isFar(catalogue, old, candidate), 'against-far') +
    counted(isSeldom, 'against-less-common')
  );
};

/** Leans towards what the answer of a substitution page names first, from an old part in its place. */
export const leaningFrom = (catalogue: Catalogue, old: OldInPlace): Leaning => ({
  ofType: (other) => strangenessOfType(catalogue, old, other),
  ofPart: (candidate, style) => strangeness(catalogue, old, { candidate, buy: { style } }),
});

/**
 * Stand-ins with that first which the answer names, the least strange of the best verdict, so that the
 * list begins with what the page advises; the others keep their ranking.
 */
export const answeredFirst = <
  One extends Pick<Assessment<AnyPart>, 'candidate' | 'verdict' | 'buy'>,
>(
  catalogue: Catalogue,
  old: OldInPlace,
  assessments: readonly One[],
): One[] => {
  const [answered] = assessments
    .filter(({ verdict }) => verdict === assessments[0]?.verdict && verdict !== 'keep-out')
    .toSorted((a, b) => strangeness(catalogue, old, a) - strangeness(catalogue, old, b));
  return answered === undefined
    ? [...assessments]
    : [answered, ...assessments.filter((one) => one !== answered)];
};
