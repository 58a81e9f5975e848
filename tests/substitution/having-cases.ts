import { describe, expect, test } from 'vitest';
import type { Having } from '../../src/substitution/having-fields.ts';

interface Cases<Candidate> {
  title: string;
  read: (query: string) => Having<Candidate>;
  understood: readonly (readonly [query: string, candidate: object | undefined])[];
  refused: readonly (readonly [query: string, key: string, text: string, says: RegExp])[];
  /** Keys of the address that speak of the part that the visitor has. */
  keys: readonly string[];
  /** Every other key that an address of such a page may have. */
  others: readonly string[];
}

/** What holds for a part that the visitor has, in an address, of whatever kind it is. */
export const havingCases = <Candidate>(cases: Cases<Candidate>): void => {
  const { title, read, understood, refused, keys, others } = cases;
  describe(title, () => {
    test.each(understood)('%j is understood', (query, candidate) => {
      const { candidate: found, rejected } = read(query);
      expect(rejected).toEqual({});
      if (candidate === undefined) expect(found).toBeUndefined();
      else expect(found).toMatchObject(candidate);
    });

    test.each(refused)('%j is refused in a sentence, and kept', (query, key, text, says) => {
      const fault = read(query).rejected[key];
      expect(fault?.text).toBe(text);
      expect(fault?.message).toMatch(says);
      expect(fault?.message).toMatch(/^[“\p{Lu}].*\.$/su);
    });

    test('has keys that nothing else in the address has', () => {
      expect(keys.length).toBeGreaterThan(0);
      for (const key of keys) expect(others).not.toContain(key);
    });
  });
};
