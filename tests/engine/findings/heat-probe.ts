import { span } from './by-hand.ts';
import { PROBE, type Spoiling } from './probe.ts';
import { resistanceRow } from './probe-rows.ts';
import { given } from '../assessment/setting.ts';
import type { BodyRow, CoreRiseRow, SeriesResistanceRow } from '../../../src/schemas/sizes.ts';

/** An invented part of 1000 µF 25 V that ripple warms, and what sheets say of it. */

export const from = (source: string, basis: 'published' | 'memory' = 'published') => ({
  source,
  locator: '',
  basis,
  note: '',
});

/**
 * A can of 10 × 20 mm. Its side and top are π × 1 × 2 + π / 4 = 7.069 cm²; it gives off
 * 2.3 mW/K × 7.069^0.8 = 10.995 mW/K.
 */
export const can: BodyRow = {
  type: PROBE,
  style: 'radial can',
  shape: 'can',
  c_min: 1e-3,
  c_max: 1e-3,
  voltage: 25,
  voltage_kind: 'dc',
  length_mm: 10,
  width_mm: 10,
  height_mm: 20,
  pitch_mm: [5],
  lead_mm: 0.6,
  ...from('sheet-of-bodies'),
};

/** Its core warms a quarter more than its surface. */
const core: CoreRiseRow = {
  types: [PROBE],
  diameter_mm: 10,
  ratio: 1.25,
  ...from('sheet-of-cores', 'memory'),
};

/** Half an ohm to 2 ohm at 100 Hz. */
export const resistance = resistanceRow({ v_min: 25, v_max: 25 });

export const tables: NonNullable<Spoiling['tables']> = {
  bodies: [can],
  coreRises: [core],
  seriesResistance: [resistance],
  rippleByFrequency: [],
  rippleByTemperature: [],
};
export const LISTED = ['sheet-of-resistances', 'sheet-of-bodies', 'sheet-of-cores'];
export const LISTED_BASES = ['published', 'memory'];

export const part: NonNullable<Spoiling['part']> = { capacitance: 1e-3, ratedVoltage: 25 };
export const at100Hz = given({ 'f-work': 100, 't-max': 55 });
export const ripple = { 'ripple-current': span(0.1, 0.2, 0.4) };

export const listed = (row: Partial<SeriesResistanceRow> = {}): SeriesResistanceRow => ({
  ...resistance,
  ripple_a: 0.5,
  ripple_c: 85,
  ...row,
});

export const byFrequency = [
  { frequency_hz: 100, factor: 1 },
  { frequency_hz: 1000, factor: 1.4 },
].map((row) => ({
  type: PROBE,
  v_min: 10,
  v_max: 50,
  c_min: 1e-6,
  c_max: 1,
  ...row,
  ...from('sheet-of-frequencies'),
}));

export const byTemperature = [
  { temperature_c: 65, factor: 1.5 },
  { temperature_c: 85, factor: 1 },
].map((row) => ({ type: PROBE, ...row, ...from('sheet-of-temperatures', 'memory') }));
