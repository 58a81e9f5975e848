import { loadCatalogue } from '../../../src/catalogue/index.ts';
import type { KindCircumstances, KindPart } from '../../../src/engine/kinds/part.ts';
import type { Range } from '../../../src/engine/quantities/range.ts';

/** A made-up type whose figures are round numbers, and a circuit that it sits in. */

const real = loadCatalogue();

export const range = (min: number, typ: number, max: number): Range => ({ min, typ, max });
const known = (min: number, typ = min, max = typ) => ({
  status: 'known' as const,
  range: range(min, typ, max),
  basis: 'published' as const,
  sources: [],
});

const figures = {
  'full-power-to': known(70),
  'no-power-from': known(170),
  'voltage-limit': known(200, 250, 300),
  'surge-weak': known(0, 0.5, 1),
  flame: known(0, 0.5, 1),
  'resistance-tc': known(-1e-4, 5e-5, 1e-4),
  'voltage-change': known(-2e-5, -1e-5, 0),
  'full-load-change': known(0.01, 0.02, 0.05),
  'noise-index': known(-20, -10, 0),
  'winding-inductance': known(1e-6, 2e-6, 4e-6),
  turns: known(10),
  'adjust-rheostat': known(0.001, 0.002, 0.003),
  'adjust-divider': known(0.0005, 0.001, 0.002),
  'end-share': known(0.01, 0.02, 0.03),
  'end-ohm': known(1, 2, 3),
  'ratio-tc': known(-1e-5, 5e-6, 1e-5),
  'setting-stability': known(0.001, 0.002, 0.01),
  'contact-share': known(0.01, 0.02, 0.03),
  'contact-ohm': known(1, 2, 3),
  'rotation-life': known(1e4, 2e4, 5e4),
};

const [trimmerPlace] = Object.values(real.kindPositions).filter((row) => row.wiring === 'rheostat');
const [typeRow] = Object.values(real.kindTypes);
const [offer] = real.kindOffers;
const kind = real.kinds['resistor'];
if (!trimmerPlace || !typeRow || !offer || !kind) throw new Error('no rows to start from');

/** A position and an offer to change in single columns. */
export const place = trimmerPlace;
export const anOffer = offer;

export const made = {
  ...typeRow,
  id: 'made-up',
  market: 'common' as const,
  duties: ['flameproof'],
};
export const catalogue = {
  ...real,
  bands: {},
  knowledge: { 'made-up': figures },
  kindTypes: { 'made-up': made, old: { ...made, id: 'old', duties: [] } },
  kindOffers: [
    { ...offer, type: 'made-up', value_min: 10, value_max: 1e6, ratings: [0.25, 0.5] },
    { ...offer, type: 'old', value_min: 10, value_max: 1e6, ratings: [], pitch_mm: [5] },
  ].map((row, at) => ({ ...row, pitch_mm: at === 0 ? [2.5, 5] : row.pitch_mm })),
};

export const CONDITIONS = {
  vdc: range(20, 30, 30),
  vac: range(0, 0, 40),
  't-min': range(0, 10, 10),
  't-max': range(40, 60, 120),
  'v-surge': range(100, 100, 100),
  charged: range(50e-6, 80e-6, 100e-6),
  'v-fault': range(50, 75, 100),
  sensitivity: range(0.1, 0.2, 0.5),
  frequency: range(20, 20, 20),
  'f-work': range(20e3, 20e3, 1e6),
  'old-setting': range(2000, 2000, 2000),
  'old-total': range(8000, 8000, 8000),
  'wiper-current': range(0, 0.001, 0.002),
  rotations: range(0, 1000, 2000),
  load: range(20e3, 20e3, 40e3),
  'other-leakage': range(0, 0, 1e-4),
};

export const circumstances = (changed: Partial<KindCircumstances> = {}): KindCircumstances => ({
  catalogue,
  kind,
  position: { ...trimmerPlace, wiring: 'rheostat', duties: [] },
  conditions: CONDITIONS,
  original: {
    type: 'old',
    value: 8000,
    unit: 'ohm',
    rating: 0.25,
    ratingUnit: 'W',
    tolerance: { minus: 0.2, plus: 0.2 },
  },
  ...changed,
});
export const divider = circumstances({
  position: { ...trimmerPlace, wiring: 'divider', duties: [] },
});

export const part: KindPart = {
  type: 'made-up',
  value: 10e3,
  unit: 'ohm',
  rating: 0.5,
  ratingUnit: 'W',
  tolerance: { minus: 0.1, plus: 0.2 },
};
