import { expect, test } from 'vitest';
import { apart, readable } from '../../src/search/full-stops.ts';

const STAND_IN = '\u2024';

test.each([
  ['It leaks. It dries out.', `It leaks${STAND_IN} It dries out${STAND_IN}`],
  ['<p>It leaks.</p>', `<p>It leaks${STAND_IN}</p>`],
  ['4.7 µF, .1 µF and 10.', `4.7 µF, .1 µF and 10${STAND_IN}`],
  ['(as they say.) 2.5', `(as they say${STAND_IN}) 2.5`],
  ['none', 'none'],
])('full stops of %j are apart from points, and come back', (text, indexed) => {
  expect(apart(text)).toBe(indexed);
  expect(readable(apart(text))).toBe(text);
});
