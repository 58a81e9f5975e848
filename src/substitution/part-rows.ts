import {
  formatValue,
  type Assessment,
  type Habit,
  type KindAssessment,
  type KindPart,
  type Part,
} from '../engine/index.ts';
import type { KindRow } from '../schemas/kinds.ts';
import { partPhrase, pitchPhrase, ratingPhrase, sizePhrase } from './phrases.ts';
import { printTolerance } from './typed-numbers.ts';

/** What is said of the old part and of two others, before anything is judged. */
export interface PartRow {
  name: string;
  old: string;
  a: string;
  b: string;
}

const volts = ({ ratedVoltage, voltageKind }: Part, habit?: Habit): string =>
  `${formatValue(ratedVoltage, 'V', habit)}${voltageKind === 'ac' ? ' AC' : ''}`;

const makeUp = ({ candidate }: Assessment, habit?: Habit): string =>
  candidate.made === undefined ? 'one part' : partPhrase(candidate, habit);

/** Rows of an old part and two others: of the parts themselves, and of how the two are sold. */
const rowsOf = <P extends Part | KindPart>(old: P, a: Assessment<P>, b: Assessment<P>) => ({
  ofParts: (name: string, print: (part: P) => string): PartRow => ({
    name,
    old: print(old),
    a: print(a.candidate),
    b: print(b.candidate),
  }),
  ofOffers: (name: string, print: (assessment: Assessment<P>) => string): PartRow => ({
    name,
    old: '',
    a: print(a),
    b: print(b),
  }),
});

/** What one would order of two capacitors, beside the old one: value, rating, size and pitch. */
export const partRows = (old: Part, a: Assessment, b: Assessment, habit?: Habit): PartRow[] => {
  const { ofParts, ofOffers } = rowsOf(old, a, b);
  const twoParts = [a, b].some(({ candidate }) => candidate.made !== undefined);
  return [
    ofParts('Value', (part) => formatValue(part.capacitance, 'F', habit)),
    ofParts('Tolerance', (part) => printTolerance(part.tolerance, habit)),
    ofParts('Rated voltage', (part) => volts(part, habit)),
    ofOffers('Size', (one) => sizePhrase(one, habit)),
    ofOffers('Lead pitch', (one) => pitchPhrase(one, habit)),
    ...(twoParts ? [ofOffers('Made up of', (one) => makeUp(one, habit))] : []),
  ];
};

/** The same of two parts of another kind, by what that kind is ordered by. */
export const kindPartRows = (
  kind: KindRow,
  old: KindPart,
  a: KindAssessment,
  b: KindAssessment,
  habit?: Habit,
): PartRow[] => {
  const { ofParts, ofOffers } = rowsOf(old, a, b);
  return [
    ofParts(kind.value_name, (part) =>
      part.value === undefined || part.unit === undefined
        ? ''
        : formatValue(part.value, part.unit, habit),
    ),
    ofParts('Tolerance', ({ tolerance }) =>
      tolerance === undefined ? '' : printTolerance(tolerance, habit),
    ),
    ofParts(kind.rating_name, (part) =>
      part.rating === undefined || part.ratingUnit === undefined
        ? ''
        : ratingPhrase(part.rating, part.ratingUnit, habit),
    ),
    ofOffers('Size', (one) => sizePhrase(one, habit)),
    ofOffers('Lead pitch', (one) => pitchPhrase(one, habit)),
  ].filter(({ name, old: said, a: one, b: other }) => name !== '' && said + one + other !== '');
};
