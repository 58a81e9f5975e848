import type { Catalogue } from '../../engine/index.ts';
import type { Job } from '../model/job.ts';
import type { Plan, PlannedLine } from '../planning/planned.ts';
import { boughtFor } from './bought.ts';
import { sparesFor, spareRuleOf, type SpareRule } from './spares.ts';
import { nothingBought, type Bought } from './thing.ts';

/** One thing to buy, with all places that it is for. */
export interface OrderGroup extends Bought {
  designators: readonly string[];
  /** Pieces that go in. */
  needed: number;
  spares: number;
  total: number;
  notes: readonly string[];
}

export interface Order {
  groups: readonly OrderGroup[];
  /** Lines to be replaced that nothing can be ordered for yet, with the reason. */
  unsettled: readonly { planned: PlannedLine; reason: string }[];
  rule: SpareRule;
}

const keyOf = (bought: Bought): string =>
  JSON.stringify(Object.keys(nothingBought).map((field) => bought[field as keyof Bought]));

const groupsOf = (bought: readonly OrderGroup[], rule: SpareRule): OrderGroup[] =>
  [...Map.groupBy(bought, keyOf).values()].flatMap((alike) => {
    const [first] = alike;
    if (first === undefined) return [];
    const needed = alike.reduce((sum, one) => sum + one.needed, 0);
    const spares = sparesFor(needed, rule);
    return {
      ...first,
      designators: [...new Set(alike.flatMap(({ designators }) => designators))],
      needed,
      spares,
      total: needed + spares,
      notes: [...new Set(alike.flatMap(({ notes }) => notes))],
    };
  });

/** What to mind where a designator stands in two lines. */
const twice = ({ doubled = [] }: PlannedLine): string[] =>
  doubled.length === 0 ? [] : [`${doubled.join(', ')}: in more than one row, counted in each`];

/**
 * What to buy for all parts that are to be replaced, grouped by what is bought.
 * @param catalogue with names of types and the table of lead forming
 */
export const orderOf = (plan: Plan, whole: Job['whole'], catalogue: Catalogue): Order => {
  const rule = spareRuleOf(whole);
  const unsettled: { planned: PlannedLine; reason: string }[] = [];
  const bought = plan.lines
    .filter(({ decision }) => decision === 'replace')
    .flatMap((planned): OrderGroup[] => {
      const { designators } = planned.part;
      const found = boughtFor(planned, catalogue);
      const reason = designators.length === 0 ? 'no designator is given' : found.reason;
      if (reason !== undefined) {
        unsettled.push({ planned, reason });
        return [];
      }
      return found.things.map(({ thing, each, notes }) => ({
        ...thing,
        designators,
        needed: each * designators.length,
        spares: 0,
        total: 0,
        notes: [...notes, ...twice(planned)],
      }));
    });
  return { groups: groupsOf(bought, rule), unsettled, rule };
};

/** The order as plain lines to copy: `6 × Metallized polyester 100 nF ±10 % 63 V (C1 C4); notes`. */
export const orderText = ({ groups }: Order): string =>
  groups
    .map((group) => {
      const { what, value, tolerance, volts, power, style, pitch, height, details } = group;
      const size = [style, pitch && `pitch ${pitch}`, height && `height at most ${height}`];
      const said = [what, value, tolerance, volts, power, ...size, details];
      const words = said.filter((word) => word !== '').join(' ');
      const notes = group.notes.map((note) => `; ${note}`).join('');
      return `${String(group.total)} × ${words} (${group.designators.join(' ')})${notes}\n`;
    })
    .join('');
