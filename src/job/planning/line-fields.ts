import { deviceFields } from '../../device-view/numbers.ts';
import { formatValue, signsOf, type Catalogue, type Habit } from '../../engine/index.ts';
import { fieldsFor, readAddress } from '../../substitution/address.ts';
import { conditionIds } from '../../substitution/condition-fields.ts';
import type { FieldGroup } from '../../substitution/field.ts';
import { partKeys } from '../../substitution/keys.ts';
import { kindFieldsFor, readKindAddress } from '../../substitution/kind-address.ts';
import { isJudgedByReading } from '../../substitution/kind-judged.ts';
import { evidenceFields } from '../../substitution/old-part.ts';
import { resistanceField, resistanceHint } from '../../substitution/old-resistance.ts';
import type { Job, Line } from '../model/job.ts';
import type { Family, PartOfLine } from '../understanding/part-of-line.ts';
import { addressOfLine, type Placed } from './line-request.ts';

/** A number that a line may say, with what counts where it says nothing. */
export interface LineField {
  /** `condition` and the id of one, or `found` and the name of a reading. */
  key: `condition ${string}` | `found ${string}`;
  group: FieldGroup | 'found';
  label: string;
  /** As typed; nothing where the line does not say. */
  text: string;
  /** What counts instead, or how to write it. */
  hint: string;
}

/** A sign that may be seen on the old part. */
export interface LineSign {
  id: string;
  sign: string;
  seen: boolean;
}

/** All that may be said of one line besides the cells of the parts list. */
export interface LineFields {
  fields: readonly LineField[];
  signs: readonly LineSign[];
}

const ORIGIN = { given: 'whole board', default: 'usual', derived: 'from the old part' } as const;

type Fields = (
  catalogue: Catalogue,
  of: { line: Line; part: PartOfLine; whole: Job['whole'] },
  placed: Placed,
  habit?: Habit,
) => LineFields;

const said = (line: Line, id: string): string =>
  Object.hasOwn(line.conditions, id) ? (line.conditions[id] ?? '') : '';

/** What a meter reads on an old part, where rules judge its kind by that. */
const readingOfKind = (catalogue: Catalogue, line: Line, type: string): LineField[] => {
  const kind = catalogue.kinds[catalogue.kindTypes[type]?.kind ?? ''];
  if (kind === undefined || !isJudgedByReading(catalogue, kind)) return [];
  const { reading, label } = resistanceField;
  const text = line.found[reading];
  return [{ key: `found ${reading}`, group: 'found', label, text, hint: resistanceHint(kind) }];
};

/** The conditions of a position of a kind besides capacitors, and what it reads; nothing judges such a part by signs. */
const fieldsOfKind: Fields = (catalogue, { line, part, whole }, { type, position }, habit) => {
  const query = addressOfLine({ ...line, conditions: {} }, whole);
  const { request, rejected } = readKindAddress(catalogue, type, position, query);
  const { value, tolerance, rating } = part;
  const original = { type, value, tolerance, rating };
  const all = kindFieldsFor(catalogue, { request: { ...request, original }, rejected }, habit);
  const own = new Set(conditionIds(catalogue, position));
  return {
    fields: all
      .filter(({ key }) => own.has(key))
      .map(({ key, group, label, text, from }): LineField => ({
        key: `condition ${key}`,
        group,
        label,
        text: said(line, key),
        hint: `${ORIGIN[from]}: ${text}`,
      }))
      .concat(readingOfKind(catalogue, line, type)),
    signs: [],
  };
};

/** The numbers of the use that a device is put to. */
const fieldsOfDevice: Fields = (catalogue, { line }, { type, position }, habit) => {
  const use = catalogue.devices.uses.find(({ id }) => id === position);
  const old = catalogue.devices.devices.find(({ id }) => id === type);
  const fields = use === undefined ? [] : deviceFields(catalogue, use, old);
  return {
    fields: fields.map(({ definition, unit, usual, from }) => ({
      key: `condition ${definition.id}`,
      group: definition.group,
      label: definition.name,
      text: said(line, definition.id),
      hint: `${from}: ${formatValue(usual, unit, habit)}`,
    })),
    signs: [],
  };
};

