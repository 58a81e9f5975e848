import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { exactly, findStandIns, type Request } from '../../src/engine/index.ts';
import { answerSentence } from '../../src/substitution/answer.ts';

/** A mark that is far above the usual voltage of a place is no reason to order less unasked. */

const catalogue = loadCatalogue();

const answerFor = (rating: number | undefined, more: Partial<Request> = {}): string => {
  const ratedVoltage = rating === undefined ? undefined : exactly(rating);
  const request: Request = {
    original: { type: 'ceramic-z5u', ratedVoltage },
    position: 'interstage-coupling',
    ...more,
  };
  const assessments = findStandIns(catalogue, request);
  return answerSentence(catalogue, request, assessments, { asked: request });
};

const REMINDER = / The old part is for 1\skV: measure the voltage across it, and type it below\.$/u;

test('a disc marked 1 kV for which less is named', () => {
  expect(answerFor(1000)).toMatch(REMINDER);
});

test.each<[string, string]>([
  ['marked 2 kV, whose stand-ins are for as much', answerFor(2000)],
  ['marked 50 V', answerFor(50)],
  ['without a mark', answerFor(undefined)],
  ['with the voltage across it given', answerFor(1000, { conditions: { vdc: exactly(12) } })],
])('not a disc %s', (_what, answer) => {
  expect(answer).toContain('fits');
  expect(answer).not.toContain('The old part is for');
});
