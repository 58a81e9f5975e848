import { describe, expect, test } from 'vitest';
import { loadCatalogue, readFolder, type Tables } from '../../src/catalogue/index.ts';
import { figuresFor } from '../../src/engine/devices/known.ts';
import { evidenceOf } from '../../src/evidence/evidence.ts';
import { realFolder } from '../data/broken-copy.ts';

const { tables } = readFolder(realFolder);
const evidence = evidenceOf(tables);

/** Every table as it is, but figures as a change makes them. */
const withFigures = (
  change: (figure: Record<string, unknown>) => Record<string, unknown> | undefined,
): Tables => ({
  ...tables,
  'figures.csv': {
    ...tables['figures.csv'],
    rows: tables['figures.csv'].rows.flatMap((row) => {
      const value = row.value && change(row.value);
      return value === undefined ? [] : [{ ...row, value: value as typeof row.value }];
    }),
  } as Tables['figures.csv'],
});

const standsIn = (all: Tables, type: string, property: string) =>
  evidenceOf(all).decisive.find((one) => one.type === type && one.property === property)?.stands;

describe('the evidence', () => {
  test('counts each row with a basis once', () => {
    const withBasis = Object.values(tables).flatMap(({ rows }) =>
      rows.filter(({ cells }) => 'basis' in cells),
    );
    const counted = evidence.rows.reduce(
      (sum, row) => sum + row.published + row['common-practice'] + row.memory,
      0,
    );
    expect(counted).toBe(withBasis.length);
  });

  test('speaks of each decisive property of each type made today once', () => {
    const keys = evidence.decisive.map(({ type, property }) => `${type} ${property}`);
    expect(new Set(keys).size).toBe(keys.length);
    expect(keys).toContain('pp-metallized dielectric-absorption');
    expect(keys.some((key) => key.startsWith('paper-wax '))).toBe(false);
    expect(keys.some((key) => key.startsWith('film-unknown '))).toBe(false);
  });

  test('tells of devices only what still rests on memory or practice', () => {
    const { devices } = loadCatalogue();
    const settled = evidence.soughtDevices.flatMap(({ property, devices: of }) =>
      of
        .filter((id) => {
          const device = devices.devices.find((row) => row.id === id);
          if (device === undefined) return true;
          const rows = figuresFor({ devices }, device, property);
          return rows.length > 0 && rows.every(({ basis }) => basis === 'published');
        })
        .map((id) => `${property} of ${id}`),
    );
    expect(evidence.soughtDevices.length).toBeGreaterThan(0);
    expect(settled).toEqual([]);
  });

  test('tells where was looked only for what still wants a source', () => {
    const found = evidence.sought.flatMap(({ property, types }) =>
      types
        .filter(
          (type) =>
            !evidence.decisive.some(
              (one) =>
                one.type === type &&
                one.property === property &&
                one.stands !== 'on two' &&
                one.stands !== 'not applicable',
            ),
        )
        .map((type) => `${property} of ${type}`),
    );
    expect(found).toEqual([]);
  });

  test.each([
    ['no figure at all', () => undefined, 'not known'],
    [
      'figures from memory',
      (figure: Record<string, unknown>) => ({ ...figure, basis: 'memory' }),
      'on memory',
    ],
    [
      'figures of practice',
      (figure: Record<string, unknown>) => ({ ...figure, basis: 'common-practice' }),
      'on practice',
    ],
    [
      'one document',
      (figure: Record<string, unknown>) => ({
        ...figure,
        basis: 'published',
        source: 'wima-absorption',
      }),
      'on one',
    ],
  ])('says what a property rests on: %s', (_what, change, stands) => {
    expect(standsIn(withFigures(change), 'pet-metallized', 'dielectric-absorption')).toBe(stands);
  });

  test('takes no publisher without a name for a second one', () => {
    const nameless = { publisher: 'maker not named on the page' };
    const sources = (second: Record<string, string>): Tables => ({
      ...tables,
      'sources.csv': {
        ...tables['sources.csv'],
        rows: tables['sources.csv'].rows.map((row) =>
          row.value?.id === 'wima-absorption' || row.value === undefined
            ? row
            : { ...row, value: { ...row.value, ...second } },
        ),
      },
    });
    const property = 'dielectric-absorption';
    const found = evidence.decisive.find(
      (one) => one.property === property && one.stands === 'on two',
    );
    const type = found?.type ?? '';
    expect(standsIn(sources({}), type, property)).toBe('on two');
    expect(standsIn(sources(nameless), type, property)).toBe('on one');
  });

  test('lists every figure from memory and every disagreement', () => {
    const figures = tables['figures.csv'].rows.map(({ cells }) => cells);
    expect(evidence.remembered).toHaveLength(
      figures.filter(({ basis, status }) => basis === 'memory' && status === 'known').length,
    );
    expect(evidence.disagreements).toHaveLength(
      figures.filter(({ disagreement }) => disagreement !== '').length,
    );
  });
});
