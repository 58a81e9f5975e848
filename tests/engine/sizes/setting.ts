import type { BodyRow, PulseRatingRow, SeriesResistanceRow } from '../../../src/schemas/sizes.ts';
import type { Sizes } from '../../../src/catalogue/slices/slice-sizes.ts';
import type { Catalogue } from '../../../src/engine/catalogue.ts';
import { catalogue } from '../assessment/setting.ts';

const provenance = { source: 'trade', locator: '', basis: 'common-practice', note: '' } as const;

/** An invented body: a can unless said otherwise. */
export const madeBody = (row: Partial<BodyRow>): BodyRow => ({
  type: 'glass',
  style: 'axial',
  shape: 'can',
  c_min: 1e-6,
  c_max: 1e-6,
  voltage: 100,
  voltage_kind: 'dc',
  length_mm: 10,
  width_mm: 10,
  height_mm: 10,
  pitch_mm: [5],
  lead_mm: 0.6,
  ...provenance,
  ...row,
});

export const madeResistance = (row: Partial<SeriesResistanceRow>): SeriesResistanceRow => ({
  type: 'glass',
  capacitance: 1e-6,
  v_min: 50,
  v_max: 100,
  frequency_hz: 1e5,
  esr_min: 0.5,
  esr_typ: 1,
  esr_max: 2,
  ripple_a: undefined,
  ripple_c: undefined,
  ...provenance,
  ...row,
});

export const madeEdge = (row: Partial<PulseRatingRow>): PulseRatingRow => ({
  type: 'glass',
  style: 'axial',
  c_min: 1e-9,
  c_max: 2.2e-9,
  voltage: 100,
  voltage_kind: 'dc',
  dvdt: 100,
  ...provenance,
  ...row,
});

/** The catalogue with invented tables of sizes. */
export const sized = (tables: Partial<Sizes>): Catalogue => ({
  ...catalogue,
  bodies: [],
  seriesResistance: [],
  rippleByFrequency: [],
  rippleByTemperature: [],
  coreRises: [],
  pulseRatings: [],
  ...tables,
});
