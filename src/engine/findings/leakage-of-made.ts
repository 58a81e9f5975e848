import type { Made } from '../assessment/parts.ts';
import { formatQuantity, formatValue } from '../quantities/index.ts';
import type { Range } from '../quantities/range.ts';
import { leakOf } from './insulation.ts';
import { conditionOf, type Circumstances } from './model.ts';

/** Where the current of a stand-in that is made of two parts flows, and what it comes to. */
export const leakageOfMade = (
  { kind, parts, bleeder }: Made,
  circumstances: Circumstances,
  value: Range,
): string => {
  const voltage = conditionOf(circumstances, 'vdc').max;
  const across = kind === 'series' ? voltage / 2 : voltage;
  const each = parts.map((single) => {
    const leak = leakOf(single, circumstances, across);
    return leak === undefined ? '' : formatQuantity(leak.current, 'A');
  });
  const volts = formatValue(across, 'V');
  const total = formatQuantity(value, 'A');
  switch (kind) {
    case 'parallel':
      return `${each.join(' and ')} at ${volts}: ${total}`;
    case 'series':
      return bleeder === undefined
        ? `the same through both, at ${volts} each: ${total}`
        : `${each[0] ?? ''} at ${volts} each, and ${formatValue(voltage, 'V')} / ` +
            `(2 × ${formatValue(bleeder, 'ohm')}) through the resistors: ${total}`;
    case 'back-to-back':
      return `one of them has all the ${volts}: ${total}`;
    case 'with-resistor':
      return `at ${volts}: ${total}`;
  }
};
