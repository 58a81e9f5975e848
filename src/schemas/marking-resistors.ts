import { z } from 'zod';
import {
  count,
  id,
  number,
  optionalNumber,
  optionalText,
  positive,
  provenance,
  text,
} from './cells.ts';
import { context, met, use } from './marking-context.ts';

/** A way of writing a resistance in figures alone. */
export const resistorFormRow = z.strictObject({
  id,
  shape: z
    .enum(['multiplier', 'plain', 'decimal', 'link'])
    .describe(
      'multiplier: the last figure counts zeros; plain: as written; decimal: with a point; link: noughts alone',
    ),
  figures_min: positive.describe('fewest figures, counting all of them'),
  figures_max: positive.describe('most figures'),
  value_min: number.describe('smallest value that is written so, ohm'),
  value_max: number.describe('largest value that is written so, ohm'),
  percent_min: optionalNumber.describe(
    'tightest usual tolerance of parts that are marked so, per cent',
  ),
  percent_max: optionalNumber.describe(
    'widest usual tolerance of parts that are marked so, per cent',
  ),
  underlined_percent: optionalNumber.describe(
    'tolerance that a line under the figures stands for, per cent each way',
  ),
  example: text,
  means: text.describe('what the example means'),
  settle: optionalText.describe('how to tell it from its rivals'),
  use,
  ...context,
  ...provenance,
});

/** A letter that says how far a resistor may be off its value. */
export const resistorToleranceRow = z.strictObject({
  letter: text,
  script: z.enum(['latin', 'cyrillic']),
  percent: positive.describe('per cent each way'),
  met,
  use,
  ...context,
  ...provenance,
});

/** A letter for the temperature coefficient of a resistor. */
export const resistorTemperatureLetterRow = z.strictObject({
  letter: text,
  ppm: positive.describe('ppm/K each way'),
  place: z
    .enum(['behind-tolerance', 'in-style', 'word'])
    .describe('behind the tolerance letter, the letter of a style such as RN55C, or by itself'),
  use,
  ...context,
  ...provenance,
});

/** Two figures that stand for the three of a value, before or behind the letter of small chips. */
export const chipResistorCodeRow = z.strictObject({
  code: z.string().regex(/^\d\d$/, 'expected two figures'),
  tolerance_percent: positive.describe('per cent each way'),
  significand: count.describe('the three figures of the value'),
  ...provenance,
});

/** A letter that multiplies the three figures of a small chip. */
export const chipResistorMultiplierRow = z.strictObject({
  letter: z.string().regex(/^[A-Z]$/, 'expected one capital letter'),
  factor: positive,
  settle: optionalText.describe('what to do where lists differ'),
  use,
  bodies: context.bodies,
  ...provenance,
});

/** A style of resistors: what is made so, and how much it bears. */
export const resistorStyleRow = z.strictObject({
  style: text,
  letters: count.describe('letters that follow before the value'),
  construction: text,
  watts: optionalNumber.describe('rated power, W'),
  volts_max: optionalNumber.describe('highest working voltage, V'),
  use,
  bodies: context.bodies,
  origins: context.origins,
  ...provenance,
});

/** A letter for how many of a lot may fail. */
export const failureRateRow = z.strictObject({
  letter: text,
  percent_per_1000_h: positive,
  ...provenance,
});

/** A letter for the point of the value of a film chip of the American military. */
export const militaryChipLetterRow = z.strictObject({
  letter: text,
  factor: positive.describe('ohm, of the figures with the letter for their point'),
  percent: positive.describe('tolerance that it stands for as well, each way'),
  ...provenance,
});

/** A letter or word for how the resistance of a potentiometer follows its travel. */
export const taperRow = z.strictObject({
  letter: text.describe('letter or word as it is printed'),
  law: z.enum(['linear', 'logarithmic', 'reverse logarithmic', 'S-shaped']),
  half_min_percent: positive.describe('least share of the whole at half travel, per cent'),
  half_max_percent: positive.describe('greatest share of the whole at half travel, per cent'),
  settle: optionalText.describe('how to tell it from its rivals'),
  use,
  ...context,
  ...provenance,
});
