import { valuesOf } from '../read-folder.ts';
import { cellFault, type Check } from './check.ts';
import { byId, goodRows } from './lookups.ts';

const rule = 'rated-voltage';

/** Whether a note speaks of a number, as in "1.5 kV" it does not of 5. */
const speaksOf = (note: string, volts: number): boolean =>
  (note.match(/\d+(?:\.\d+)?/g) ?? []).some((found) => Number(found) === volts);

export const marketVoltages: Check = {
  id: rule,
  about: 'An offer is for rated voltages that voltages.csv has, or its note speaks of the others.',
  needs: ['market.csv', 'voltages.csv', 'types.csv'],
  check: (tables) => {
    const rated = valuesOf(tables, 'voltages.csv');
    const types = byId(valuesOf(tables, 'types.csv'));
    return goodRows(tables, 'market.csv').flatMap((row) => {
      const family = types.get(row.value.type)?.family;
      if (family === undefined) return [];
      const fits = (volts: number): boolean =>
        rated.some(
          (voltage) =>
            voltage.volts === volts &&
            voltage.kind === row.value.voltage_kind &&
            (voltage.families.length === 0 || voltage.families.includes(family)),
        );
      return row.value.voltages
        .filter((volts) => !fits(volts) && !speaksOf(row.value.note, volts))
        .map((volts) =>
          cellFault(rule, 'market.csv', row, 'voltages', {
            wrong: `${volts} V ${row.value.voltage_kind} is not a rated voltage of ${family} parts`,
            got: String(volts),
            expected: 'a voltage of voltages.csv, or a note that speaks of it',
          }),
        );
    });
  },
};
