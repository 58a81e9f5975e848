import { expect, test } from 'vitest';
import { policyFor } from '../../src/layouts/policy.ts';

const directivesOf = (inline: readonly string[]): Map<string, string[]> =>
  new Map(
    policyFor(inline)
      .split('; ')
      .map((directive) => directive.split(' '))
      .map(([name = '', ...allowed]) => [name, allowed]),
  );

test('each directive stands once, and nothing from elsewhere is allowed', () => {
  const directives = directivesOf([]);
  expect(directives.size).toBe(policyFor([]).split('; ').length);
  expect(directives.get('default-src')).toEqual(["'none'"]);
  for (const [name, allowed] of directives)
    expect(allowed.join(' '), name).not.toMatch(/unsafe-inline|(?<!wasm-)unsafe-eval|http|\*/);
});

test('a script within the page is allowed by what it says', () => {
  // The example of the specification: Content Security Policy Level 3, section 7.2 on hashes.
  expect(directivesOf(["alert('Hello, world.');"]).get('script-src')).toEqual([
    "'self'",
    "'wasm-unsafe-eval'",
    "'sha256-qznLcsROx4GACP2dm0UCKCzCG+HiZ1guq6ZZDob/Tng='",
  ]);
  expect(directivesOf([]).get('script-src')).toHaveLength(2);
});
