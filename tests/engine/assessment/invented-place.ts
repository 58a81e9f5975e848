import { resolveSituation } from '../../../src/engine/assessment/conditions.ts';
import type { Original } from '../../../src/engine/assessment/parts.ts';
import type { Catalogue, Knowledge } from '../../../src/engine/catalogue.ts';
import { exactly, type Range } from '../../../src/engine/quantities/range.ts';
import type { ConditionRow } from '../../../src/schemas/positions.ts';
import type { BodyRow } from '../../../src/schemas/sizes.ts';
import { catalogue, given, known } from './setting.ts';

/** A place of its own making with an old part of 1 µF 100 V. */

const OLD = 'invented-type';
const PLACE = 'invented-place';

export const row = (condition: string, more: Partial<ConditionRow> = {}): ConditionRow => ({
  position: PLACE,
  condition,
  min: undefined,
  typ: undefined,
  max: undefined,
  follows: '',
  source: 'trade',
  locator: '',
  basis: 'common-practice',
  note: '',
  ...more,
});

/** 12 × 4 × 20 mm. */
export const body: BodyRow = {
  ...{ type: OLD, style: 'radial box', shape: 'box', c_min: 1e-6, c_max: 1e-6 },
  ...{ voltage: 100, voltage_kind: 'dc', length_mm: 12, width_mm: 4, height_mm: 20 },
  ...{ pitch_mm: [10], lead_mm: 0.6 },
  ...{ source: 'trade', locator: '', basis: 'common-practice', note: '' },
};

/** 1 % of loss at 1 kHz; 2 ohm near 100 kHz; a microhenry and a half. */
export const knowledge: Record<string, Knowledge> = {
  'dissipation-factor-1khz': known(0.01),
  'esr-100khz': known({ min: 1, typ: 2, max: 3 }),
  inductance: known(1.59155e-6),
};

export interface Given {
  rows: ConditionRow[];
  knows?: Record<string, Knowledge>;
  original?: Partial<Original>;
  type?: Partial<NonNullable<Catalogue['types'][string]>>;
  bodies?: BodyRow[];
  conditions?: Record<string, number>;
}

export const settled = ({ rows, knows = knowledge, bodies = [body], ...more }: Given) => {
  const type = catalogue.types['pet-metallized'];
  const position = catalogue.positions['interstage-coupling'];
  if (type === undefined || position === undefined) throw new Error('an empty catalogue');
  const invented: Catalogue = {
    ...catalogue,
    bodies,
    types: {
      ...catalogue.types,
      [OLD]: { ...type, id: OLD, old_ample_below: undefined, old_v_typical: 63, ...more.type },
    },
    positions: { ...catalogue.positions, [PLACE]: { ...position, id: PLACE } },
    conditions: rows,
    knowledge: { ...catalogue.knowledge, [OLD]: knows },
  };
  return resolveSituation(invented, {
    original: {
      type: OLD,
      capacitance: exactly(1e-6),
      ratedVoltage: exactly(100),
      tolerance: { minus: 0.2, plus: 0.2 },
      ...more.original,
    },
    position: PLACE,
    conditions: given(more.conditions ?? {}),
  });
};

/** What one condition comes to. */
export const found = (all: Given, id: string): Range => {
  const one = settled(all).conditions.find((condition) => condition.id === id);
  if (one === undefined) throw new Error(`no ${id}`);
  return one.range;
};

/** A condition that follows from the old part. */
export const at = (
  condition: string,
  follows: ConditionRow['follows'],
  more: Partial<ConditionRow>,
) => row(condition, { follows, ...more });
