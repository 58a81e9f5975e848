import { addedResistance } from '../assessment/made.ts';
import type { Part } from '../assessment/parts.ts';
import type { PropertyId } from '../catalogue.ts';
import { lossByResistor, qualityOf } from '../equations/loss.ts';
import { formatQuantity, formatValue } from '../quantities/index.ts';
import { add, exactly, type Range } from '../quantities/range.ts';
import { conditionOf, rangeOf, type Circumstances, type FindingModel } from './model.ts';

/** The frequencies that loss is published at, Hz. */
const PUBLISHED_AT: readonly { property: PropertyId; hertz: number }[] = [
  { property: 'dissipation-factor-120hz', hertz: 120 },
  { property: 'dissipation-factor-1khz', hertz: 1e3 },
  { property: 'dissipation-factor-1mhz', hertz: 1e6 },
];

/** A published loss, and the frequency (Hz) that it was published at. */
export interface Nearest {
  property: PropertyId;
  hertz: number;
  range: Range;
}

/** The published loss nearest in ratio to a frequency (Hz). */
export const nearestLoss = (
  part: Pick<Part, 'type'>,
  circumstances: Pick<Circumstances, 'catalogue'>,
  working: number,
): Nearest | undefined => {
  const distance = (hertz: number): number => Math.abs(Math.log(hertz / working));
  return PUBLISHED_AT.flatMap(({ property, hertz }) => {
    const range = rangeOf(circumstances, part, property);
    return range === undefined ? [] : [{ property, hertz, range }];
  }).sort((a, b) => distance(a.hertz) - distance(b.hertz))[0];
};

/** The published loss nearest to the working frequency. */
const workingLoss = (part: Part, circumstances: Circumstances): Nearest | undefined =>
  nearestLoss(part, circumstances, conditionOf(circumstances, 'f-work').typ);

/** Dissipation factor that a resistor put in series adds at the working frequency. */
const addedLoss = (part: Part, circumstances: Circumstances): number =>
  lossByResistor(conditionOf(circumstances, 'f-work').typ, addedResistance(part), part.capacitance);

/** Dissipation factor nearest to the working frequency. */
export const loss: FindingModel = {
  measure: (part, circumstances) => {
    const nearest = workingLoss(part, circumstances);
    return nearest === undefined
      ? { status: 'unknown', missing: ['dissipation-factor-1khz'] }
      : {
          status: 'known',
          value: add(nearest.range, exactly(addedLoss(part, circumstances))),
          properties: [nearest.property],
        };
  },
  working: (part, circumstances, value) => {
    const nearest = workingLoss(part, circumstances);
    const added = addedLoss(part, circumstances);
    const resistor =
      added === 0
        ? ''
        : `, with ${formatValue(added, 'fraction')} by ${formatValue(addedResistance(part), 'ohm')} in it`;
    return (
      `tan δ ${formatQuantity(value, 'fraction')} published at ` +
      `${nearest ? formatValue(nearest.hertz, 'Hz') : '?'}, used at ` +
      `${formatValue(conditionOf(circumstances, 'f-work').typ, 'Hz')}${resistor}; Q ${formatQuantity(qualityOf(value), 'grade')}`
    );
  },
};
