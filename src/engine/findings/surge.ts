import { surgeShare } from '../equations/inrush.ts';
import { formatQuantity, formatValue } from '../quantities/index.ts';
import { exactly, type Range } from '../quantities/range.ts';
import { RESISTANCE } from '../sizes/esr-of.ts';
import { conditionOf, rangeOf, type FindingModel } from './model.ts';
import { highFrequencyResistance } from './series-resistance.ts';

const TEST = 'surge-resistance';

/**
 * Charging current at switch-on as a share of what the maker proves each part with. Only where a
 * type has such a test: its kind may short and burn in a surge, others bear what the rectifier does.
 */
export const ownSurge: FindingModel = {
  measure: (part, circumstances) => {
    const test = rangeOf(circumstances, part, TEST);
    if (test === undefined) return { status: 'known', value: exactly(0), properties: [] };
    const own = highFrequencyResistance(part, circumstances);
    if (own === undefined) return { status: 'unknown', missing: [RESISTANCE] };
    const voltage = conditionOf(circumstances, 'v-surge');
    const source = conditionOf(circumstances, 'source-resistance');
    const { ratedVoltage: rated } = part;
    const share = (at: 'min' | 'typ' | 'max', inFront: number, esr: number): number =>
      surgeShare({ voltage: voltage[at], source: inFront, own: esr, rated, test: test[at] });
    // Whether much or little resistance of its own is the worse depends on what stands in front.
    const ends = [own.range.min, own.range.max];
    const value: Range = {
      min: Math.min(...ends.map((esr) => share('min', source.max, esr))),
      typ: share('typ', source.typ, own.range.typ),
      max: Math.max(...ends.map((esr) => share('max', source.min, esr))),
    };
    return {
      status: 'known',
      value,
      properties: [TEST, ...own.properties],
      sources: own.sources,
      bases: own.bases,
    };
  },
  working: (part, circumstances, value) => {
    const test = rangeOf(circumstances, part, TEST);
    const own = highFrequencyResistance(part, circumstances);
    if (test === undefined || own === undefined) return 'no such limit for this type';
    const esr = formatQuantity(own.range, 'ohm');
    return (
      `${formatValue(conditionOf(circumstances, 'v-surge').typ, 'V')} / ` +
      `(${formatValue(conditionOf(circumstances, 'source-resistance').typ, 'ohm')} + ${esr}) ` +
      `against ${formatValue(part.ratedVoltage, 'V')} / (${formatValue(test.typ, 'ohm')} + ${esr}): ` +
      formatQuantity(value, 'fraction')
    );
  },
};
