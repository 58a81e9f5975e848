import type { SumInputRow } from '../../schemas/sums.ts';
import { fillSum, type FilledSum } from '../assessment/sum-fields.ts';
import { writtenRange } from '../assessment/written-range.ts';
import type { KindAssessment } from './assess.ts';
import type { Finding } from '../assessment/finding.ts';
import { rangeOf } from '../findings/model.ts';
import { exactly, scale, type Range } from '../quantities/range.ts';
import { rmsVoltage, spreadOf, valueOf } from './findings/of-part.ts';
import type { KindCircumstances, KindPart } from './part.ts';
import { presetFor, useOf } from './setting.ts';

/** A field to fill, for a finding about a part of some kind. */
interface Ask {
  of: readonly string[];
  part: KindPart;
  circumstances: KindCircumstances;
}

/** A range and the unit that it is written in. */
type Filling = [Range | undefined, string];

const MIDDLE = 0.5;

const propertyNamed = ({ part, circumstances }: Ask, name: string | undefined): Filling =>
  name === undefined
    ? [undefined, '']
    : [rangeOf(circumstances, part, name), circumstances.catalogue.properties[name]?.unit ?? ''];

const conditionAsked = ({ of: [name = ''], circumstances }: Ask): Filling => [
  circumstances.conditions[name],
  circumstances.catalogue.conditionDefinitions[name]?.unit ?? '',
];

const highestAsked = (ask: Ask): Filling => {
  const [range, unit] = conditionAsked(ask);
  return [range && exactly(range.max), unit];
};

/** How each number is come by; what is not here speaks of capacitors. */
const fillings: Readonly<Partial<Record<SumInputRow['takes'], (ask: Ask) => Filling>>> = {
  value: ({ part }) => [spreadOf(part), part.unit ?? ''],
  mark: ({ part }) => [exactly(valueOf(part)), part.unit ?? ''],
  'mid-travel': ({ part }) => [scale(exactly(valueOf(part)), MIDDLE), part.unit ?? ''],
  setting: ({ part, circumstances }) => [
    exactly(presetFor(valueOf(part), 1, circumstances).newRatio),
    '%',
  ],
  rating: ({ part: { rating, ratingUnit = '' } }) => [
    rating === undefined ? undefined : exactly(rating),
    ratingUnit,
  ],
  rms: ({ circumstances }) => [exactly(rmsVoltage(circumstances)), 'V'],
  condition: conditionAsked,
  highest: highestAsked,
  property: (ask) => propertyNamed(ask, ask.of[0]),
  'by-wiring': (ask) =>
    propertyNamed(ask, useOf(ask.circumstances) === 'divider' ? ask.of[1] : ask.of[0]),
};

const fill = (takes: SumInputRow['takes'], ask: Ask): string | undefined => {
  const { catalogue } = ask.circumstances;
  if (takes === 'words') return ask.of[0];
  if (takes === 'nothing') return '';
  if (takes === 'wiring') return useOf(ask.circumstances);
  if (takes === 'property-if-known')
    return writtenRange(catalogue, ...propertyNamed(ask, ask.of[0])) ?? '';
  const filling = fillings[takes]?.(ask);
  return filling && writtenRange(catalogue, ...filling);
};

/**
 * The bench sum that works out the same as a finding about such a part, with the numbers of the part
 * and of its circuit. Nothing where there is none or where one of its numbers is not known.
 */
export const filledKindSum = (
  finding: Finding,
  { candidate: part }: Pick<KindAssessment, 'candidate'>,
  circumstances: KindCircumstances,
): FilledSum | undefined => {
  const { sumInputs, findings } = circumstances.catalogue;
  return fillSum(sumInputs, findings[finding.finding]?.sum, finding, ({ takes, of }) =>
    fill(takes, { of, part, circumstances }),
  );
};
