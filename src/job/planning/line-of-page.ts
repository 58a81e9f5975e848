import { conditionIds } from '../../substitution/condition-fields.ts';
import { kindPartKeys, partKeys } from '../../substitution/keys.ts';
import { resistanceField } from '../../substitution/old-resistance.ts';
import { evidenceFields, signsKey } from '../../substitution/old-part.ts';
import type { Catalogue, PositionId, TypeId } from '../../engine/index.ts';
import { expandDesignators } from '../model/designators.ts';
import { emptyFitted, LONGEST_TEXT, type Line } from '../model/job.ts';
import { isOfSetting, settingInAddress } from './setting-of-line.ts';

/** A substitution page as what a line of a job says of its part. */
interface Page {
  /** Of a page about a device, the device. */
  type: TypeId;
  /** Of a page about a device, its use. */
  position: PositionId;
  /** What was typed on the page, as its address carries it. */
  query: URLSearchParams;
}

/** A key of the address for each text of a part that a line has a column for. */
const COLUMNS = {
  capacitor: {
    value: partKeys.capacitance,
    tolerance: partKeys.tolerance,
    volts: partKeys.ratedVoltage,
  },
  kind: {
    value: kindPartKeys.value,
    tolerance: kindPartKeys.tolerance,
    volts: kindPartKeys.rating,
  },
} as const;

/** The kind that a parts list puts a device under; nothing of what is no device. */
const kindOfDevice = ({ devices }: Catalogue, type: TypeId): string | undefined => {
  const family = devices.devices.find(({ id }) => id === type)?.family;
  return devices.families.find(({ id }) => id === family)?.kinds[0];
};

const useConditions = ({ devices }: Catalogue, use: string): string[] =>
  devices.conditions.filter(({ position }) => position === use).map(({ condition }) => condition);

/** What was typed for each of some keys of an address; what nobody typed is left out. */
const typedFor = (keys: readonly string[], said: (key: string) => string): Record<string, string> =>
  Object.fromEntries(keys.flatMap((key) => (said(key) === '' ? [] : [[key, said(key)] as const])));

/**
 * The line with what its page says of it, as typed there, what cannot be understood too: the other way
 * about of `pageQuery`. A trimmer's setting goes to the bench sheet of the line's only designator.
 */
export const lineOfPage = (
  catalogue: Catalogue,
  line: Line,
  { type, position, query }: Page,
): Line => {
  const said = (key: string): string => (query.get(key) ?? '').trim().slice(0, LONGEST_TEXT);
  const kind = kindOfDevice(catalogue, type);
  if (kind !== undefined) {
    const conditions = typedFor(useConditions(catalogue, position), said);
    return { ...line, kind, type, position, conditions };
  }
  const row = catalogue.kindTypes[type];
  const columns = row === undefined ? COLUMNS.capacitor : COLUMNS.kind;
  const {
    list: [only, ...others],
  } = expandDesignators(line.designators);
  const setting = only !== undefined && others.length === 0 ? settingInAddress(query) : undefined;
  const asked = conditionIds(catalogue, position).filter(
    (id) => setting === undefined || !isOfSetting(id),
  );
  const readings =
    row === undefined
      ? evidenceFields.map(({ key, reading }) => [reading, said(key)] as const)
      : [[resistanceField.reading, said(resistanceField.key)] as const];
  return {
    ...line,
    kind: row?.kind ?? 'capacitor',
    type,
    position,
    value: said(columns.value),
    tolerance: said(columns.tolerance),
    volts: said(columns.volts),
    conditions: typedFor(asked, said),
    found: {
      ...line.found,
      ...Object.fromEntries(readings),
      age: row === undefined ? said(partKeys.age) : '',
      signs: said(signsKey)
        .split(',')
        .filter((id) => id !== ''),
    },
    fitted:
      only === undefined || setting === undefined
        ? line.fitted
        : { ...line.fitted, [only]: { ...emptyFitted(), preset: setting } },
  };
};
