import type { Part } from '../../../src/engine/assessment/parts.ts';
import type { Catalogue, GuidelineId, Knowledge } from '../../../src/engine/catalogue.ts';
import type { Circumstances } from '../../../src/engine/findings/model.ts';
import { exactly, hull, type Range } from '../../../src/engine/quantities/range.ts';
import type { PositionRow } from '../../../src/schemas/positions.ts';
import type { OfferRow, TypeRow } from '../../../src/schemas/types.ts';
import { known } from '../assessment/setting.ts';

/** An invented type without any fault, which tests then spoil in one property at a time. */
export const PROBE = 'probe';

const PERFECT: Record<string, Knowledge> = {
  'dielectric-absorption': known(0),
  'insulation-rc': known(1e18),
  'insulation-halving': known(1000),
  'leakage-floor': known(0),
  'dissipation-factor-1khz': known(1e-9),
  'dissipation-factor-120hz': known(1e-9),
  'dissipation-factor-1mhz': known(1e-9),
  'temperature-coefficient': known(0),
  'temperature-min': known(-200),
  'temperature-max': known(500),
  'voltage-coefficient': known(0),
  ageing: known(0),
  'life-change': known(0),
  inductance: known(1e-15),
  piezoelectric: known(0),
  dvdt: known(1e15),
  'charge-density': known(1e12),
  'lead-wire': known(1e-6),
  'rated-life': known(1e12),
  'shelf-life': known(1e12),
  'reverse-voltage': known(0.1),
  'ac-share': known(1),
};

/** What is changed about the perfect part. */
export interface Spoiling {
  figures?: Record<string, Knowledge>;
  part?: Partial<Part>;
  type?: Partial<TypeRow>;
  position?: Partial<PositionRow>;
  offer?: Partial<OfferRow>;
  original?: Partial<Circumstances['original']>;
  /** What the circuit does, for a finding that the part alone cannot spoil. */
  conditions?: Record<string, Range>;
  guideline?: GuidelineId;
  /** Whole tables of the catalogue in place of the real ones. */
  tables?: Partial<Catalogue>;
}

export interface Probed {
  part: Part;
  circumstances: Circumstances;
}

/** The perfect part in given circumstances, or what is left of it when spoilt. */
export const probeIn = (circumstances: Circumstances, spoiling: Spoiling = {}): Probed => {
  const { catalogue, position, conditions, original } = circumstances;
  const template = Object.values(catalogue.types)[0];
  const offered = catalogue.offers[0];
  if (template === undefined || offered === undefined) throw new Error('an empty catalogue');
  const window = [conditions['esr-min']?.typ ?? 1e-9, conditions['esr-max']?.typ ?? 1e-9] as const;
  const esr = hull([exactly(window[0]), exactly(window[1])]).typ;
  const part: Part = {
    type: PROBE,
    capacitance: original.capacitance,
    tolerance: { minus: 0, plus: 0 },
    ratedVoltage: 1e6,
    voltageKind: 'dc',
    ...spoiling.part,
  };
  const type: TypeRow = {
    ...template,
    id: PROBE,
    polarity: 'non-polar',
    safety_classes: position.safety,
    union_of: [],
    market: 'current',
    ...spoiling.type,
  };
  const offer: OfferRow = {
    ...offered,
    type: PROBE,
    c_min: 1e-18,
    c_max: 1e6,
    voltages: [part.ratedVoltage],
    pitch_mm: [1],
    ...spoiling.offer,
  };
  const spoilt: Catalogue = {
    ...catalogue,
    types: { ...catalogue.types, [PROBE]: type },
    knowledge: {
      ...catalogue.knowledge,
      [PROBE]: { ...PERFECT, 'esr-100khz': known(esr), ...spoiling.figures },
    },
    offers: [...catalogue.offers, offer],
    ...spoiling.tables,
  };
  return {
    part,
    circumstances: {
      ...circumstances,
      catalogue: spoilt,
      position: { ...position, ...spoiling.position },
      conditions: { ...conditions, ...spoiling.conditions },
      guideline: spoiling.guideline ?? circumstances.guideline,
      original: { ...original, ...spoiling.original },
    },
  };
};

/** Numbers from one to another in equal ratios, both of the same sign. */
const decades = (from: number, to: number): number[] =>
  Array.from({ length: 121 }, (_, step) => from * (to / from) ** (step / 120));

const property =
  (...ids: string[]) =>
  (value: number): Spoiling => ({
    figures: Object.fromEntries(ids.map((id) => [id, known(value)])),
  });

/** How a finding is spoilt, from good to as bad as it can get. */
export interface Sweep {
  values: readonly number[];
  spoil: (value: number, circumstances: Circumstances) => Spoiling;
}

const LOSSES = ['dissipation-factor-120hz', 'dissipation-factor-1khz', 'dissipation-factor-1mhz'];

