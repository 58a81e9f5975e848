import { formatValue, parseQuantity } from '../engine/index.ts';
import type { ValueUnit } from './series-view.ts';

interface Kind {
  id: string;
  name: string;
  unit: ValueUnit;
  usual: string;
  /** No part has less or more than this; beyond it a value is a slip of the keyboard. */
  lowest: number;
  highest: number;
}

/** What may be asked for, and what stands there at first. */
export const valueKinds: readonly Kind[] = [
  { id: 'capacitor', name: 'capacitor', unit: 'F', usual: '50 nF', lowest: 1e-15, highest: 1e4 },
  { id: 'resistor', name: 'resistor', unit: 'ohm', usual: '5 kΩ', lowest: 1e-6, highest: 1e15 },
  { id: 'coil', name: 'coil', unit: 'H', usual: '50 µH', lowest: 1e-10, highest: 1e4 },
];

/** A value that is asked for, with what is wrong with what was written; the usual one holds then. */
export interface AskedValue {
  kind: Kind;
  value: number;
  fault?: string;
}

/** Reads a kind of part and a value as people write them; nothing written is the usual value. */
export const readAskedValue = (of: string | undefined, text: string): AskedValue => {
  const kind = valueKinds.find(({ id }) => id === of) ?? (valueKinds[0] as Kind);
  const usual = parseQuantity(kind.usual, kind.unit);
  const fallback = usual.ok ? usual.value.typ : 1;
  if (text.trim() === '') return { kind, value: fallback };
  const parsed = parseQuantity(text, kind.unit);
  if (!parsed.ok) return { kind, value: fallback, fault: parsed.fault.message };
  const value = parsed.value.typ;
  if (value <= 0) return { kind, value: fallback, fault: 'Please give a value above zero.' };
  if (value >= kind.lowest && value <= kind.highest) return { kind, value };
  const [least, most] = [kind.lowest, kind.highest].map((end) => formatValue(end, kind.unit));
  return {
    kind,
    value: fallback,
    fault: `No ${kind.name} has such a value; please give one from ${least ?? ''} to ${most ?? ''}.`,
  };
};
