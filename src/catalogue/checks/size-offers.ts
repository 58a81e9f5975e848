import { valuesOf, type Tables } from '../read-folder.ts';
import type { Fault } from '../fault.ts';
import { cellFault, type Check } from './check.ts';
import { byId, goodRows } from './lookups.ts';

const rule = 'size-of-offer';

const FILES = ['bodies.csv', 'pulse-ratings.csv'] as const;

const styleFaults = (tables: Tables, file: (typeof FILES)[number]): Fault[] => {
  const styles = new Map<string, Set<string>>();
  for (const { type, style } of valuesOf(tables, 'market.csv')) {
    styles.set(type, (styles.get(type) ?? new Set()).add(style));
  }
  return goodRows(tables, file).flatMap((row) => {
    const offered = styles.get(row.value.type);
    if (offered === undefined || offered.has(row.value.style)) return [];
    return [
      cellFault(rule, file, row, 'style', {
        wrong: `market.csv offers no such style of ${row.value.type}`,
        expected: [...offered].join(' or '),
      }),
    ];
  });
};

const voltageFaults = (tables: Tables, file: (typeof FILES)[number]): Fault[] => {
  const rated = valuesOf(tables, 'voltages.csv');
  const types = byId(valuesOf(tables, 'types.csv'));
  // Families of the past, such as paper, have no rated voltages of their own in the table.
  const families = new Set(rated.flatMap((row) => row.families));
  return goodRows(tables, file).flatMap((row) => {
    const { type, voltage, voltage_kind: kind } = row.value;
    const family = types.get(type)?.family;
    const known = rated.some(
      ({ volts, kind: other, families }) =>
        volts === voltage &&
        other === kind &&
        (families.length === 0 || (family !== undefined && families.includes(family))),
    );
    if (known || family === undefined || !families.has(family)) return [];
    return [
      cellFault(rule, file, row, 'voltage', {
        wrong: `${voltage} V ${kind} is not a rated voltage of ${family} parts`,
        expected: 'a voltage of voltages.csv',
      }),
    ];
  });
};

export const sizeOffers: Check = {
  id: rule,
  about: 'Sizes and pulse ratings are of styles that are offered and of voltages that are rated.',
  needs: ['bodies.csv', 'pulse-ratings.csv', 'market.csv', 'voltages.csv', 'types.csv'],
  check: (tables) =>
    FILES.flatMap((file) => [...styleFaults(tables, file), ...voltageFaults(tables, file)]),
};
