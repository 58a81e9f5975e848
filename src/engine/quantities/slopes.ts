import type { Scale } from './unit.ts';

const VOLTS = { V: 0, volt: 0, volts: 0, uV: -6, mV: -3, kV: 3 };
const TIMES = { s: 0, sec: 0, second: 0, ms: -3, us: -6, usec: -6, microsecond: -6, ns: -9 };

/** Rates of voltage change as people write them, in V/s: `V/us`, `mV/s`, `volts/second`. */
export const SLOPES: Readonly<Record<string, Scale>> = Object.fromEntries(
  Object.entries(VOLTS).flatMap(([volts, up]) =>
    Object.entries(TIMES).map(([time, down]) => [`${volts}/${time}`, { power: up - down }]),
  ),
);
