/** A part of the code, and the tests that bear on it and are quick enough to be run for each mutant. */
export interface Group {
  /** Files whose mutants are made, as patterns from the project's folder. */
  readonly code: readonly string[];
  /** Test files that may tell a mutant from the code; which of their tests meet one is measured. */
  readonly tests: readonly string[];
}

const engine = (name: string): string => `tests/engine/${name}/*.test.ts`;
const published = (name: string): string => `tests/published/${name}.test.ts`;

const whole = (
  folder: string,
  tests: readonly string[],
  without: readonly string[] = [],
): [string, Group] => [
  folder,
  {
    code: [
      `src/${folder}/**/*.ts`,
      ...['src/**/*.generated.ts', ...without].map((one) => `!${one}`),
    ],
    tests,
  },
];

/** Groups by the folder of `src/` that they cover; DEVELOPERS.md tells their scores. */
export const groups: Readonly<Record<string, Group>> = Object.fromEntries([
  whole('engine/equations', [engine('equations'), published('equations*')]),
  whole('engine/quantities', ['tests/engine/quantities/!(format-slowly).test.ts']),
  // The test of what writes the series down runs none of this code.
  whole('engine/values', [
    'tests/engine/values/!(series).test.ts',
    published('e-series'),
    published('combinations'),
  ]),
  whole('engine/sizes', ['tests/engine/sizes/!(slice).test.ts', published('sizes')]),
  whole('engine/assessment', [
    'tests/engine/assessment/!(all-pairs|ranking|trial|sureness-everywhere).test.ts',
    'tests/engine/candidates/combinations.test.ts',
    published('rules'),
  ]),
  whole('engine/candidates', ['tests/engine/candidates/!(*-properties).test.ts']),
  whole('engine/triage', [engine('triage')]),
  whole('engine/reforming', [engine('reforming')]),
  whole('engine/findings', ['tests/engine/findings/!(widening).test.ts', published('heating')]),
  whole('engine/markings', [
    'tests/engine/markings/**/!(properties|worn).test.ts',
    published('markings'),
    published('resistor-markings'),
  ]),
  whole('engine/colours', [
    'tests/engine/colours/!(properties|painted-slowly).test.ts',
    published('colours'),
  ]),
  whole('engine/kinds', [
    engine('kinds'),
    'tests/engine/sums/filled-kind-sum.test.ts',
    published('resistors'),
  ]),
  whole('engine/devices', ['tests/engine/devices/!(answer|search).test.ts', published('devices')]),
  whole('engine/look', [engine('look'), published('look')]),
  whole('engine/positions', [engine('positions')]),
  whole('engine/printed', ['tests/engine/printed/!(printed-slowly).test.ts']),
  whole('engine/sums', [
    'tests/engine/sums/!(every-sum-widely|fetched-alone|filled-kind-sum|filled-sum).test.ts',
    published('{bench-sums,sum-equations}'),
  ]),
  // Before the folder that it stands in, so that it is taken for the narrower of the two.
  whole('catalogue/slices', ['tests/catalogue/slices/!(slice).test.ts']),
  // The tests on made tables: a copy of the real ones takes a second to read and to check.
  whole(
    'catalogue',
    ['tests/catalogue/{checks,reading}/*.test.ts', 'tests/data/{read-table,seals,settle}.test.ts'],
    ['src/catalogue/slices/**'],
  ),
]);
