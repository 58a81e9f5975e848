import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { sliceKindPosition } from '../../../src/catalogue/slices/slice-kind.ts';
import {
  allKindPairings,
  filledKindSum,
  findKindStandIns,
  kindCircumstances,
  type KindPart,
} from '../../../src/engine/index.ts';
import { allSums } from '../../../src/engine/sums/index.ts';
import { readInputs } from '../../../src/engine/sums/read-inputs.ts';
import { resultOf } from '../../../src/engine/sums/run-sum.ts';

const catalogue = loadCatalogue();
const sumOf = (id: string) => {
  const sum = allSums.find((one) => one.id === id);
  if (sum === undefined) throw new Error(`no sum ${id}`);
  return sum;
};

const facts = new Map(allSums.map((sum) => [sum.id, sum.facts?.(catalogue)]));

/** Every sum that the stand-ins for an old part lead to, with the finding that leads to it. */
const filledIn = (type: string, position: string) => {
  const slice = sliceKindPosition(catalogue, position);
  const request = { original: { type }, position };
  const circumstances = kindCircumstances(slice, request);
  return findKindStandIns(slice, request).flatMap((assessment) =>
    assessment.findings.flatMap((finding) => {
      const filled = filledKindSum(finding, assessment, circumstances);
      return filled === undefined
        ? []
        : [{ finding, filled, part: assessment.candidate, conditions: circumstances.conditions }];
    }),
  );
};

type Output = (name: string) => number;
type Condition = (name: string) => number;

/** What a finding comes to by the outputs of its sum. */
const SAME: Readonly<Record<string, (sum: Output, circuit: Condition, part: KindPart) => number>> =
  {
    'resistor-power': (sum) => sum('heat'),
    'power-practice': (sum) => sum('heat'),
    'resistor-voltage': (sum) => sum('ratedLoad'),
    'overload-voltage': (sum, circuit) => circuit('v-surge') / sum('overload'),
    'part-noise': (sum) => sum('total'),
    'voltage-shift': (sum) => sum('change'),
    'setting-transfer': (sum) => sum('fine') / sum('set'),
    'setting-reach': (sum) => sum('newRatio'),
    'divider-current': (sum) => Math.max(sum('track'), sum('current')) / sum('most'),
    'setting-under-load': (sum) => sum('shift'),
    // The usual part jumps half as far as the worst.
    'contact-jump': (sum) => sum('jump') / sum('out') / 2,
  };

describe('a finding about a resistor or trimmer fills in its sum', () => {
  const compared = new Set<string>();
  const reached = new Set<string>();
  const led = catalogue.demands
    .filter(({ position }) => position in catalogue.kindPositions)
    .filter(({ finding }) => catalogue.findings[finding]?.sum !== '');
  const leading = new Set(led.map(({ position }) => position));
  const pairs = allKindPairings(catalogue)
    .filter(({ position, pairing }) => pairing.met && leading.has(position.id))
    .map(({ type, position }) => [type.id, position.id] as const);

  test.each(pairs)('%s in %s', (type, position) => {
    for (const { finding, filled, part, conditions } of filledIn(type, position)) {
      const sum = sumOf(filled.sum);
      reached.add(sum.id);
      const { given, faults } = readInputs(sum, facts.get(sum.id), filled.inputs);
      expect(faults, `${sum.id}: ${JSON.stringify(filled.inputs)}`).toEqual({});
      const { outputs } = resultOf(sum, given, facts.get(sum.id));
      const again = SAME[finding.finding]?.(
        (output) => outputs[output]?.typ ?? NaN,
        (condition) => conditions[condition]?.typ ?? NaN,
        part,
      );
      expect(again, `${finding.finding} has nothing to compare`).toBeDefined();
      compared.add(finding.finding);
      const figure = finding.standIn?.typ ?? NaN;
      const what = `${finding.finding} of ${part.type}`;
      if (figure === 0) expect(again, what).toBeCloseTo(0, 9);
      else expect((again ?? NaN) / figure, what).toBeCloseTo(1, 2);
    }
  });

  test('and both come to the same wherever a finding leads to a sum', () => {
    expect([...compared].toSorted()).toEqual(
      [...new Set(led.map(({ finding }) => finding))].toSorted(),
    );
    expect([...compared].toSorted()).toEqual(Object.keys(SAME).toSorted());
    const sums = led.map(({ finding }) => catalogue.findings[finding]?.sum);
    expect([...reached].toSorted()).toEqual([...new Set(sums)].toSorted());
  });
});
