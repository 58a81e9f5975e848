import { resolveSituation, type Catalogue, type Request } from '../engine/index.ts';
import type { CautionRow } from '../schemas/cautions.ts';
import type { PositionRow } from '../schemas/positions.ts';
import type { TypeRow } from '../schemas/types.ts';

/** A caution that a page may have to show. */
export interface PageCaution {
  caution: CautionRow;
  /** Condition that brings it up, and from which value in SI on; nothing where it always holds. */
  trigger?: { condition: string; from: number };
  /** Whether the numbers at hand bring it up. */
  due: boolean;
}

const GRAVITY: readonly CautionRow['severity'][] = ['danger', 'care'];

/** Cautions that a type, a position or some value of its conditions can bring up, gravest first. */
export const cautionsFor = (
  catalogue: Catalogue,
  type: TypeRow,
  position: PositionRow,
  request: Request,
): PageCaution[] => {
  const { conditions } = resolveSituation(catalogue, request);
  const pageCaution = (caution: CautionRow): PageCaution[] => {
    const general =
      caution.types.length === 0 && caution.positions.length === 0 && caution.condition === '';
    if (general || caution.types.includes(type.id) || caution.positions.includes(position.id)) {
      return [{ caution, due: true }];
    }
    const condition = conditions.find(({ id }) => id === caution.condition);
    if (condition === undefined) return [];
    const unit = catalogue.conditionDefinitions[condition.id]?.unit ?? '';
    const from = (caution.from ?? 0) * (catalogue.units[unit]?.factor ?? 1);
    return [
      { caution, trigger: { condition: condition.id, from }, due: condition.range.max >= from },
    ];
  };
  return catalogue.cautions
    .flatMap(pageCaution)
    .toSorted((a, b) => GRAVITY.indexOf(a.caution.severity) - GRAVITY.indexOf(b.caution.severity));
};
