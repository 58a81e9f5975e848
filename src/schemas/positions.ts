import { z } from 'zod';
import {
  id,
  idList,
  list,
  number,
  optionalId,
  optionalNumber,
  optionalText,
  positive,
  provenance,
  text,
  yesNo,
} from './cells.ts';

/** Where in a circuit a part sits. */
export const positionRow = z.strictObject({
  id,
  name: text,
  group: z.enum([
    'hold and integrate',
    'timing',
    'filter and tuning',
    'audio coupling',
    'bypass and decoupling',
    'supply',
    'mains',
    'power and pulse',
    'other',
  ]),
  also_called: list.describe('other words that a technician may type'),
  summary: text.describe('what the capacitor does here, one sentence'),
  decisive: text.describe('what decides the choice, and why'),
  larger: text.describe('what a larger value does'),
  smaller: text.describe('what a smaller value does'),
  value_policy: z.enum(['same', 'at-least', 'window']),
  value_low: positive.describe('smallest value allowed, as a share of the old one'),
  value_high: positive.describe('largest value allowed, as a multiple of the old one'),
  voltage_sense: z
    .enum(['one sign', 'both signs', 'ac'])
    .describe('what the voltage across the part does'),
  safety: list.describe(
    'mains duty that a part must be approved for, any one of them: X1;X2, Y1;Y2, motor, start',
  ),
  chosen_for: optionalId.describe(
    'what a part is best made for here, as in types.csv: such a part comes before a plain one that fits as well',
  ),
  home: optionalId.describe(
    'family whose parts one reaches for here, whatever small part of another was there',
  ),
  reference_c: positive.describe('value that pages show, F'),
  roomy_c: optionalNumber.describe(
    'the same for an old part of a roomy family, such as an electrolytic, where that is usually larger',
  ),
  usual_c_min: positive.describe('F'),
  usual_c_max: positive.describe('F'),
  ...provenance,
});
export type PositionRow = z.output<typeof positionRow>;

/** A number of the circuit that a finding may need. */
export const conditionDefinitionRow = z.strictObject({
  id,
  name: text.describe('beside the input, such as "DC voltage across it"'),
  symbol: text.describe('in equations, such as V_DC'),
  unit: text.describe('unit in units.csv that people type when they give none'),
  lowest: number.describe('in the unit'),
  highest: number.describe('in the unit'),
  meaning: text,
  group: z
    .enum(['voltage', 'circuit', 'surroundings', 'place'])
    .describe(
      'where it stands in the form: what is across the part; what the circuit does; heat and time; the room on the board',
    ),
});
export type ConditionDefinitionRow = z.output<typeof conditionDefinitionRow>;

/** Ways in which the default of a condition follows from the old part, with what its numbers then are. */
const followings = {
  'rated-voltage':
    'typ is a share of the old rating, and max, in the definition unit, what stands there at least where that rating tells little but bears it',
  'marked-voltage':
    'typ is a share of the old rating as marked, however little ratings of its type tell elsewhere; max, in the definition unit, what a part bears at least whose mark nobody said',
  'direct-voltage':
    'typ is a multiple of the DC voltage, and where that is more than max, in V, min is a share of the old rating instead',
  corner:
    'typ is the corner frequency in Hz that the load would give with the old value, min that of an old part of a roomy family, max the largest load that circuits have there, ohm',
  value: 'typ is a product with the old value in SI',
  power:
    'of resistors, typ is the share of its rating that the voltage or the current would put into the old part, and max the most that it is taken for, in the definition unit',
  thermal:
    'of resistors, typ, in the definition unit, but no less than a rule of thumb times the thermal noise of the old value in the band of the position',
  charge:
    'typ is the time in s for which the charge in the old part at its rating would feed it, and max the most that it is taken for, in the definition unit',
  rating:
    'of devices, typ, or what the hard demand on it lets the old part bear, if that is less, or half of that, if it is more than max',
  needed:
    'of devices, typ, or what the old part itself needs of it by the demands of the use, if that is more',
  kept: 'typ is a share of the least that tolerance, temperature, age and bias leave of the old part',
  'series-resistance':
    'typ is a multiple of that of a new part of the old type at the working frequency, and max the most that it is taken for, in the definition unit',
  'least-resistance':
    'that of a new part of the old type at least, but no more than typ, in the definition unit',
  'worst-resistance':
    'that of a new part of the old type at worst, but no less than typ, in the definition unit',
  slope: 'typ is a multiple of the temperature coefficient of an old type that was chosen for it',
  reactive:
    'typ is a multiple of the current that the AC voltage drives through the old value at the working frequency',
  impedance:
    'what a new part of the old type has at worst at the working frequency, but no less than typ, in the definition unit',
  'body-pitch': 'typ, in the definition unit, but no less than the length of the old part',
  'body-height':
    'typ is a multiple of that side of the old part, and min the least, as a multiple of the condition room',
  'body-side':
    'typ is a multiple of that side of the old part, and min the least, as a multiple of the condition room',
  'body-lead':
    'min, typ and max, in the definition unit, but no less than the leads of the old part and their clearance',
} as const;

