import type { Fault } from '../fault.ts';
import type { TableName, Tables } from '../read-folder.ts';
import { cellFault, type Check } from './check.ts';
import { ofEachTable } from './remembered.ts';

const rule = 'number-order';

/** Columns that hold numbers in rising order wherever they hold any. */
interface Order {
  file: TableName;
  columns: readonly string[];
  /** Two that are equal are a fault too. */
  strict?: true;
}

export const orders: readonly Order[] = [
  { file: 'figures.csv', columns: ['min', 'typ', 'max'] },
  { file: 'conditions.csv', columns: ['min', 'typ', 'max'] },
  { file: 'position-notes.csv', columns: ['min', 'typ', 'max'] },
  { file: 'demands.csv', columns: ['limit', 'limit_high'] },
  { file: 'market.csv', columns: ['c_min', 'c_max'] },
  { file: 'bodies.csv', columns: ['c_min', 'c_max'] },
  { file: 'pulse-ratings.csv', columns: ['c_min', 'c_max'] },
  { file: 'series-resistance.csv', columns: ['v_min', 'v_max'] },
  { file: 'series-resistance.csv', columns: ['esr_min', 'esr_typ', 'esr_max'] },
  { file: 'ripple-by-frequency.csv', columns: ['v_min', 'v_max'] },
  { file: 'ripple-by-frequency.csv', columns: ['c_min', 'c_max'], strict: true },
  { file: 'types.csv', columns: ['old_c_min', 'old_c_max'] },
  { file: 'positions.csv', columns: ['usual_c_min', 'reference_c', 'roomy_c', 'usual_c_max'] },
  { file: 'positions.csv', columns: ['value_low', 'value_high'] },
  { file: 'properties.csv', columns: ['lowest', 'highest'], strict: true },
  { file: 'plausible.csv', columns: ['lowest', 'highest'] },
  { file: 'condition-definitions.csv', columns: ['lowest', 'highest'], strict: true },
  { file: 'derating.csv', columns: ['from_c', 'to_c'], strict: true },
  { file: 'derating.csv', columns: ['above_v', 'up_to_v'], strict: true },
  { file: 'category-voltages.csv', columns: ['category_v', 'rated_v'], strict: true },
  { file: 'category-voltages.csv', columns: ['from_c', 'to_c'], strict: true },
  { file: 'triage.csv', columns: ['v_from', 'v_to'], strict: true },
  { file: 'leakage-limits.csv', columns: ['v_from', 'v_to'], strict: true },
  { file: 'reforming.csv', columns: ['v_from', 'v_to'], strict: true },
  { file: 'kinds/kinds.csv', columns: ['lowest', 'highest'], strict: true },
  { file: 'kinds/kinds.csv', columns: ['rating_lowest', 'rating_highest'], strict: true },
  { file: 'kinds/types.csv', columns: ['old_min', 'old_max'] },
  { file: 'kinds/positions.csv', columns: ['usual_min', 'reference', 'usual_max'] },
  { file: 'kinds/positions.csv', columns: ['value_low', 'value_high'] },
  { file: 'kinds/offers.csv', columns: ['value_min', 'value_max'] },
  { file: 'kinds/properties.csv', columns: ['lowest', 'highest'], strict: true },
  { file: 'kinds/figures-by-value.csv', columns: ['value_min', 'value_max'] },
  { file: 'kinds/figures-by-value.csv', columns: ['rating_min', 'rating_max'] },
  { file: 'kinds/figures-by-value.csv', columns: ['min', 'typ', 'max'] },
  { file: 'devices/figures.csv', columns: ['min', 'typ', 'max'] },
  { file: 'devices/properties.csv', columns: ['lowest', 'highest'], strict: true },
  { file: 'devices/conditions.csv', columns: ['min', 'typ', 'max'] },
  { file: 'devices/condition-definitions.csv', columns: ['lowest', 'highest'], strict: true },
  { file: 'devices/demands.csv', columns: ['limit', 'limit_high'] },
  { file: 'devices/number-systems.csv', columns: ['fewest', 'most'] },
  { file: 'job/bench-fields.csv', columns: ['lowest', 'highest'], strict: true },
  { file: 'job/lead-forming.csv', columns: ['lead_from', 'lead_to'], strict: true },
  { file: 'job/package-looks.csv', columns: ['pins_from', 'pins_to'] },
  { file: 'job/usual-parts.csv', columns: ['value_min', 'value_max'] },
  { file: 'job/usual-parts.csv', columns: ['volts_min', 'volts_max'] },
  { file: 'job/usual-places.csv', columns: ['value_min', 'value_max'] },
  { file: 'job/usual-places.csv', columns: ['rating_min', 'rating_max'] },
  { file: 'look/questions.csv', columns: ['lowest', 'highest'], strict: true },
  { file: 'look/ranges.csv', columns: ['low', 'usual_low', 'usual_high', 'high'] },
  { file: 'look/signs.csv', columns: ['low', 'high'], strict: true },
  { file: 'markings/bodies.csv', columns: ['value_min', 'value_max'] },
  { file: 'markings/resistor-forms.csv', columns: ['figures_min', 'figures_max'] },
  { file: 'markings/resistor-forms.csv', columns: ['value_min', 'value_max'] },
  { file: 'markings/resistor-forms.csv', columns: ['percent_min', 'percent_max'] },
  { file: 'markings/value-forms.csv', columns: ['ratio_min', 'ratio_max'], strict: true },
  { file: 'markings/value-forms.csv', columns: ['figures_min', 'figures_max'] },
  { file: 'markings/value-forms.csv', columns: ['value_min', 'value_max'] },
  { file: 'markings/value-forms.csv', columns: ['years_from', 'years_to'], strict: true },
  { file: 'markings/tolerance-letters.csv', columns: ['from_f', 'below_f'], strict: true },
  { file: 'markings/class1-codes.csv', columns: ['min_ppm', 'typ_ppm', 'max_ppm'] },
  { file: 'markings/class2-codes.csv', columns: ['t_min', 't_max'], strict: true },
  { file: 'markings/class2-codes.csv', columns: ['low', 'high'] },
  { file: 'markings/class2-signs.csv', columns: ['low', 'high'] },
  { file: 'markings/temperature-systems.csv', columns: ['t_min', 't_ref', 't_max'] },
  { file: 'markings/voltage-codes.csv', columns: ['volts_min', 'volts_max'] },
  { file: 'markings/point-letters.csv', columns: ['number_min', 'number_max'] },
  { file: 'markings/printed-units.csv', columns: ['number_min', 'number_max'] },
  { file: 'markings/potentiometer-tapers.csv', columns: ['half_min_percent', 'half_max_percent'] },
  { file: 'markings/date-schemes.csv', columns: ['years_from', 'years_to'] },
  { file: 'markings/colour-schemes.csv', columns: ['value_min', 'value_max'] },
  { file: 'markings/colour-meanings.csv', columns: ['low', 'value', 'high'] },
  { file: 'markings/colour-meanings.csv', columns: ['from_f', 'below_f'], strict: true },
];

const orderFaults = (tables: Tables, { file, columns, strict }: Order): Fault[] =>
  tables[file].rows.flatMap((row) => {
    const value: Readonly<Record<string, unknown>> = row.value ?? {};
    const numbers = columns.flatMap((column) => {
      const number = value[column];
      return typeof number === 'number' ? [{ column, number }] : [];
    });
    return numbers.slice(1).flatMap(({ column, number }, index) => {
      const before = numbers[index];
      if (before === undefined || number > before.number) return [];
      if (number === before.number && strict !== true) return [];
      const least = strict === true ? 'above' : 'not below';
      return [
        cellFault(rule, file, row, column, {
          wrong: `${column} against ${before.column}`,
          expected: `a number ${least} ${before.number}`,
        }),
      ];
    });
  });

export const numberOrder: Check = {
  id: rule,
  about: 'The numbers of a range rise from its least to its greatest.',
  needs: [],
  check: ofEachTable((tables, file) =>
    orders.filter((order) => order.file === file).flatMap((order) => orderFaults(tables, order)),
  ),
};
