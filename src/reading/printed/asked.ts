import { parseQuantity, type Catalogue, type PartToPrint } from '../../engine/index.ts';
import { readTemperatureCharacteristic } from '../../engine/markings/index.ts';
import { PART_LIMITS, readRange, readToleranceText } from '../../substitution/typed-numbers.ts';

/** Fields of the page, and keys of its address. */
export const printedKeys = ['kind', 'c', 'tol', 'v', 't', 'type', 'taper'] as const;
export type PrintedKey = (typeof printedKeys)[number];

/** What was asked: the part, and a sentence for each field that cannot be used. */
export interface PrintedAsked {
  part?: PartToPrint;
  faults: Partial<Record<PrintedKey, string>>;
}

const RESISTANCE = { unit: 'ohm', lowest: 1e-4, highest: 1e12 } as const;

type Texts = Partial<Record<PrintedKey, string>>;
type Part = PartToPrint;

/** A tolerance as typed: per cent, or picofarads where those are written. */
const toleranceOf = (
  text: string,
  resistor: boolean,
): { value: NonNullable<Part['tolerance']> } | { message: string } => {
  if (/p\s*f/i.test(text)) {
    const parsed = parseQuantity(text.replace(/^\s*(?:±|\+\/?-)\s*/, ''), 'F');
    return parsed.ok
      ? { value: { minus: parsed.value.typ, plus: parsed.value.typ, unit: 'F' } }
      : { message: parsed.fault.message };
  }
  const read = readToleranceText(text, { of: resistor ? 'resistor' : 'capacitor' });
  return 'value' in read ? { value: { ...read.value, unit: 'fraction' } } : read;
};

type Faults = PrintedAsked['faults'];

/** Notes a fault of a field, and hands on what can be used. */
const take = <T>(
  read: { value: T } | { message: string },
  key: PrintedKey,
  faults: Faults,
): T | undefined => {
  if ('value' in read) return read.value;
  faults[key] = read.message;
  return undefined;
};

const isTemperatureCode = (catalogue: Catalogue, code: string): boolean =>
  readTemperatureCharacteristic(catalogue.markings, code).length > 0;

const ALTERNATING = /~|\ba\.?c\b\.?/i;
const DIRECT = /\bd\.?c\b\.?/i;

/** The taper that is chosen, as a piece of the part; a capacitor has none. */
const taperOf = (
  { markings }: Catalogue,
  resistor: boolean,
  chosen: string,
): Pick<Part, 'taper'> => {
  const row = markings.tapers.find(({ law }) => law === chosen);
  return resistor && row !== undefined ? { taper: row.law } : {};
};

/** Reads the fields of the page; what cannot be used is left out of the part and said. */
export const readAsked = (catalogue: Catalogue, texts: Texts): PrintedAsked => {
  const faults: Faults = {};
  const written = (key: PrintedKey): string => texts[key]?.trim() ?? '';
  const resistor = written('kind') === 'resistor';
  const part: Part = {};
  if (written('tol') !== '') {
    const tolerance = take(toleranceOf(written('tol'), resistor), 'tol', faults);
    if (tolerance !== undefined) part.tolerance = tolerance;
  }
  if (written('v') !== '' && !resistor) {
    const text = written('v').replace(ALTERNATING, '').replace(DIRECT, '');
    const volts = take(readRange(text, PART_LIMITS.ratedVoltage), 'v', faults);
    if (volts !== undefined) part.ratedVoltage = volts.typ;
    if (ALTERNATING.test(written('v'))) part.voltageKind = 'ac';
  }
  const code = written('t').toUpperCase();
  if (code !== '' && !resistor) {
    if (isTemperatureCode(catalogue, code)) part.temperatureCharacteristic = code;
    else faults.t = `“${written('t')}” is in no table of temperature codes.`;
  }
  if (!resistor && Object.hasOwn(catalogue.types, written('type'))) part.type = written('type');
  Object.assign(part, taperOf(catalogue, resistor, written('taper')));
  if (written('c') === '') return { faults };
  const value = take(
    readRange(written('c'), resistor ? RESISTANCE : PART_LIMITS.capacitance),
    'c',
    faults,
  );
  if (value === undefined) return { faults };
  return {
    part: { ...part, ...(resistor ? { resistance: value.typ } : { capacitance: value.typ }) },
    faults,
  };
};
