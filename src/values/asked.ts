import { parseQuantity } from '../engine/index.ts';
import type { ValueUnit } from './series-view.ts';

/** What may be asked for, and what stands there at first. */
export const valueKinds: readonly { id: string; name: string; unit: ValueUnit; usual: string }[] = [
  { id: 'capacitor', name: 'capacitor', unit: 'F', usual: '50 nF' },
  { id: 'resistor', name: 'resistor', unit: 'ohm', usual: '5 kΩ' },
  { id: 'coil', name: 'coil', unit: 'H', usual: '50 µH' },
];

type Kind = (typeof valueKinds)[number];

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
  return parsed.value.typ > 0
    ? { kind, value: parsed.value.typ }
    : { kind, value: fallback, fault: 'Please give a value above zero.' };
};
