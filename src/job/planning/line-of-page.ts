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
  type: TypeId;
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
  const row = catalogue.kindTypes[type];
  const columns = row === undefined ? COLUMNS.capacitor : COLUMNS.kind;
  const {
    list: [only, ...others],
  } = expandDesignators(line.designators);
  const setting = only !== undefined && others.length === 0 ? settingInAddress(query) : undefined;
  const conditions = conditionIds(catalogue, position).flatMap((id) =>
    said(id) === '' || (setting !== undefined && isOfSetting(id)) ? [] : [[id, said(id)] as const],
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
    conditions: Object.fromEntries(conditions),
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
