import type { Part } from '../assessment/parts.ts';
import { selfResonance as resonanceOf } from '../equations/resonance.ts';
import { formatQuantity, formatValue } from '../quantities/index.ts';
import type { Range } from '../quantities/range.ts';
import { ruleOf } from '../rule-of-thumb.ts';
import { conditionOf, type Circumstances, type FindingModel } from './model.ts';
import { inductanceOf } from './series-elements.ts';

const INDUCTANCE = 'inductance';

const resonance = (part: Part, circumstances: Circumstances): Range | undefined => {
  const inductance = inductanceOf(part, circumstances);
  return inductance && resonanceOf(inductance, part.capacitance);
};

/** Frequency above which a part is an inductance, against the working frequency. */
export const selfResonance: FindingModel = {
  // A stand-in as good as the old part is good enough, wherever that one resonated.
  limit: (circumstances) => {
    const asked =
      conditionOf(circumstances, 'f-work').typ /
      ruleOf(circumstances.catalogue, 'beyond-resonance');
    return {
      low: Math.min(asked, resonance(circumstances.original, circumstances)?.typ ?? asked),
    };
  },
  measure: (part, circumstances) => {
    const value = resonance(part, circumstances);
    return value === undefined
      ? { status: 'unknown', missing: [INDUCTANCE] }
      : { status: 'known', value, properties: [INDUCTANCE] };
  },
  working: (part, circumstances, value) => {
    const inductance = inductanceOf(part, circumstances);
    return (
      `1 / (2π × √(${inductance ? formatQuantity(inductance, 'H') : 'not known'} × ` +
      `${formatValue(part.capacitance, 'F')})) = ${formatQuantity(value, 'Hz')}, used up to ` +
      formatValue(conditionOf(circumstances, 'f-work').typ, 'Hz')
    );
  },
};
