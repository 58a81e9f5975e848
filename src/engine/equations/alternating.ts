import { exactly } from '../quantities/range.ts';
import { heatByCurrent } from './heat.ts';
import { lossResistance } from './loss.ts';
import { reactiveCurrent } from './mains.ts';

/** A capacitance (F) with the share of its loss at a frequency (Hz). */
export interface Lossy {
  frequency: number;
  capacitance: number;
  loss: number;
}

/** Heat (W) that the loss makes of an AC voltage (V): I^2*R, which is 2*pi*f*C*D*U^2. */
export const lossHeat = (voltage: number, { frequency, capacitance, loss }: Lossy): number =>
  heatByCurrent(
    reactiveCurrent(frequency, exactly(capacitance), voltage).typ,
    lossResistance(loss, frequency, capacitance),
  );

/** AC voltage (V) whose loss makes so much heat (W). */
export const voltageByHeat = (heat: number, part: Lossy): number =>
  Math.sqrt(heat / lossHeat(1, part));

/** AC voltage (V) whose steepest place is as steep as an edge (V/s): s/(2*pi*f*sqrt(2)). */
export const voltageByEdge = (edge: number, frequency: number): number =>
  edge / (2 * Math.PI * frequency * Math.SQRT2);
