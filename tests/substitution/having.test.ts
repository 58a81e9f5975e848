import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { assess, type Assessment } from '../../src/engine/index.ts';
import { guidelineKey, partKeys, havingKeys } from '../../src/substitution/keys.ts';
import { havingFields, readHaving } from '../../src/substitution/having.ts';
import { evidenceFields } from '../../src/substitution/old-part.ts';
import { havingCases } from './having-cases.ts';

const catalogue = loadCatalogue();

const reading = (query: string) => readHaving(catalogue, new URLSearchParams(query));

havingCases({
  title: 'a part that the visitor has, in an address',
  read: reading,
  understood: [
    ['', undefined],
    ['have=pc-metallized', { type: 'pc-metallized' }],
    ['have=film-x2&have-c=100n&have-v=275', { capacitance: 100e-9, ratedVoltage: 275 }],
    ['have=pc-metallized&have-c=4,7n&have-tol=5', { tolerance: { minus: 0.05, plus: 0.05 } }],
    ['have=pc-metallized&have-c=+10+000+pF', { capacitance: 10e-9 }],
    ['have=pc-metallized&have-tol=20/80', { tolerance: { minus: 0.2, plus: 0.8 } }],
  ],
  refused: [
    ['have=unobtainium', 'have', 'unobtainium', /no such type/],
    ['have=toString', 'have', 'toString', /no such type/],
    ['have=__proto__', 'have', '__proto__', /no such type/],
    ['have-c=10n', 'have', '', /say of what type/],
    ['have=pc-metallized&have-c=12q', 'have-c', '12q', /unit/],
    ['have=pc-metallized&have-c=0', 'have-c', '0', /from 0\.1\spF to 10\sF/],
    ['have=pc-metallized&have-v=1e9', 'have-v', '1e9', /from 500\smV to 100\skV/],
    ['have=pc-metallized&have-tol=some', 'have-tol', 'some', /tolerance such as/],
  ],
  keys: Object.values(havingKeys),
  others: [
    ...Object.keys(catalogue.conditionDefinitions),
    ...Object.values(partKeys),
    ...evidenceFields.map(({ key }) => key),
    guidelineKey,
    'compare',
  ],
});

describe('a part that the visitor has, in part understood', () => {
  test('keeps what is understood beside what is not', () => {
    const { candidate, rejected } = reading('have=pc-metallized&have-c=abc&have-v=63');
    expect(Object.keys(rejected)).toEqual(['have-c']);
    expect(candidate).toMatchObject({ type: 'pc-metallized', ratedVoltage: 63 });
    expect(candidate?.capacitance).toBeUndefined();
  });
});

describe('the fields of that part', () => {
  const request = { original: { type: 'paper-wax' }, position: 'interstage-coupling' };
  const notes = (query: string, assessment?: Assessment): string[] =>
    havingFields(reading(query), assessment).map(({ note }) => note);
  const assessed = (query: string): Assessment | undefined => {
    const { candidate } = reading(query);
    return candidate && assess(catalogue, request, candidate);
  };

  test('ask for a type first', () => {
    expect(notes('')).toEqual(['what it is made of', 'if known', 'if known', 'if known']);
  });

  test('say what a number left open is taken as', () => {
    const query = 'have=pc-metallized&have-v=63';
    const [, capacitance, tolerance, voltage] = notes(query, assessed(query));
    expect(capacitance).toMatch(/^taken as \d+\s[nµ]F$/);
    expect(tolerance).toMatch(/^taken as ±\d+\s%$/);
    expect(voltage).toBe('yours');
  });

  test('say what counts while a number cannot be used', () => {
    const query = 'have=pc-metallized&have-v=abc';
    expect(notes(query, assessed(query))[3]).toMatch(/ Until then \d+\sV counts\.$/);
  });

  test('ask for alternating volts where the type is rated so', () => {
    const labels = havingFields(reading('have=film-x2'), assessed('have=film-x2'));
    expect(labels.map(({ label }) => label)).toContain('Rated voltage, AC');
  });
});
