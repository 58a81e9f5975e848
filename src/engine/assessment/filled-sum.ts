import { peakOfSine } from '../equations/sine.ts';
import type { SumInputRow } from '../../schemas/sums.ts';
import { alternatingRating } from '../findings/alternating.ts';
import { COMPARED_RISE } from '../equations/ripple.ts';
import { heatFor, heatingOf, thermalOf, type Heating } from '../findings/heating.ts';
import { nearestLoss } from '../findings/loss.ts';
import { rangeOf, type Circumstances } from '../findings/model.ts';
import { resistanceOf } from '../findings/series-resistance.ts';
import { serviceCapacitance } from '../findings/service-capacitance.ts';
import { mapRising, add, exactly, type Range } from '../quantities/range.ts';
import { TABLE_FREQUENCY } from '../sizes/esr-of.ts';
import { pulseRatingOf } from '../sizes/pulse-of.ts';
import { listedRipple } from '../sizes/ripple-of.ts';
import type { Assessment } from './assess.ts';
import type { Finding } from './finding.ts';
import type { Part } from './parts.ts';
import { fillSum, isOfKind, type FilledSum, type KindTakes } from './sum-fields.ts';
import { writtenRange } from './written-range.ts';

/** The mark with its tolerance, F. */
const marked = ({ capacitance, tolerance }: Part): Range => ({
  min: capacitance * (1 - tolerance.minus),
  typ: capacitance,
  max: capacitance * (1 + tolerance.plus),
});

const frequencyOf = ({ conditions }: Circumstances): number =>
  conditions['f-work']?.typ ?? TABLE_FREQUENCY;

const heatingKnown = (part: Part, circumstances: Circumstances): Heating | undefined => {
  if (circumstances.conditions['ripple-current'] === undefined) return undefined;
  const heating = heatingOf(part, circumstances);
  return Array.isArray(heating) ? undefined : heating;
};

const warmingOf = ({ conditions }: Circumstances): Range | undefined => {
  const [cold, warm] = [conditions['t-min'], conditions['t-max']];
  return cold === undefined || warm === undefined ? undefined : exactly(warm.typ - cold.typ);
};

/** A field to fill, for a finding about a part. */
interface Ask {
  of: readonly string[];
  part: Part;
  finding: Finding;
  circumstances: Circumstances;
}

/** A range and the unit that it is written in. */
type Filling = [Range | undefined, string];

const coreRise = ({ part, circumstances }: Ask): Range | undefined => {
  const thermal = thermalOf(part, circumstances);
  return Array.isArray(thermal) ? undefined : exactly(thermal.core);
};

/** Heat that warms the body by ten kelvin; nothing where the sheet of the part bounds what it warms. */
const tenKelvin = ({ part, circumstances }: Ask): Range | undefined =>
  heatingKnown(part, circumstances)?.listing === undefined
    ? heatFor(part, circumstances, COMPARED_RISE)
    : undefined;

const ratingListed = (
  { part, circumstances }: Ask,
  key: 'current' | 'frequency' | 'temperature',
): Range | undefined => {
  const ripple = listedRipple(circumstances.catalogue, part, frequencyOf(circumstances));
  return ripple === undefined ? undefined : exactly(ripple[key]);
};

const conditionAsked = ({ of: [name = ''], circumstances }: Ask): Range | undefined =>
  circumstances.conditions[name];

const highestAsked = (ask: Ask): Range | undefined => {
  const condition = conditionAsked(ask);
  return condition && exactly(condition.max);
};

const peakAsked = (ask: Ask): Range | undefined => {
  const rms = conditionAsked(ask);
  return rms && mapRising(rms, (volt) => peakOfSine(volt));
};

const conditionUnit = ({ of: [name = ''], circumstances: { catalogue } }: Ask): string =>
  catalogue.conditionDefinitions[name]?.unit ?? '';

const propertyAsked = ({ of: [name = ''], part, circumstances }: Ask): Filling => [
  rangeOf(circumstances, part, name),
  circumstances.catalogue.properties[name]?.unit ?? '',
];

const figureAsked = ({ finding, circumstances: { catalogue } }: Ask): Filling => [
  finding.standIn,
  catalogue.findings[finding.finding]?.unit ?? '',
];

const resistanceAsked = ({ part, circumstances }: Ask, hertz: number): Range | undefined =>
  resistanceOf(part, circumstances, hertz)?.range;

/** A resistance of the position with that of the part at a frequency (Hz), as far as it is known. */
const withResistance = (ask: Ask, hertz: number): Filling => {
  const [outer, own] = [conditionAsked(ask), resistanceAsked(ask, hertz)];
  return [outer && own ? add(outer, own) : outer, 'ohm'];
};

const oldOf = ({ circumstances: { original } }: Ask): Part => original;

