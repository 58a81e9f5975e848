import {
  formatValue,
  usualNumbers,
  type Catalogue,
  type Habit,
  type Unit,
} from '../engine/index.ts';
import type { ConditionDefinitionRow } from '../schemas/positions.ts';
import type { DeviceRow, UseRow } from '../schemas/devices.ts';
import { fieldWith, type Field } from '../substitution/field.ts';
import { readRange, takerOf, type Rejected } from '../substitution/typed-numbers.ts';
import { withArticle } from './answer.ts';

/** One number of a use that a visitor may change. */
export interface DeviceField {
  definition: ConditionDefinitionRow;
  unit: Unit;
  /** Its usual number here, SI. */
  usual: number;
  /** Whether that follows from what the old part bears. */
  isBorne: boolean;
  /** Where it comes from, in words. */
  from: string;
}

/**
 * The numbers of a use, in the order of its rows.
 * @param old the device that is being replaced, where there is one
 */
export const deviceFields = (catalogue: Catalogue, use: UseRow, old?: DeviceRow): DeviceField[] =>
  usualNumbers(catalogue, use, old).flatMap(({ condition, range, ofBorne }) => {
    const definition = catalogue.devices.conditionDefinitions.find(({ id }) => id === condition);
    const unit = definition && catalogue.units[definition.unit];
    if (definition === undefined || unit === undefined) return [];
    const whose = withArticle(old?.name ?? '');
    const from = {
      all: `what ${whose} bears`,
      half: `half of what ${whose} bears`,
      needed: `what ${whose} itself needs`,
      none: 'usual',
    }[ofBorne ?? 'none'];
    const isBorne = ofBorne !== undefined;
    return [{ definition, unit: unit.si as Unit, usual: range.typ, isBorne, from }];
  });

/** The numbers of a use as somebody gave them, and what of them could not be understood. */
export interface DeviceAsked {
  /** SI, by condition; what is left out is usual. */
  given: Record<string, number>;
  rejected: Record<string, Rejected>;
}

/** What an address says of the numbers of a use. */
export const readDeviceNumbers = (
  catalogue: Catalogue,
  use: UseRow,
  query: URLSearchParams,
): DeviceAsked => {
  const { take, rejected } = takerOf(query);
  const given: Record<string, number> = {};
  for (const { definition, unit } of deviceFields(catalogue, use)) {
    const factor = catalogue.units[definition.unit]?.factor ?? 1;
    const measure = {
      unit,
      bare: definition.unit,
      lowest: definition.lowest * factor,
      highest: definition.highest * factor,
    };
    const range = take(definition.id, (text) => readRange(text, measure));
    if (range !== undefined) given[definition.id] = range.typ;
  }
  return { given, rejected };
};

/** Every number that the page of a device in a use rests on, as fields of a form. */
export const deviceFieldsFor = (
  catalogue: Catalogue,
  { old, use }: { old: DeviceRow; use: UseRow },
  { given, rejected }: DeviceAsked,
  habit?: Habit,
): Field[] =>
  deviceFields(catalogue, use, old)
    .map(({ definition: { id, name }, unit, usual, isBorne }): Omit<Field, 'message'> => {
      const own = given[id];
      const text = formatValue(own ?? usual, unit, habit);
      const from = own !== undefined ? 'given' : isBorne ? 'derived' : 'default';
      return { key: id, group: 'circuit', label: name, text, from, note: '' };
    })
    .map(fieldWith(rejected));
