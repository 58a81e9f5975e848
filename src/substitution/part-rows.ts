import { formatValue, type Assessment, type Habit, type Part } from '../engine/index.ts';
import { partPhrase, pitchPhrase, sizePhrase } from './phrases.ts';
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

/** What one would order of two parts, beside the old part: value, rating, size and pitch. */
export const partRows = (old: Part, a: Assessment, b: Assessment, habit?: Habit): PartRow[] => {
  const ofParts = (name: string, print: (part: Part) => string): PartRow => ({
    name,
    old: print(old),
    a: print(a.candidate),
    b: print(b.candidate),
  });
  const ofOffers = (name: string, print: (assessment: Assessment) => string): PartRow => ({
    name,
    old: '',
    a: print(a),
    b: print(b),
  });
  const twoParts = [a, b].some(({ candidate }) => candidate.made !== undefined);
  return [
    ofParts('Value', (part) => formatValue(part.capacitance, 'F', habit)),
    ofParts('Tolerance', (part) => printTolerance(part.tolerance)),
    ofParts('Rated voltage', (part) => volts(part, habit)),
    ofOffers('Size', sizePhrase),
    ofOffers('Lead pitch', pitchPhrase),
    ...(twoParts ? [ofOffers('Made up of', (one) => makeUp(one, habit))] : []),
  ];
};
