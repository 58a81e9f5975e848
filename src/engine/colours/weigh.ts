import type { ColourTables } from '../../schemas/marking-colours.ts';
import { isBetween } from '../quantities/within.ts';
import type { Candidate } from './candidate.ts';
import { standingOf } from './preferred.ts';
import type { ApartHint, ColourRequest } from './request.ts';
import type { Taking } from './take.ts';

type WeightId = ColourTables['colourWeights'][number]['id'];

/** How readily each thing is believed, by its id in `markings/colour-weights.csv`. */
export type ColourWeights = Readonly<Record<WeightId, number>>;

/** The weights of the tables; each has its row, which a check of the data holds them to. */
export const weightsOf = ({ colourWeights }: Pick<ColourTables, 'colourWeights'>): ColourWeights =>
  Object.fromEntries(colourWeights.map(({ id, value }) => [id, value])) as ColourWeights;

/** Whether the value is one that is met on such parts. */
export const inRange = ({ scheme, taking }: Pick<Candidate, 'scheme' | 'taking'>): boolean => {
  const { value } = taking;
  const { value_min: least, value_max: most } = scheme.row;
  return value === undefined || isBetween(value, least ?? 0, most ?? Infinity);
};

/** Whether the first figure is a nought before others. */
export const leadingNought = ({ taking }: Pick<Candidate, 'taking'>): boolean =>
  taking.figures?.startsWith('0') === true;

const apartWeight = (
  weights: ColourWeights,
  { scheme, turned }: Pick<Candidate, 'scheme' | 'turned'>,
  hint: ApartHint | undefined,
): number => {
  const { apart } = scheme.row;
  if (hint === undefined || apart === '') return turned ? weights.turned : 0;
  return weights[(apart === hint) !== turned ? 'apart-agrees' : 'apart-differs'];
};

/** Whether every colour that is known has a meaning in its place. */
export const allUnderstood = ({ taking }: Pick<Candidate, 'taking'>): boolean =>
  taking.taken.every(({ colours, meanings }) => colours === undefined || meanings.length > 0);

const meaningsWeight = (weights: ColourWeights, { taken }: Taking): number =>
  taken.reduce((sum, { colours, meanings: [usual] }) => {
    if (usual !== undefined) return sum + weights[`meaning-${usual.use}`];
    return colours === undefined ? sum : sum + weights['no-meaning'];
  }, 0);

/** How well a candidate holds together with what is known. */
export const scoreOf = (
  weights: ColourWeights,
  candidate: Omit<Candidate, 'score'>,
  { apart }: Pick<ColourRequest, 'apart'>,
): number =>
  weights[`scheme-${candidate.scheme.row.use}`] +
  apartWeight(weights, candidate, apart) +
  (candidate.preference === undefined ? 0 : weights[standingOf(candidate.preference)]) +
  (leadingNought(candidate) ? weights['leading-nought'] : 0) +
  (inRange(candidate) ? 0 : weights['outside-range']) +
  meaningsWeight(weights, candidate.taking);
