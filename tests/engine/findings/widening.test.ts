import { describe, expect, test } from 'vitest';
import {
  judge,
  prepareDemands,
  type PreparedDemand,
} from '../../../src/engine/assessment/finding.ts';
import type { Part } from '../../../src/engine/assessment/parts.ts';
import type { Circumstances, Outcome } from '../../../src/engine/findings/model.ts';
import { capacitanceAsBought } from '../../../src/engine/findings/service-capacitance.ts';
import { allPairings } from '../../../src/engine/index.ts';
import { exactly, overPositive, type Range } from '../../../src/engine/quantities/range.ts';
import { catalogue, circumstancesOf, knowing, known } from '../assessment/setting.ts';

/** Everything that is not known for certain about one part in its circumstances. */
interface Setting {
  conditions: Record<string, Range>;
  /** Of the type of the part; the old part may be of the same. */
  figures: Record<string, Range>;
  tolerance: Part['tolerance'];
}

/** Figures that are spans by themselves: what the part does over its range, not what is unsure. */
const SPANS = ['capacitance-change-temperature'];

/** Widths that are meant, by finding. */
const MEANT: Readonly<Record<string, string>> = {
  life: 'makers differ on whether unused voltage lengthens life, so the worst part gains nothing',
  drift: 'where only limits are known, the curve may bend anywhere in them',
  'pitch-drift': 'the same',
};

const KELVIN = 4;

/** A condition with some spread, so that it shows where it is counted twice. */
const widened = (id: string, { typ }: Range): Range =>
  id.startsWith('t-')
    ? { min: typ - KELVIN, typ, max: typ + KELVIN }
    : { min: 0.9 * typ, typ, max: 1.1 * typ };

const TYPES = [
  'pet-metallized',
  'ceramic-z5u',
  'al-electrolytic-wet',
  'ta-mno2-solid',
  'air-variable',
];

/** Where each quantity is between its ends, 0 to 1; those that are not named keep their spread. */
type Chosen = Readonly<Record<string, number>>;

const at = ({ min, max }: { min: number; max: number }, share: number): number =>
  share === 1 ? max : min + share * (max - min);

const mapEach = (
  ranges: Record<string, Range>,
  change: (range: Range, id: string) => Range,
): Record<string, Range> =>
  Object.fromEntries(Object.entries(ranges).map(([id, range]) => [id, change(range, id)]));

/** The setting with chosen quantities at one value each, wherever they are used. */
const settle = ({ conditions, figures, tolerance }: Setting, chosen: Chosen): Setting => {
  const share = chosen['tolerance'];
  const off = share === undefined ? 0 : at({ min: -tolerance.minus, max: tolerance.plus }, share);
  const each = (ranges: Record<string, Range>): Record<string, Range> =>
    mapEach(ranges, (range, id) => {
      const where = chosen[id];
      return where === undefined ? range : exactly(at(range, where));
    });
  return {
    conditions: each(conditions),
    figures: each(figures),
    tolerance: share === undefined ? tolerance : { minus: -off, plus: off },
  };
};

/** A setting in which nothing is unsure. */
const certain = ({ conditions, figures }: Setting): Setting => ({
  conditions: mapEach(conditions, ({ typ }) => exactly(typ)),
  figures: mapEach(figures, ({ typ }) => exactly(typ)),
  tolerance: { minus: 0, plus: 0 },
});

interface Measured {
  min: number;
  max: number;
}

/** How far something about a demand reaches for a part. */
type Reach = (
  demand: PreparedDemand,
  part: Part,
  circumstances: Circumstances,
) => Measured | undefined;

/** How far a finding reaches. */
const ofFinding: Reach = ({ model }, part, circumstances) => {
  const outcome = model.measure(part, circumstances);
  return outcome.status === 'known' ? outcome.value : undefined;
};