const leakage: Sweep = { values: decades(1e18, 1e-12), spoil: property('insulation-rc') };
const drift: Sweep = { values: decades(1e-12, 1e3), spoil: property('temperature-coefficient') };
const smaller: Sweep = {
  values: decades(1, 1e-9),
  spoil: (times, { original }) => ({ part: { capacitance: original.capacitance * times } }),
};
/** Ever less resistance in front of a part. */
const stiffer: Sweep = {
  values: decades(1e5, 1e-9),
  spoil: (ohm) => ({ conditions: { 'source-resistance': exactly(ohm) } }),
};
const larger: Sweep = {
  values: decades(1, 1e4),
  spoil: (times, { original }) => ({ part: { capacitance: original.capacitance * times } }),
};
const rating: Sweep = {
  values: decades(1e6, 1e-6),
  spoil: (ratedVoltage) => ({ part: { ratedVoltage } }),
};

/** A way to spoil every finding that a property or a figure of the part itself decides. */
export const sweeps: Readonly<Record<string, Sweep>> = {
  'rated-voltage': rating,
  'voltage-margin': rating,
  temperature: {
    values: Array.from({ length: 121 }, (_, step) => 500 - 6 * step),
    spoil: property('temperature-max'),
  },
  value: larger,
  tolerance: {
    values: decades(1e-6, 1e3),
    spoil: (minus) => ({ part: { tolerance: { minus, plus: 0 } } }),
  },
  'tolerance-kept': {
    values: decades(1e-6, 1e3),
    spoil: (times, { original }) => ({
      part: { tolerance: { minus: times * original.tolerance.minus, plus: 0 } },
    }),
  },
  drift,
  'balanced-drift': drift,
  'pitch-drift': drift,
  ageing: { values: decades(1e-9, 1e3), spoil: property('life-change') },
  absorption: { values: decades(1e-12, 1e3), spoil: property('dielectric-absorption') },
  droop: leakage,
  'leakage-offset': leakage,
  'leakage-share': leakage,
  'leakage-current': leakage,
  loss: { values: decades(1e-9, 1e3), spoil: property(...LOSSES) },
  corner: {
    values: decades(1, 1e-6),
    spoil: (times, { original }) => ({ part: { capacitance: original.capacitance * times } }),
  },
  distortion: { values: decades(-1e-12, -1e12), spoil: property('voltage-coefficient') },
  'esr-window': {
    values: decades(0.7, 1e9),
    spoil: property('esr-100khz'),
  },
  impedance: { values: decades(1e-9, 1e9), spoil: property('esr-100khz') },
  microphony: { values: [0, 0.25, 0.5, 0.75, 1], spoil: property('piezoelectric') },
  pulse: { values: decades(1e15, 1e-3), spoil: property('dvdt') },
  'lead-pitch': {
    values: decades(0.1, 1e6),
    spoil: (pitch) => ({ offer: { pitch_mm: [pitch] } }),
  },
  body: { values: decades(1e12, 1e-12), spoil: property('charge-density') },
  height: { values: decades(1e12, 1e-12), spoil: property('charge-density') },
  side: { values: decades(1e12, 1e-12), spoil: property('charge-density') },
  'lead-wire': { values: decades(1e-6, 1), spoil: property('lead-wire') },
  inrush: stiffer,
  'own-surge': { values: decades(1e-9, 1e12), spoil: property('surge-resistance') },
  'regulator-dump': larger,
  'ripple-voltage': smaller,
  'filter-shift': smaller,
  'tuning-shift': smaller,
  'time-shift': larger,
  'kept-value': smaller,
  'hold-step': smaller,
  acquisition: larger,
  phase: smaller,
  'touch-current': larger,
  discharge: larger,
  'residual-voltage': larger,
  'reverse-voltage': {
    values: decades(1e-9, 1e9),
    spoil: (volt) => ({
      type: { polarity: 'polar' },
      conditions: { 'v-reverse': exactly(volt) },
    }),
  },
  'ac-voltage': { values: decades(1e3, 1e-9), spoil: property('ac-share') },
  'self-resonance': { values: decades(1e-15, 1e3), spoil: property('inductance') },
  'level-shift': { values: decades(1e-9, 1e9), spoil: property(...LOSSES) },
  'ripple-current': { values: decades(1e-9, 1e9), spoil: property(...LOSSES, 'esr-100khz') },
  'ripple-heating': { values: decades(1e-9, 1e9), spoil: property(...LOSSES, 'esr-100khz') },
  shelf: {
    values: decades(1e12, 1),
    spoil: (seconds) => ({
      ...property('shelf-life')(seconds),
      conditions: { shelf: exactly(1e6) },
    }),
  },
  life: { values: decades(1e12, 1e-18), spoil: property('rated-life') },
};

/** The findings that are a plain yes or no, with the part made unfit. */
export const unfit: Readonly<Record<string, Spoiling>> = {
  polarity: { type: { polarity: 'polar' }, position: { voltage_sense: 'both signs' } },
  'sign-known': { type: { polarity: 'polar' }, original: { type: 'film-unknown' } },
  settable: { original: { type: 'air-variable' } },
  'safety-class': { type: { safety_classes: [] }, position: { safety: ['Y1'] } },
  availability: { offer: { c_max: 1e-18 } },
};