/** The default of one condition at one position; its presence makes the condition editable there. */
export const conditionRow = z.strictObject({
  position: id,
  condition: id,
  min: optionalNumber,
  typ: optionalNumber.describe(
    'in the definition unit; nothing where `follows` says how it is found',
  ),
  max: optionalNumber,
  follows: z
    .union([z.literal(''), z.enum(Object.keys(followings) as (keyof typeof followings)[])])
    .describe(
      Object.entries(followings)
        .map(([way, numbers]) => `${way}: ${numbers}`)
        .join('; '),
    ),
  ...provenance,
});
export type ConditionRow = z.output<typeof conditionRow>;

/** What a position asks of a stand-in. */
export const demandRow = z.strictObject({
  id: id.describe('unique, such as sample-hold-absorption'),
  position: id,
  finding: id.describe('id in findings.csv: how it is worked out'),
  weight: z.enum(['hard', 'strong', 'mild']),
  limit: optionalNumber.describe(
    'in the unit of the finding, or a multiple of the condition in limit_of',
  ),
  limit_high: optionalNumber.describe('upper end, for a finding that must lie in a window'),
  limit_of: optionalId.describe('condition that the limit is a multiple of'),
  why: text,
  ...provenance,
});
export type DemandRow = z.output<typeof demandRow>;

/** A thing that can be worked out about a part in a position. */
export const findingRow = z.strictObject({
  id,
  name: text,
  unit: text.describe('unit in units.csv that pages print'),
  better: z.enum(['low', 'high', 'window', 'same']),
  graded: yesNo.describe('no: a limit met is met, and being far inside it earns nothing'),
  properties: idList.describe('properties that it needs'),
  conditions: idList.describe('conditions that it needs'),
  told: idList.describe('conditions that only its working speaks of, at positions that have them'),
  equation: optionalText.describe('in plain text, with the symbols of the condition definitions'),
  meaning: text,
  sum: optionalId.describe('bench sum that works out the same, where there is one'),
  ...provenance,
});
export type FindingRow = z.output<typeof findingRow>;

/** From how far beyond a limit on, a demand of some weight earns which verdict. */
export const verdictRuleRow = z.strictObject({
  weight: z.enum(['hard', 'strong', 'mild']),
  end: z.enum(['unfavourable', 'typical']).describe('which end of the range is beyond the limit'),
  beyond: positive.describe('by at least this factor'),
  verdict: z.enum(['fits', 'fits-if', 'stopgap', 'keep-out']),
  meaning: text,
});
export type VerdictRuleRow = z.output<typeof verdictRuleRow>;

/** A type and a position that do not go together in practice. */
export const unlikelyPairRow = z.strictObject({
  type: id.describe('a type id'),
  position: id,
  why: text,
  ...provenance,
});
export type UnlikelyPairRow = z.output<typeof unlikelyPairRow>;

/** What an engineer wants to know of a position besides its demands. */
export const positionNoteRow = z.strictObject({
  position: id,
  kind: z
    .enum(['equation', 'limit', 'usual-choice', 'larger-value', 'symptom', 'trap'])
    .describe(
      'equation: how a number comes about; limit: a figure to hold against; usual-choice: what is fitted; larger-value: how far up; symptom: how a bad part shows; trap: what misleads',
    ),
  title: text,
  text: text.describe('in our own words'),
  equation: optionalText.describe('in plain text, for kind equation alone'),
  min: optionalNumber,
  typ: optionalNumber,
  max: optionalNumber,
  unit: optionalText.describe('unit in units.csv, where there is a figure'),
  ...provenance,
});
export type PositionNoteRow = z.output<typeof positionNoteRow>;
