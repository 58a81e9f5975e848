import { singleParts } from '../assessment/made.ts';
import type { Part } from '../assessment/parts.ts';
import { formatQuantity, formatValue } from '../quantities/index.ts';
import { exactly, mapFalling } from '../quantities/range.ts';
import { reformingPlan, type ReformingPlan } from '../reforming/plan.ts';
import { reformingInWords } from '../reforming/words.ts';
import {
  conditionOf,
  knowledgeOf,
  rangeOf,
  type Circumstances,
  type FindingModel,
} from './model.ts';

const LIFE = 'shelf-life';

/** How the part is re-formed, where its kind is; of several parts, each by itself. */
const planFor = (part: Part, circumstances: Circumstances): ReformingPlan | undefined =>
  reformingPlan(
    circumstances.catalogue,
    singleParts(part)[0] ?? part,
    conditionOf(circumstances, 'shelf').typ,
  );

/** Time on the shelf as a share of how long a stand-in keeps without voltage. */
export const shelf: FindingModel = {
  measure: (part, circumstances) => {
    const time = conditionOf(circumstances, 'shelf').typ;
    const knowledge = knowledgeOf(circumstances, part, LIFE);
    // The old part comes from the board, not from a shelf.
    if (time === 0 || part.age !== undefined || knowledge.status === 'not-applicable') {
      return { status: 'known', value: exactly(0), properties: [] };
    }
    if (knowledge.status === 'unknown') return { status: 'unknown', missing: [LIFE] };
    const plan = planFor(part, circumstances);
    return {
      status: 'known',
      value: mapFalling(knowledge.range, (life) => time / life),
      properties: [LIFE],
      ...(plan === undefined ? {} : { sources: plan.sources, bases: plan.bases }),
    };
  },
  working: (part, circumstances, value) => {
    const time = conditionOf(circumstances, 'shelf').typ;
    const life = rangeOf(circumstances, part, LIFE);
    if (life === undefined) return 'keeps on the shelf without limit, if dry';
    if (time === 0) return 'taken as bought new';
    const share =
      `${formatValue(time, 's')} on the shelf / ${formatQuantity(life, 's')} that it keeps = ` +
      formatQuantity(value, 'fraction');
    if (value.typ <= 1) return share;
    const plan = planFor(part, circumstances);
    return `${share}; ${plan === undefined ? 'measure its leakage before you trust it' : reformingInWords(plan)}`;
  },
};
