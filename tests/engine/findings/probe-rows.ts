import type { SeriesResistanceRow } from '../../../src/schemas/sizes.ts';
import { PROBE, type Spoiling } from './probe.ts';

/** What several tables of cases know of the probe. */

/** 1000 µF, by its tolerance 800 to 1250 µF. */
export const wideCan: NonNullable<Spoiling['part']> = {
  capacitance: 1e-3,
  ratedVoltage: 20,
  tolerance: { minus: 0.2, plus: 0.25 },
};

/** Half an ohm to 2 ohm at 100 Hz for 1000 µF 20 V, or as a case says. */
export const resistanceRow = (more: Partial<SeriesResistanceRow> = {}): SeriesResistanceRow => ({
  type: PROBE,
  capacitance: 1e-3,
  v_min: 20,
  v_max: 20,
  frequency_hz: 100,
  esr_min: 0.5,
  esr_typ: 1,
  esr_max: 2,
  ripple_a: undefined,
  ripple_c: undefined,
  source: 'sheet-of-resistances',
  locator: '',
  basis: 'published',
  note: '',
  ...more,
});
