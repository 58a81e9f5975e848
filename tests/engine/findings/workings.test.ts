import { describe, expect, test } from 'vitest';
import { findingModels } from '../../../src/engine/findings/index.ts';
import { allPairings } from '../../../src/engine/index.ts';
import { exactly, scale } from '../../../src/engine/quantities/range.ts';
import { catalogue, circumstancesOf } from '../assessment/setting.ts';
import { offeredParts } from '../../../src/engine/candidates/generate.ts';
import { unfit } from './probe.ts';

/** Workings of real parts: each is said, and comes to the very figure of its finding. */

/** What says no figure: a yes or no, a spread or a window, or that there is nothing to reckon. */
const IN_WORDS: ReadonlySet<string> = new Set([
  ...Object.keys(unfit),
  ...['tolerance', 'esr-window', 'regulator-dump', 'shelf', 'level-shift', 'reverse-voltage'],
]);

/** A place that asks for each finding, with the first type that is met there. */
const places = Object.keys(findingModels).flatMap((finding) => {
  const demand = catalogue.demands.find(
    (one) => one.finding === finding && catalogue.positions[one.position] !== undefined,
  );
  const met = allPairings(catalogue).find(
    ({ position, pairing }) => position === demand?.position && pairing.met,
  );
  return met === undefined ? [] : [[finding, met.type, met.position] as const];
});

const tried = (finding: string, type: string, position: string) => {
  const circumstances = circumstancesOf({ original: { type }, position });
  const model = findingModels[finding];
  if (model === undefined) throw new Error(`no finding ${finding}`);
  return Object.values(catalogue.types)
    .flatMap(({ id }) => offeredParts(catalogue, id, circumstances).slice(0, 1))
    .flatMap((part) => {
      const outcome = model.measure(part, circumstances);
      return outcome.status === 'known' ? [{ model, part, circumstances, outcome }] : [];
    });
};

describe('the working of a finding', () => {
  test('is there for all findings that places ask for', () => {
    expect(places.length).toBeGreaterThan(40);
  });

  test.each(places)('%s of %s in %s is said in numbers', (finding, type, position) => {
    const all = tried(finding, type, position);
    expect(all.length).toBeGreaterThan(0);
    for (const { model, part, circumstances, outcome } of all) {
      const said = model.working(part, circumstances, outcome.value);
      expect(said, part.type).toMatch(/\w/u);
      expect(said, part.type).not.toMatch(/NaN|undefined|Infinity/u);
      expect(outcome.value.min, part.type).toBeLessThanOrEqual(outcome.value.max);
    }
  });

  test.each(places.filter(([finding]) => !IN_WORDS.has(finding)))(
    '%s of %s in %s comes to its figure',
    (finding, type, position) => {
      const moved = tried(finding, type, position).filter(
        ({ model, part, circumstances, outcome: { value } }) =>
          model.working(part, circumstances, value.max === 0 ? exactly(1) : scale(value, 3)) !==
          model.working(part, circumstances, value),
      );
      expect(moved.length).toBeGreaterThan(0);
    },
  );
});