/** How far beyond its limit a finding is at its worse end, where the limit moves with what it is of. */
const ofShortfall: Reach = ({ demand }, part, circumstances) => {
  const { catalogue: all } = circumstances;
  const [prepared] = prepareDemands({ ...circumstances, catalogue: { ...all, demands: [demand] } });
  if (prepared === undefined) return undefined;
  const { outcome, beyond } = judge(prepared, part, circumstances);
  return outcome.status === 'known' ? { min: 0, max: beyond.unfavourable } : undefined;
};

const measureIn = (
  reach: Reach,
  demand: PreparedDemand,
  part: Part,
  base: Circumstances,
  { conditions, figures, tolerance }: Setting,
): Measured | undefined => {
  const knowledge = Object.fromEntries(
    Object.entries(figures).map(([id, range]) => [id, known(range)]),
  );
  return reach(
    demand,
    { ...part, tolerance },
    {
      ...base,
      catalogue: knowing(base.catalogue, part.type, knowledge),
      conditions: { ...base.conditions, ...conditions },
    },
  );
};

/** Where the usual value of a condition lies, which is what many findings go by. */
const MIDDLE = 0.5;

/** Steps in which values between the ends are tried where the ends alone do not tell. */
const STEPS = 8;

/**
 * How far a finding can go one way, each quantity being moved in turn: to its ends, or, where a
 * finding has no sign and may turn at nothing, in ever finer steps between them.
 */
const furthest = (
  quantities: readonly string[],
  value: (chosen: Chosen) => number,
  way: 1 | -1,
  fine: boolean,
): number => {
  let chosen: Chosen = Object.fromEntries(quantities.map((id) => [id, 1]));
  let best = way * value(chosen);
  const visit = (shares: (now: number) => number[]): void => {
    for (const id of quantities) {
      for (const share of shares(chosen[id] ?? 1)) {
        const next = { ...chosen, [id]: Math.min(1, Math.max(0, share)) };
        const found = way * value(next);
        if (found > best) [chosen, best] = [next, found];
      }
    }
  };
  visit(() => [0, MIDDLE, 1]);
  visit(() => [0, MIDDLE, 1]);
  for (let step = 1; fine && step > 1e-6; step /= STEPS) {
    visit((now) =>
      Array.from({ length: 2 * STEPS + 1 }, (_, index) => now + (index / STEPS - 1) * step),
    );
  }
  return way * best;
};

const ROUNDING = 1e-9;
/** How near the finest step comes to where a finding turns. */
const FINEST = 1e-5;

/** What may be unsure about a finding for a part: all that is of the part, or one condition. */
const settingsOf = (
  { row, demand }: PreparedDemand,
  type: string,
  base: Circumstances,
): Setting[] => {
  const whole: Setting = {
    conditions: Object.fromEntries(
      [...row.conditions, demand.limit_of].flatMap((id) => {
        const range = base.conditions[id];
        return range === undefined ? [] : [[id, widened(id, range)]];
      }),
    ),
    figures: Object.fromEntries(
      row.properties
        .filter((id) => !SPANS.includes(id))
        .flatMap((id) => {
          const figure = catalogue.knowledge[type]?.[id];
          return figure?.status === 'known' ? [[id, figure.range]] : [];
        }),
    ),
    tolerance: { minus: 0.2, plus: 0.2 },
  };
  const sure = certain(whole);
  return [
    { ...whole, conditions: sure.conditions },
    ...Object.entries(whole.conditions).map(([id, range]) => ({
      ...sure,
      conditions: { ...sure.conditions, [id]: range },
    })),
  ];
};

