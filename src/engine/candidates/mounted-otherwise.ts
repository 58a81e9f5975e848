import type { BodyRow } from '../../schemas/sizes.ts';
import { isChip, isScrewed } from '../assessment/mounting.ts';
import type { Part } from '../assessment/parts.ts';
import type { Catalogue } from '../catalogue.ts';
import { ROUNDING } from '../quantities/within.ts';
import { tabulatedBody } from '../sizes/body-table.ts';
import { readTolerance } from './generate.ts';
import { madeValues } from './made-values.ts';
import { offersOf } from './offers.ts';

/** How a part is sold besides. */
export interface MountedOtherwise {
  style: string;
  /** V */
  ratedVoltage: number;
  /** The smallest listed body that takes it; nothing where none is listed. */
  body: BodyRow | undefined;
}

/**
 * How a part with its leads at one end is sold with one at each: the same type, value and
 * kind of voltage, rated for no less and no less close, the first such row of the market. Nothing for a
 * part that is mounted so itself, on the surface, or made of two.
 * @param part value in F, rating in V
 * @param sold its style and lead pitches, mm
 */
export const mountedOtherwise = (
  catalogue: Catalogue,
  part: Part,
  sold: { style: string; pitch: readonly number[] },
): MountedOtherwise | undefined => {
  if (part.made !== undefined || sold.pitch.length === 0) return undefined;
  const { type, capacitance, tolerance, ratedVoltage, voltageKind } = part;
  const [low, high] = [capacitance * (1 - ROUNDING), capacitance * (1 + ROUNDING)];
  for (const offer of offersOf(catalogue, type)) {
    const volts = offer.voltages.find((each) => each >= ratedVoltage);
    const isClose = offer.tolerances
      .map(readTolerance)
      .some(({ minus, plus }) => minus <= tolerance.minus && plus <= tolerance.plus);
    const hasLeads = !isChip(catalogue, offer.style) && !isScrewed(catalogue, offer.style);
    const isOther = hasLeads && offer.pitch_mm.length === 0 && offer.voltage_kind === voltageKind;
    const isInBand = offer.c_min <= high && offer.c_max >= low;
    if (volts === undefined || !isOther || !isClose || !isInBand) continue;
    if (madeValues(catalogue, offer.series, low, high).length === 0) continue;
    const wanted = { type, capacitance, ratedVoltage: volts, style: offer.style };
    const body = tabulatedBody(catalogue, wanted)?.row;
    return { style: offer.style, ratedVoltage: volts, body };
  }
  return undefined;
};
