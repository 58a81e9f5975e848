import { z } from 'zod';
import {
  id,
  idList,
  number,
  numberList,
  optionalNumber,
  optionalPositive,
  positive,
  provenance,
  text,
} from './cells.ts';

/** Voltage that a rating is for, as parts are marked. */
const voltageKind = z.enum(['dc', 'ac']);

/** The body that holds a span of values at one rated voltage. */
export const bodyRow = z.strictObject({
  type: id,
  style: text.describe('as in market.csv'),
  shape: z
    .enum(['can', 'tube', 'box', 'disc', 'drop', 'chip'])
    .describe(
      'can: round, upright; tube: round, lying, with a lead at each end; box; disc: upright; drop: dipped, its leads spread or straight; chip: without leads',
    ),
  c_min: positive.describe('smallest value made in this body, F'),
  c_max: positive.describe('largest value made in it, F'),
  voltage: positive.describe('rated, V'),
  voltage_kind: voltageKind,
  length_mm: positive.describe('longer side on the board; the diameter of a can or disc'),
  width_mm: positive.describe(
    'shorter side on the board: thickness of a box or disc, diameter of a tube',
  ),
  height_mm: positive.describe('above the board, without the leads'),
  pitch_mm: numberList.describe('between the leads as they come; none for tubes and chips'),
  lead_mm: optionalPositive.describe('wire or pin across its widest, where it is given'),
  ...provenance,
});
export type BodyRow = z.output<typeof bodyRow>;

/** Series resistance of one value in a band of rated voltages at one frequency. */
export const seriesResistanceRow = z.strictObject({
  type: id,
  capacitance: positive.describe('F'),
  v_min: positive.describe('lowest rated voltage of the band, V'),
  v_max: positive.describe('highest rated voltage of the band, V'),
  frequency_hz: positive.describe('Hz'),
  esr_min: optionalPositive.describe(
    'of a good new part, ohm; nothing where only a typical is said',
  ),
  esr_typ: positive.describe('of a usual new part, ohm'),
  esr_max: positive.describe('limit of the sheet, or what follows from its limits, ohm'),
  ripple_a: optionalPositive.describe('ripple current at this frequency, RMS, A'),
  ripple_c: optionalNumber.describe('ambient temperature that it is for, degC'),
  ...provenance,
});
export type SeriesResistanceRow = z.output<typeof seriesResistanceRow>;

/** How ripple current may grow or must fall with frequency, for a band of voltages and values. */
export const rippleFrequencyRow = z.strictObject({
  type: id,
  v_min: positive.describe('lowest rated voltage of the band, V'),
  v_max: positive.describe('highest rated voltage of the band, V'),
  c_min: positive.describe('smallest value of the band, F'),
  c_max: positive.describe('largest value of the band, itself not included, F'),
  frequency_hz: positive.describe('Hz'),
  factor: positive.describe(
    'ripple current at this frequency; only its ratio to another of the band counts',
  ),
  ...provenance,
});
export type RippleFrequencyRow = z.output<typeof rippleFrequencyRow>;

/** How ripple current may grow or must fall with the temperature round a part. */
export const rippleTemperatureRow = z.strictObject({
  type: id,
  temperature_c: number.describe('ambient, degC; below the lowest its factor holds'),
  factor: positive.describe(
    'ripple current at this temperature; only its ratio to another of the type counts',
  ),
  ...provenance,
});
export type RippleTemperatureRow = z.output<typeof rippleTemperatureRow>;

/** How much more the core of a can warms than its surface. */
export const coreRiseRow = z.strictObject({
  types: idList.describe('types that it is for'),
  diameter_mm: positive.describe('of the widest can that it is for'),
  ratio: positive.describe('rise of the core over that of the surface'),
  ...provenance,
});
export type CoreRiseRow = z.output<typeof coreRiseRow>;

/** Steepest repeated edge that a span of values at one rated voltage withstands. */
export const pulseRatingRow = z.strictObject({
  type: id,
  style: text.describe('as in market.csv'),
  c_min: positive.describe('F'),
  c_max: positive.describe('F'),
  voltage: positive.describe('rated, V'),
  voltage_kind: voltageKind,
  dvdt: positive.describe('V/us at rated voltage'),
  ...provenance,
});
export type PulseRatingRow = z.output<typeof pulseRatingRow>;
