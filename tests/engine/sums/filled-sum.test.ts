import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { slicePosition } from '../../../src/catalogue/slices/slice-position.ts';
import {
  allPairings,
  circumstancesOf,
  filledSum,
  findStandIns,
} from '../../../src/engine/index.ts';
import { allSums } from '../../../src/engine/sums/index.ts';
import { readInputs } from '../../../src/engine/sums/read-inputs.ts';
import { headlineOf, resultOf } from '../../../src/engine/sums/run-sum.ts';

const catalogue = loadCatalogue();
const sumOf = (id: string) => {
  const sum = allSums.find((one) => one.id === id);
  if (sum === undefined) throw new Error(`no sum ${id}`);
  return sum;
};
const facts = new Map(allSums.map((sum) => [sum.id, sum.facts?.(catalogue)]));

/** Old parts that between them ask for every finding that leads to a sum. */
const positions = Object.keys(catalogue.positions).map((position) => {
  const pairing = allPairings(catalogue).find(
    (one) => one.position === position && one.pairing.met,
  );
  if (pairing === undefined) throw new Error(`nothing is met in ${position}`);
  return { position, type: pairing.type };
});

const filledIn = ({ position, type }: { position: string; type: string }) => {
  const slice = slicePosition(catalogue, position);
  const request = { original: { type }, position };
  const circumstances = circumstancesOf(slice, request);
  return findStandIns(slice, request).flatMap((assessment) =>
    assessment.findings.flatMap((finding) => {
      const filled = filledSum(finding, assessment, circumstances);
      return filled === undefined
        ? []
        : [
            {
              finding,
              candidate: assessment.candidate,
              filled,
              conditions: circumstances.conditions,
            },
          ];
    }),
  );
};

/** What a finding comes to by the outputs of its sum, for those whose figure the sum gives as well. */
const SAME: Readonly<
  Record<
    string,
    (sum: (output: string) => number, circuit: (condition: string) => number) => number
  >
> = {
  'hold-step': (sum) => sum('step'),
  absorption: (sum) => sum('error'),
  droop: (sum) => sum('total'),
  drift: (sum) => sum('drift'),
  'pitch-drift': (sum) => sum('cents'),
  'filter-shift': (sum) => sum('frequencyMoved'),
  'time-shift': (sum) => sum('timeMoved'),
  'tuning-shift': (sum) => sum('shift'),
  corner: (sum) => sum('corner'),
  phase: (sum) => sum('phase'),
  impedance: (sum) => sum('impedance'),
  'self-resonance': (sum) => sum('resonance'),
  'ripple-voltage': (sum) => sum('ripple'),
  inrush: (sum) => sum('inrush'),
  acquisition: (sum) => sum('time'),
  discharge: (sum) => sum('constant'),
  'residual-voltage': (sum) => sum('left'),
  'own-surge': (sum) => sum('share'),
  'ripple-current': (sum) => sum('share'),
  'touch-current': (sum) => sum('current'),
  'leakage-current': (sum) => sum('current'),
  pulse: (sum) => sum('share'),
  'ripple-heating': (sum) => sum('rise'),
  'esr-window': (sum) => sum('whole'),
  distortion: (sum) => sum('third'),
  'regulator-dump': (sum, circuit) => sum('share') * circuit('diode-free'),
  life: (sum, circuit) => (circuit('years') * circuit('duty')) / sum('life'),
};

const SHIFTS: ReadonlySet<string> = new Set(['filter-shift', 'time-shift', 'tuning-shift']);

describe('a finding fills in its sum', () => {
  const compared = new Set<string>();
  const reached = new Set<string>();

  test.each(positions)('in $position', (pair) => {
    for (const { finding, filled, candidate, conditions } of filledIn(pair)) {
      reached.add(filled.sum);
      const sum = sumOf(filled.sum);
      const { given, faults } = readInputs(sum, facts.get(sum.id), filled.inputs);
      expect(faults, `${sum.id} for ${candidate.type}: ${JSON.stringify(filled.inputs)}`).toEqual(
        {},
      );
      const { outputs } = resultOf(sum, given, facts.get(sum.id));
      expect(outputs[headlineOf(sum)], sum.id).toBeDefined();
      const again = SAME[finding.finding]?.(
        (output) => outputs[output]?.typ ?? NaN,
        (condition) => conditions[condition]?.typ ?? NaN,
      );
      if (again === undefined) continue;
      compared.add(finding.finding);
      const figure = finding.standIn?.typ ?? NaN;
      const what = `${finding.finding} of ${candidate.type}`;
      // A shift is a small difference, of which the digits in a field leave less.
      if (SHIFTS.has(finding.finding)) expect((1 + again) / (1 + figure), what).toBeCloseTo(1, 3);
      else if (figure === 0) expect(again, what).toBeCloseTo(0, 9);
      else expect(again / figure, what).toBeCloseTo(1, 2);
    }
  });

  test('and both come to the same where they give the same figure', () => {
    expect([...compared].toSorted()).toEqual(Object.keys(SAME).toSorted());
  });

  test('for every sum that findings lead to', () => {
    const led = catalogue.demands
      .filter(({ position }) => position in catalogue.positions)
      .map(({ finding }) => catalogue.findings[finding]?.sum ?? '')
      .filter((sum) => sum !== '');
    expect([...reached].toSorted()).toEqual([...new Set(led)].toSorted());
  });
});
