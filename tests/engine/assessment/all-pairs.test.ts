import { describe, expect, test } from 'vitest';
import type { Assessment } from '../../../src/engine/assessment/assess.ts';
import type { Finding } from '../../../src/engine/assessment/finding.ts';
import { allPairings, findStandIns, verdictOrder } from '../../../src/engine/index.ts';
import { catalogue } from './setting.ts';

/** What no working may print: numbers that are none, missing words, a unit twice, a gap. */
const BROKEN =
  /NaN|undefined|null|Infinity|∞|\[object|×\s*[×)]|× (?:cm|times|decades)|\bunknown\b|\?|\s\s|^\s|\s$|\s–\s/u;

const rangeFaults = (name: string, range: Finding['standIn']): string[] => {
  if (range === undefined) return [];
  const { min, typ, max } = range;
  if (![min, typ, max].every(Number.isFinite)) return [`${name} is not finite`];
  return min <= typ && typ <= max ? [] : [`${name} is out of order`];
};

const findingFaults = (finding: Finding): string[] => {
  const { working, margin, sources, standIn, missing, verdict, original } = finding;
  const known = standIn !== undefined;
  return [
    ...(working === '' || BROKEN.test(working) ? [`prints “${working}”`] : []),
    ...(Number.isFinite(margin) && margin >= 0 ? [] : [`has a margin of ${String(margin)}`]),
    ...(sources.every((id) => id in catalogue.sources) && sources.length > 0
      ? []
      : [`cites ${sources.join(' ')}`]),
    ...(known === (missing.length === 0) ? [] : ['is both known and missing something']),
    ...(known || verdict !== 'fits' ? [] : ['fits though it is not known']),
    ...(known || working === 'not known' ? [] : ['does not say that it is not known']),
    ...rangeFaults('the stand-in', standIn),
    ...rangeFaults('the old part', original),
  ];
};

const assessmentFaults = ({ candidate, verdict, findings, worst }: Assessment): string[] => {
  const worstVerdict = Math.max(...findings.map((one) => verdictOrder.indexOf(one.verdict)));
  return [
    ...(verdictOrder[worstVerdict] === verdict ? [] : ['is not the worst of its findings']),
    ...(findings.some(({ demand }) => demand === worst) ? [] : [`rests on ${worst}`]),
    ...(candidate.capacitance > 0 && candidate.ratedVoltage > 0 ? [] : ['is no part']),
    ...findings.flatMap((one) => findingFaults(one).map((fault) => `${one.demand} ${fault}`)),
  ];
};

describe('every type in every position where it is met', () => {
  const met = allPairings(catalogue).filter(({ pairing }) => pairing.met);

  test('there are hundreds of them', () => {
    expect(met.length).toBeGreaterThan(800);
  });

  test('is assessed in plain figures and whole sentences', () => {
    const faults = met.flatMap(({ type, position }) => {
      const all = findStandIns(catalogue, { original: { type }, position });
      const plain: unknown = JSON.parse(JSON.stringify(all));
      expect(plain).toEqual(all);
      return all.flatMap((one) =>
        assessmentFaults(one).map(
          (fault) => `${type} in ${position}: ${one.candidate.type} ${fault}`,
        ),
      );
    });
    expect(faults.slice(0, 20)).toEqual([]);
  }, 120_000);
});
