import {
  formatQuantity,
  formatValue,
  inMicrofarads,
  parseQuantity,
  type Range,
} from '../quantities/index.ts';
import { USUAL_SEED } from './chance.ts';
import type { GivenValues } from './span.ts';
import type { ChoiceInput, Option, QuantityInput, Sum } from './sum.ts';

/** What a visitor wrote, as far as it could be used; what could not, by key, in a sentence. */
export interface ReadInputs {
  given: GivenValues;
  faults: Readonly<Record<string, string>>;
}

/** What may be chosen, by the facts of its sum where it depends on the data. */
export const optionsOf = (input: ChoiceInput, facts: unknown): readonly Option[] =>
  typeof input.options === 'function' ? input.options(facts) : input.options;

/** Longest text that one field may carry. */
const LONGEST = 100;

type Read = { value: Range | undefined } | { fault: string };

/**
 * The microfarads of a capacitance that is written without its unit, and so would count in picofarads,
 * where they lie nearer to what is usual in its field: `100` of a can.
 */
const meantMicrofarads = (
  { unit, bare, usual }: QuantityInput,
  text: string,
): Range | undefined => {
  const micro = unit === 'F' && bare === undefined ? inMicrofarads(text) : undefined;
  const [plain, wonted] = [parseQuantity(text, unit), parseQuantity(usual, unit)];
  // What cannot be read without its unit is asked for it by the reading itself.
  if (micro === undefined || !plain.ok || !wonted.ok) return undefined;
  const far = ({ typ }: Range): number => Math.abs(Math.log(typ / wonted.value.typ));
  return far(micro) < far(plain.value) ? micro : undefined;
};

/** A number as people write it, within the bounds of the input. */
const readQuantity = (input: QuantityInput, text: string): Read => {
  const { unit, bare, lowest, highest } = input;
  if (text.length > LONGEST) return { fault: `Please keep to ${LONGEST} characters.` };
  const micro = meantMicrofarads(input, text);
  if (micro !== undefined) {
    const meant = formatQuantity(micro, unit);
    return { fault: `The unit is missing: is that ${meant}? Write it behind the number.` };
  }
  const parsed = parseQuantity(text, unit, bare);
  if (!parsed.ok) return { fault: parsed.fault.message };
  const { min, max } = parsed.value;
  return min >= lowest && max <= highest
    ? { value: parsed.value }
    : {
        fault: `Please give a value from ${formatValue(lowest, unit)} to ${formatValue(highest, unit)}.`,
      };
};

/** What is reckoned with while a field cannot be used; it also shows how one writes into it. */
const untilThen = (usual: string): string =>
  usual === '' ? 'Until then it counts as left empty.' : `Until then ${usual} is used.`;

const usualQuantity = (input: QuantityInput): Range | undefined => {
  if (input.usual === '') return undefined;
  const read = readQuantity(input, input.usual);
  if ('fault' in read) throw new Error(`${input.label}: ${read.fault}`);
  return read.value;
};

/**
 * Inputs of a sum from what people write. What is empty or cannot be used takes the usual value.
 * @param texts by key of the input
 */
export const readInputs = (
  sum: Sum,
  facts: unknown,
  texts: Readonly<Record<string, string | undefined>>,
): ReadInputs => {
  const given: Record<string, Range | string | undefined> = {};
  const faults: Record<string, string> = {};
  for (const [key, input] of Object.entries(sum.inputs)) {
    const text = (texts[key] ?? '').trim();
    if (input.kind === 'choice') {
      const known = optionsOf(input, facts).some(({ id }) => id === text);
      given[key] = known ? text : input.usual;
      if (text !== '' && !known) faults[key] = 'Please choose one of the list.';
      continue;
    }
    const read: Read = text === '' ? { value: usualQuantity(input) } : readQuantity(input, text);
    if ('fault' in read) faults[key] = `${read.fault} ${untilThen(input.usual)}`;
    given[key] = 'fault' in read ? usualQuantity(input) : read.value;
  }
  return { given, faults };
};

/** The seed of a draw as it is written: a whole number of up to nine digits. */
export const readSeed = (text: string): { seed: number; fault?: string } => {
  const written = text.trim();
  if (written === '') return { seed: USUAL_SEED };
  return /^\d{1,9}$/u.test(written)
    ? { seed: Number(written) }
    : {
        seed: USUAL_SEED,
        fault: `Please give a whole number, such as 7. Until then ${USUAL_SEED} is used.`,
      };
};
