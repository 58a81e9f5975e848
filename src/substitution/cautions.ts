import {
  resolveSituation,
  type Assessment,
  type Catalogue,
  type PositionId,
  type Request,
  type ResolvedCondition,
  type TypeId,
} from '../engine/index.ts';
import type { CautionRow } from '../schemas/cautions.ts';
import type { PositionRow } from '../schemas/positions.ts';
import type { TypeRow } from '../schemas/types.ts';
import { madeOf } from './any-kind.ts';
import type { AnyPart } from './phrases.ts';

/** What brings a caution up; nothing where it always holds. All that is named must hold. */
export interface Trigger {
  /** A condition, and from which value in SI on. */
  condition?: string | undefined;
  from?: number | undefined;
  /** Ways of making a stand-in of two parts, one of which is offered. */
  made?: readonly string[] | undefined;
}

/** A caution that a page may have to show. */
export interface PageCaution {
  caution: CautionRow;
  trigger: Trigger;
  /** Whether the numbers and stand-ins at hand bring it up. */
  due: boolean;
}

/** What the numbers of a page come to, as far as cautions go by it. */
export interface AtHand {
  conditions: readonly ResolvedCondition[];
  assessments: readonly Assessment<AnyPart>[];
}

/** Whether a caution has to be shown. */
export const isDue = (
  { condition, from = 0, made }: Trigger,
  { conditions, assessments }: AtHand,
): boolean => {
  const highest = conditions.find(({ id }) => id === condition)?.range.max ?? 0;
  const isMade = assessments.some(
    ({ verdict, candidate }) =>
      verdict !== 'keep-out' && made?.includes(madeOf(candidate)?.kind ?? '') === true,
  );
  return (condition === undefined || highest >= from) && (made === undefined || isMade);
};

const GRAVITY: readonly CautionRow['severity'][] = ['danger', 'care'];

/** Orders cautions, the gravest first. */
export const byGravity = (
  a: Pick<CautionRow, 'severity'>,
  b: Pick<CautionRow, 'severity'>,
): number => GRAVITY.indexOf(a.severity) - GRAVITY.indexOf(b.severity);

const triggerOf = (catalogue: Catalogue, { condition, from, made }: CautionRow): Trigger => {
  const unit = catalogue.conditionDefinitions[condition]?.unit ?? '';
  return {
    ...(condition === ''
      ? {}
      : { condition, from: (from ?? 0) * (catalogue.units[unit]?.factor ?? 1) }),
    ...(made.length === 0 ? {} : { made }),
  };
};

/** The type of the old part, and where it sits. */
interface Here {
  type: { id: TypeId };
  position: { id: PositionId };
}

/** Whether a caution speaks of this type and this position at all. */
const isFor = ({ types, positions, needs }: CautionRow, { type, position }: Here): boolean =>
  (!needs.includes('type') || types.includes(type.id)) &&
  (!needs.includes('position') || positions.includes(position.id));

/**
 * Whether a caution counts here whatever the numbers are. At a position a condition still has to hold:
 * not every rail is that of a valve amplifier.
 */
const isAlways = (
  { types, positions, condition, needs }: CautionRow,
  { type, position }: Here,
): boolean =>
  !needs.includes('condition') &&
  (types.includes(type.id) || (positions.includes(position.id) && condition === ''));

/** What brings a caution up here, nothing further where it always counts; undefined where nothing can. */
const triggerHere = (
  catalogue: Catalogue,
  caution: CautionRow,
  here: Here,
  conditions: AtHand['conditions'],
): Trigger | undefined => {
  if (!isFor(caution, here)) return undefined;
  if (isAlways(caution, here)) return {};
  const { types, positions, condition } = caution;
  const trigger = triggerOf(catalogue, caution);
  const isElsewhere =
    Object.keys(trigger).length === 0 && (types.length > 0 || positions.length > 0);
  const isNotAsked = condition !== '' && conditions.every(({ id }) => id !== condition);
  return isElsewhere || isNotAsked ? undefined : trigger;
};

/** Cautions that a type, a position, its numbers or its stand-ins can bring up, gravest first. */
export const cautionsFor = (
  catalogue: Catalogue,
  type: TypeRow,
  position: PositionRow,
  { request, assessments }: { request: Request; assessments: readonly Assessment[] },
): PageCaution[] => {
  const { conditions } = resolveSituation(catalogue, request);
  return cautionsAt(catalogue, type, position, { conditions, assessments });
};

/** The same for any kind of part, whose conditions are settled. */
export const cautionsAt = (
  catalogue: Catalogue,
  type: { id: TypeId },
  position: { id: PositionId },
  { conditions, assessments }: AtHand,
): PageCaution[] => {
  const pageCaution = (caution: CautionRow): PageCaution[] => {
    const trigger = triggerHere(catalogue, caution, { type, position }, conditions);
    return trigger === undefined
      ? []
      : [{ caution, trigger, due: isDue(trigger, { conditions, assessments }) }];
  };
  return catalogue.cautions
    .flatMap(pageCaution)
    .toSorted((a, b) => byGravity(a.caution, b.caution));
};
