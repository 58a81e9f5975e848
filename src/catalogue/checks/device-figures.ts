import { FLOAT_ERROR } from '../../engine/quantities/within.ts';
import { valuesOf } from '../read-folder.ts';
import { toSi } from '../to-si.ts';
import { cellFault, type Check } from './check.ts';
import { byId, goodRows, unitsOf } from './lookups.ts';

const rule = 'device-figure';

/** Room for the rounding of unit conversions at the very edge of a bound, on either side of zero. */
const room = (bound = 0): number => FLOAT_ERROR * Math.abs(bound);

export const deviceFigures: Check = {
  id: rule,
  about: 'A figure of a device is of a known one, in a unit of its kind, and possible.',
  needs: [
    'devices/figures.csv',
    'devices/devices.csv',
    'devices/series.csv',
    'devices/properties.csv',
    'units.csv',
  ],
  check: (tables) => {
    const units = unitsOf(tables);
    const properties = byId(valuesOf(tables, 'devices/properties.csv'));
    // A device with another fault still is one.
    const owners = new Set(
      [...tables['devices/devices.csv'].rows, ...tables['devices/series.csv'].rows].map(
        ({ cells }) => cells['id'],
      ),
    );
    const file = 'devices/figures.csv';
    return goodRows(tables, file).flatMap((row) => {
      const { of, property: id, unit, min, typ, max } = row.value;
      const fault = (column: string, wrong: string, expected: string) =>
        cellFault(rule, file, row, column, { wrong, expected });
      if (!owners.has(of)) return [fault('of', 'names no device', 'a device or a series')];
      const property = properties.get(id);
      if (property === undefined) return [];
      if (units[unit]?.si !== units[property.unit]?.si)
        return [fault('unit', 'of another kind than its property', `such as ${property.unit}`)];
      const given = [min, typ, max].filter((number) => number !== undefined);
      if (given.length === 0) return [fault('typ', 'has no number', 'min, typ or max')];
      const [lowest, highest] = [property.lowest, property.highest].map(
        (bound) => toSi(bound, property.unit, units) ?? 0,
      );
      const outside = given
        .map((number) => toSi(number, unit, units) ?? 0)
        .some(
          (value) => value < (lowest ?? 0) - room(lowest) || value > (highest ?? 0) + room(highest),
        );
      const span = `${property.lowest} to ${property.highest} ${property.unit}`;
      return outside ? [fault('typ', `${id} cannot be so`, span)] : [];
    });
  },
};