/** How each number is come by. */
const fillings: Readonly<
  Record<
    Exclude<
      SumInputRow['takes'],
      | 'type'
      | 'ripple-type'
      | 'reformed-type'
      | 'property-if-known'
      | 'words'
      | 'nothing'
      | KindTakes
    >,
    (ask: Ask) => Filling
  >
> = {
  capacitance: ({ part }) => [marked(part), 'F'],
  'rated-voltage': ({ part }) => [exactly(part.ratedVoltage), 'V'],
  'old-capacitance': (ask) => [exactly(oldOf(ask).capacitance), 'F'],
  'old-rated-voltage': (ask) => [exactly(oldOf(ask).ratedVoltage), 'V'],
  'series-resistance': (ask) => [resistanceAsked(ask, frequencyOf(ask.circumstances)), 'ohm'],
  'surge-resistance': (ask) => [resistanceAsked(ask, TABLE_FREQUENCY), 'ohm'],
  'with-own-resistance': (ask) => withResistance(ask, frequencyOf(ask.circumstances)),
  'with-surge-resistance': (ask) => withResistance(ask, TABLE_FREQUENCY),
  'service-capacitance': ({ part, circumstances }) => [
    serviceCapacitance(part, circumstances).capacitance,
    'F',
  ],
  loss: ({ part, circumstances }) => [
    nearestLoss(part, circumstances, frequencyOf(circumstances))?.range,
    'fraction',
  ],
  'heat-for-ten-kelvin': (ask) => [tenKelvin(ask), 'W'],
  'core-rise': (ask) => [coreRise(ask), 'x'],
  'alternating-rating': ({ part, circumstances }) => [alternatingRating(part, circumstances), 'V'],
  'pulse-rating': ({ part, circumstances }) => [
    pulseRatingOf(circumstances.catalogue, part)?.range,
    'V/s',
  ],
  'own-heat': ({ part, circumstances }) => [heatingKnown(part, circumstances)?.rise, 'K'],
  'ripple-rating': (ask) => [ratingListed(ask, 'current'), 'A'],
  'ripple-rating-frequency': (ask) => [ratingListed(ask, 'frequency'), 'Hz'],
  'ripple-rating-temperature': (ask) => [ratingListed(ask, 'temperature'), 'degC'],
  warming: ({ circumstances }) => [warmingOf(circumstances), 'K'],
  figure: figureAsked,
  condition: (ask) => [conditionAsked(ask), conditionUnit(ask)],
  highest: (ask) => [highestAsked(ask), conditionUnit(ask)],
  peak: (ask) => [peakAsked(ask), 'V'],
  property: propertyAsked,
};

/** Whether a type has a property, and not none of it. */
const hasSome = ({ part, circumstances }: Ask, property: string): boolean => {
  const range = rangeOf(circumstances, part, property);
  return range !== undefined && (range.min !== 0 || range.max !== 0);
};

const rippleType = ({ part: { type }, circumstances: { catalogue } }: Ask): string | undefined =>
  catalogue.rippleByFrequency.some((row) => row.type === type) ? type : undefined;

const reformedType = ({ part: { type }, circumstances: { catalogue } }: Ask): string | undefined =>
  catalogue.reforming.some((row) => row.types.includes(type)) ? type : undefined;

/** What one field is filled with; nothing where that is not known. */
const fill = (takes: SumInputRow['takes'], ask: Ask): string | undefined => {
  const { catalogue } = ask.circumstances;
  if (takes === 'words') return ask.of[0];
  if (takes === 'nothing') return '';
  if (takes === 'type')
    return ask.of.every((property) => hasSome(ask, property)) ? ask.part.type : undefined;
  if (takes === 'ripple-type') return rippleType(ask);
  if (takes === 'reformed-type') return reformedType(ask);
  if (takes === 'property-if-known') return writtenRange(catalogue, ...propertyAsked(ask)) ?? '';
  if (isOfKind(takes)) return undefined;
  const [range, unit] = fillings[takes](ask);
  return writtenRange(catalogue, range, unit);
};

/**
 * The bench sum that works out the same as a finding, with the numbers of the part and of its
 * circuit. Nothing where there is none, where one of its numbers is not known, or where the part is
 * made of two, whose finding goes by each of them.
 */
export const filledSum = (
  finding: Finding,
  { candidate, buy }: Pick<Assessment, 'candidate' | 'buy'>,
  circumstances: Circumstances,
): FilledSum | undefined => {
  if (candidate.made !== undefined) return undefined;
  // The finding went by the body and the pulse rating of the style on offer.
  const part = buy === undefined ? candidate : { ...candidate, style: buy.style };
  const { sumInputs, findings } = circumstances.catalogue;
  return fillSum(sumInputs, findings[finding.finding]?.sum, finding, ({ takes, of }) =>
    fill(takes, { of, part, finding, circumstances }),
  );
};
