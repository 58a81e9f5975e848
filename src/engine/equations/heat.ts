/** Heat (W) that a current (A, RMS) makes in a resistance (ohm): I^2*R. */
export const heatByCurrent = (current: number, resistance: number): number =>
  current ** 2 * resistance;

/** Current (A, RMS) that makes so much heat (W) in a resistance (ohm): sqrt(P/R). */
export const currentForHeat = (heat: number, resistance: number): number =>
  Math.sqrt(heat / resistance);

/** Heat (W) in a resistor (ohm) with a voltage (V, RMS) across it: V^2/R. */
export const dissipation = (voltage: number, resistor: number): number => voltage ** 2 / resistor;

/** Voltage (V, RMS) that makes so much heat (W) in a resistor (ohm): sqrt(P*R). */
export const voltageForHeat = (heat: number, resistor: number): number =>
  Math.sqrt(heat * resistor);
