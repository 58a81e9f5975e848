import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readMarking } from '../../src/engine/markings/read-marking.ts';
import { stretchesOf } from '../../src/reading/stretches.ts';
import { catalogue } from '../engine/markings/tables.ts';

test('the stretches of a marking are the marking, each in its place', () => {
  const pieces = fc.constantFrom(
    '103',
    'K',
    '1KV',
    ' ',
    '\n',
    'ACME',
    '?',
    'O',
    '4n7',
    '16+16 µF',
    '…',
  );
  fc.assert(
    fc.property(fc.array(pieces, { maxLength: 12 }), (parts) => {
      const text = parts.join('').trim();
      for (const reading of readMarking(catalogue, text)) {
        const stretches = stretchesOf(text, reading);
        expect(stretches.map((each) => each.text).join('')).toBe(text);
        const numbers = stretches.flatMap((each) => (each.kind === 'between' ? [] : each.number));
        expect(numbers).toEqual(numbers.map((_, index) => index + 1));
      }
    }),
    { numRuns: 200 },
  );
});

test('what is not understood has a number of its own', () => {
  const [reading] = readMarking(catalogue, 'ACME 103K');
  const kinds = reading && stretchesOf('ACME 103K', reading).map(({ kind }) => kind);
  expect(kinds).toEqual(['lost', 'between', 'taken', 'taken']);
});