/** The conditions of a line's position and the readings of its old part, as fields. */
const fieldsOfCapacitor: Fields = (catalogue, { line, part, whole }, { type, position }, habit) => {
  const { capacitance, tolerance, ratedVoltage, voltageKind } = part;
  // What counts where the line itself says nothing.
  const silent = { ...line, conditions: {}, found: { ...line.found, age: '' } };
  const { request, rejected } = readAddress(
    catalogue,
    type,
    position,
    addressOfLine(silent, whole),
  );
  const original = { ...request.original, capacitance, tolerance, ratedVoltage, voltageKind };
  const all = fieldsFor(catalogue, { request: { ...request, original }, rejected }, habit);
  const own = new Set(conditionIds(catalogue, position));
  const conditions = all
    .filter(({ key }) => own.has(key))
    .map(({ key, group, label, text, from }): LineField => {
      const hint = `${ORIGIN[from]}: ${text}`;
      return { key: `condition ${key}`, group, label, text: said(line, key), hint };
    });
  const age = all.find(({ key }) => key === partKeys.age);
  const found = [
    { reading: 'age' as const, label: 'Age', hint: `usual: ${age?.text ?? 'not known'}` },
    ...evidenceFields,
  ].map(({ reading, label, hint }): LineField => {
    return { key: `found ${reading}`, group: 'found', label, text: line.found[reading], hint };
  });
  const signs = signsOf(catalogue, type, position).map(({ id, sign }) => ({
    id,
    sign,
    seen: line.found.signs.includes(id),
  }));
  return { fields: [...conditions, ...found], signs };
};

const FIELDS: Readonly<Record<Family, Fields>> = {
  capacitor: fieldsOfCapacitor,
  kind: fieldsOfKind,
  device: fieldsOfDevice,
};

/** What may be said of a line, by the family of its part; nothing where its catalogue lacks it. */
export const fieldsOfLine = (
  catalogue: Catalogue,
  of: { line: Line; part: PartOfLine; whole: Job['whole'] },
  habit?: Habit,
): LineFields | undefined => {
  const { family, type, position } = of.part;
  if (family === undefined || type === undefined || position === undefined) return undefined;
  const { types, positions, kindTypes, kindPositions } = catalogue;
  const isKnown = {
    capacitor: () => Object.hasOwn(types, type) && Object.hasOwn(positions, position),
    kind: () => Object.hasOwn(kindTypes, type) && Object.hasOwn(kindPositions, position),
    device: () => catalogue.devices.uses.some(({ id }) => id === position),
  }[family]();
  return isKnown ? FIELDS[family](catalogue, of, { type, position }, habit) : undefined;
};

/** The fields of several lines at once; a text that is not the same in all of them is left empty. */
export const commonFields = (all: readonly LineFields[]): LineFields => {
  const fields = Map.groupBy(
    all.flatMap((one) => one.fields),
    ({ key }) => key,
  );
  const signs = Map.groupBy(
    all.flatMap((one) => one.signs),
    ({ id }) => id,
  );
  const alike = (values: readonly unknown[]): boolean => new Set(values).size === 1;
  return {
    fields: [...fields.values()].flatMap((same) => {
      const [first] = same;
      if (first === undefined) return [];
      if (!alike(same.map(({ text }) => text)))
        return [{ ...first, text: '', hint: 'differs between these rows' }];
      const hint = alike(same.map((one) => one.hint))
        ? first.hint
        : 'usual: differs between these rows';
      return [{ ...first, hint }];
    }),
    signs: [...signs.values()].flatMap((same) => {
      const [first] = same;
      return first === undefined ? [] : [{ ...first, seen: same.every(({ seen }) => seen) }];
    }),
  };
};

const isReading = (line: Line, name: string): name is Exclude<keyof Line['found'], 'signs'> =>
  name !== 'signs' && Object.hasOwn(line.found, name);

/** The line with the text of one field; an empty one says nothing any more. */
export const withField = (line: Line, key: string, text: string): Line => {
  const [what, name = ''] = key.split(' ');
  if (what === 'found')
    return isReading(line, name) ? { ...line, found: { ...line.found, [name]: text } } : line;
  const others = Object.entries(line.conditions).filter(([id]) => id !== name);
  const said = text.trim() === '' ? [] : [[name, text] as const];
  return { ...line, conditions: Object.fromEntries([...others, ...said]) };
};

/** The line with a sign seen, or no longer. */
export const withSign = (line: Line, id: string, seen: boolean): Line => {
  const others = line.found.signs.filter((one) => one !== id);
  return { ...line, found: { ...line.found, signs: seen ? [...others, id] : others } };
};