/** Whether a span is wider than any true state of affairs makes it, and how. */
const excess = (
  what: Reach,
  demand: PreparedDemand,
  part: Part,
  base: Circumstances,
  setting: Setting,
): string | undefined => {
  const whole = measureIn(what, demand, part, base, setting);
  if (whole === undefined) return undefined;
  const unsure = ([id, { min, max }]: [string, Range]): string[] => (min === max ? [] : [id]);
  const quantities = [
    ...Object.entries(setting.conditions).flatMap(unsure),
    ...Object.entries(setting.figures).flatMap(unsure),
    ...(setting.tolerance.plus === 0 ? [] : ['tolerance']),
  ];
  const reach = (end: 'min' | 'max') => (chosen: Chosen) =>
    measureIn(what, demand, part, base, settle(setting, chosen))?.[end] ?? NaN;
  const most = furthest(quantities, reach('max'), 1, false);
  const least = furthest(quantities, reach('min'), -1, whole.min === 0);
  const size = Math.max(Math.abs(most), Math.abs(least));
  return whole.max > most + ROUNDING * size || whole.min < least - FINEST * size
    ? `${whole.min} to ${whole.max}, in truth ${least} to ${most}, by ${quantities.join(', ')}`
    : undefined;
};

const isMovedLimit = ({ demand, model }: PreparedDemand): boolean =>
  model.limit !== undefined || demand.limit_of !== '';

/**
 * Findings whose span is wider than any true state of affairs makes it, for one part, and those that
 * fall short by a condition that moves their limit as well. The old part is another part, so that
 * figures of its type are not one quantity with those of the new one.
 */
const falselyWide = (type: string, base: Circumstances): string[] => {
  const part: Part = { ...base.original, type, ratedVoltage: 50, voltageKind: 'dc' };
  return prepareDemands(base)
    .filter(({ row }) => MEANT[row.id] === undefined)
    .flatMap((demand) => {
      const settings = settingsOf(demand, type, base);
      const wide = settings.map((one) => excess(ofFinding, demand, part, base, one));
      const short = settings
        .slice(1)
        .filter(() => isMovedLimit(demand))
        .map((one) => excess(ofShortfall, demand, part, base, one));
      return [...wide, ...short]
        .filter((found) => found !== undefined)
        .map((found) => `${demand.row.id}: ${found}`);
    });
};

describe('no finding is wider than what is not known makes it', () => {
  test.each(Object.keys(catalogue.positions))('at %s', (position) => {
    const met = allPairings(catalogue).filter(
      (pair) => pair.position === position && pair.pairing.met,
    );
    const wide = TYPES.flatMap((type) => {
      const old = met.find((pair) => pair.type !== type) ?? met[0];
      const base = circumstancesOf({ original: { type: old?.type ?? 'pet-metallized' }, position });
      return falselyWide(type, base).map((what) => `${type} ${what}`);
    });
    expect(wide).toEqual([]);
  });
});

describe('a quantity that counts twice', () => {
  const base = circumstancesOf({ original: { type: 'pet-metallized' }, position: 'bulk-rail' });
  const [some] = prepareDemands(base).filter(({ row }) => row.id === 'voltage-margin');
  const part: Part = { ...base.original, ratedVoltage: 50, voltageKind: 'dc' };
  const found = (measure: PreparedDemand['model']['measure']): (string | undefined)[] => {
    if (some === undefined) throw new Error('no demand');
    const demand = { ...some, model: { ...some.model, measure } };
    return settingsOf(demand, part.type, base).map((setting) =>
      excess(ofFinding, demand, part, base, setting),
    );
  };
  const over = (a: Range, b: Range): Outcome => ({
    status: 'known',
    value: overPositive(a, b),
    properties: [],
  });

  test('is found where a condition is held against itself', () => {
    const twice = found((_part, { conditions }) =>
      over(conditions['vdc'] ?? exactly(1), conditions['vdc'] ?? exactly(1)),
    );
    expect(twice.filter((what) => what !== undefined)).toHaveLength(1);
  });

  test('is found where the tolerance of a part is', () => {
    const twice = found((one) => over(capacitanceAsBought(one), capacitanceAsBought(one)));
    expect(twice.filter((what) => what !== undefined)).toHaveLength(1);
  });

  test('is not found where it counts once', () => {
    const once = found((one) => over(capacitanceAsBought(one), exactly(1e-6)));
    expect(once.filter((what) => what !== undefined)).toEqual([]);
  });
});
