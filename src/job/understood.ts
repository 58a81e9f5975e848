import {
  formatValue,
  pairing,
  readMarking,
  writeQuantity,
  type Catalogue,
  type Reading,
} from '../engine/index.ts';
import { inWords, toldBy, typedFrom } from './line-from-reading.ts';
import type { Line } from './model.ts';
import { partAsTyped, type PartOfLine, type Understand } from './part-of-line.ts';

/** An answer that the visitor may take: what it puts into the line. */
export interface AskChoice {
  label: string;
  set: Partial<Line>;
}

/** What only the visitor can tell; the choices are offers, and others may be right. */
export interface Ask {
  about: 'marking' | 'value' | 'type' | 'position';
  question: string;
  choices: AskChoice[];
}

/** What is understood of a line, and what is left to ask. */
export interface Understood {
  part: PartOfLine;
  asks: Ask[];
}

/** Two values further apart than this, as a fraction, are not the same. */
const SAME = 0.01;
/** Most answers that are offered to one question. */
const MOST_CHOICES = 8;

const readingsOf = (catalogue: Catalogue, { marking, kind, type }: Line): Reading[] => {
  const isOther = kind !== '' && kind !== 'capacitor' && kind !== 'resistor';
  if (marking.trim() === '' || isOther) return [];
  return readMarking(catalogue, marking, {
    ...(kind === 'capacitor' || kind === 'resistor' ? { kind } : {}),
    ...(Object.hasOwn(catalogue.types, type) ? { type } : {}),
  });
};

/** The one reading that there is, if it is more than possible. */
const settledOf = (readings: readonly Reading[]): Reading | undefined =>
  readings.length === 1 && readings[0]?.sure !== 'possible' ? readings[0] : undefined;

/** What was typed, and what a settled reading adds where nothing was. */
const filled = (line: Line, reading: Reading | undefined): PartOfLine => {
  const told = reading?.kind === 'capacitor' ? toldBy(reading) : {};
  const kind = line.kind === '' ? (reading?.kind ?? '') : line.kind;
  const typed = partAsTyped({ ...line, kind });
  if (typed.kind !== 'capacitor') return typed;
  const isEmpty = (field: 'value' | 'tolerance' | 'volts' | 'type'): boolean =>
    line[field].trim() === '';
  return {
    ...typed,
    ...(isEmpty('value') ? { capacitance: told.capacitance } : {}),
    ...(isEmpty('tolerance') && isEmpty('value') ? { tolerance: told.tolerance } : {}),
    ...(isEmpty('volts') ? { ratedVoltage: told.ratedVoltage } : {}),
    ...(isEmpty('type') ? { type: told.type } : {}),
  };
};

const askMarking = (line: Line, readings: readonly Reading[]): Ask[] => {
  const isAnswered = line.value.trim() !== '';
  if (isAnswered || readings.length === 0 || settledOf(readings) !== undefined) return [];
  const choices = readings.slice(0, MOST_CHOICES).map((reading) => {
    return { label: inWords(reading), set: typedFrom(reading, line) };
  });
  return [
    {
      about: 'marking',
      question: `“${line.marking}” may be read in several ways. Which is it?`,
      choices,
    },
  ];
};

const askValue = (part: PartOfLine, reading: Reading | undefined): Ask[] => {
  const typed = part.capacitance?.typ;
  const marked = reading === undefined ? undefined : toldBy(reading).capacitance;
  if (typed === undefined || marked === undefined) return [];
  if (Math.abs(typed - marked.typ) <= SAME * Math.max(typed, marked.typ)) return [];
  const [here, there] = [formatValue(typed, 'F'), formatValue(marked.typ, 'F')];
  return [
    {
      about: 'value',
      question: `The list says ${here}, which is used; the marking reads as ${there}. Which is right?`,
      choices: [{ label: there, set: { value: writeQuantity(marked, 'F') } }],
    },
  ];
};

const takes = (low: number, high: number, part: PartOfLine): boolean =>
  part.capacitance === undefined || (part.capacitance.typ >= low && part.capacitance.typ <= high);

const askType = (catalogue: Catalogue, part: PartOfLine, reading: Reading | undefined): Ask[] => {
  if (part.type !== undefined && Object.hasOwn(catalogue.types, part.type)) return [];
  const suggested = (reading?.types ?? []).flatMap((id) => catalogue.types[id] ?? []);
  const made = Object.values(catalogue.types).filter((row) =>
    takes(row.old_c_min, row.old_c_max, part),
  );
  const question =
    part.type === undefined
      ? 'What type of capacitor is it?'
      : `“${part.type}” is not a type that is known here. What type of capacitor is it?`;
  const rows = suggested.length > 0 ? suggested : made;
  return [
    {
      about: 'type',
      question,
      choices: rows.map(({ id, name }) => ({ label: name, set: { type: id } })),
    },
  ];
};

/** Positions where the type is met and the value is usual, those nearest to their reference first. */
const askPosition = (catalogue: Catalogue, part: PartOfLine): Ask[] => {
  if (part.position !== undefined && Object.hasOwn(catalogue.positions, part.position)) return [];
  const type = part.type === undefined ? undefined : catalogue.types[part.type];
  const farness = (reference: number): number =>
    Math.abs(Math.log((part.capacitance?.typ ?? reference) / reference));
  const rows = Object.values(catalogue.positions)
    .filter((row) => takes(row.usual_c_min, row.usual_c_max, part))
    .filter((row) => type === undefined || pairing(catalogue, type, row).met)
    .sort((a, b) => farness(a.reference_c) - farness(b.reference_c));
  const question =
    part.position === undefined
      ? 'Where does it sit?'
      : `“${part.position}” is not a position that is known here. Where does it sit?`;
  return [
    {
      about: 'position',
      question,
      choices: rows.map(({ id, name }) => ({ label: name, set: { position: id } })),
    },
  ];
};

/**
 * What a line means. What is typed holds; a marking that reads in one way fills what is not typed.
 * Whatever is not sure is asked, and a position is only ever offered. Never throws.
 */
export const understoodLine = (catalogue: Catalogue, line: Line): Understood => {
  const readings = readingsOf(catalogue, line);
  const settled = settledOf(readings);
  const part = filled(line, settled);
  const asks = [...askMarking(line, readings), ...askValue(part, settled)];
  if (part.kind === 'capacitor')
    asks.push(...askType(catalogue, part, settled), ...askPosition(catalogue, part));
  return { part, asks };
};

/** The same for `planJob`, which asks nothing. */
export const understandWith =
  (catalogue: Catalogue): Understand =>
  (line) =>
    understoodLine(catalogue, line).part;
