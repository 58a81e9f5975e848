import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/engine/assessment/finding.ts';
import { filledKindSum } from '../../../src/engine/kinds/filled-sum.ts';
import type { KindCircumstances, KindPart } from '../../../src/engine/kinds/part.ts';
import type { SumInputRow } from '../../../src/schemas/sums.ts';
import { catalogue, circumstances, divider, part, range } from './made-up.ts';

/** What stands in the fields of a sum for a made-up part of round figures, worked by hand. */

const [aFinding] = Object.values(catalogue.findings).filter(({ sum }) => sum !== '');
if (!aFinding) throw new Error('no finding to start from');
const findings = {
  ...catalogue.findings,
  led: { ...aFinding, id: 'led', sum: 'made-sum' },
  alone: { ...aFinding, id: 'alone', sum: '' },
};

type Field = Pick<SumInputRow, 'takes' | 'of'> & Partial<SumInputRow>;

const rows = (fields: readonly Field[]): SumInputRow[] =>
  fields.map((field, index) => ({ sum: 'made-sum', input: `field${index}`, for: [], ...field }));

const inputsOf = (
  fields: readonly Field[],
  one: KindPart = part,
  where: KindCircumstances = circumstances(),
  finding = 'led',
) =>
  filledKindSum(
    { finding, standIn: range(1, 1, 1) } as Finding,
    { candidate: one },
    { ...where, catalogue: { ...where.catalogue, findings, sumInputs: rows(fields) } },
  );

const only = (field: Field, one?: KindPart, where?: KindCircumstances): string | undefined =>
  inputsOf([field], one, where)?.inputs['field0'];

describe('a field of a sum for a finding about a resistor or trimmer', () => {
  it.each<[SumInputRow['takes'], string[], string]>([
    // 10 kΩ, 10 % below to 20 % above.
    ['value', [], '9..10..12k'],
    ['mark', [], '10k'],
    ['mid-travel', [], '5k'],
    ['rating', [], '500m'],
    // The highest of DC and AC together, 30 V and 40 V.
    ['rms', [], '50 V'],
    ['condition', ['vdc'], '20..30..30 V'],
    ['highest', ['vdc'], '30 V'],
    ['condition', ['t-max'], '40..60..120 degC'],
    ['highest', ['t-max'], '120 degC'],
    ['property', ['voltage-limit'], '200..300 V'],
    ['property-if-known', ['voltage-limit'], '200..300 V'],
    ['words', ['left as it is'], 'left as it is'],
    ['wiring', [], 'rheostat'],
  ])('%s %o is %s', (takes, of, text) => {
    expect(only({ takes, of })).toBe(text);
  });

  it.each<[string, KindCircumstances, string, string]>([
    ['rheostat', circumstances(), 'rheostat', '0.1..0.3 %'],
    ['divider', divider, 'divider', '0.05..0.1..0.2 %'],
  ])('goes by how a trimmer is wired: %s', (_what, where, wiring, fineness) => {
    expect(only({ takes: 'wiring', of: [] }, part, where)).toBe(wiring);
    const field: Field = { takes: 'by-wiring', of: ['adjust-rheostat', 'adjust-divider'] };
    expect(only(field, part, where)).toBe(fineness);
  });

  it('keeps the number that it has where it takes nothing, or what is not known', () => {
    const kept = inputsOf([
      { takes: 'nothing', of: [] },
      { takes: 'property-if-known', of: ['unheard-of'] },
      { takes: 'mark', of: [] },
    ]);
    expect(Object.keys(kept?.inputs ?? {})).toEqual(['field2']);
  });
});

describe('a sum is not filled in', () => {
  const unrated: KindPart = { type: 'made-up', value: 10e3, unit: 'ohm' };

  it.each<[string, Field, KindPart]>([
    ['a rating that the part has not', { takes: 'rating', of: [] }, unrated],
    ['a property that nobody knows', { takes: 'property', of: ['unheard-of'] }, part],
    ['no property at all', { takes: 'property', of: [] }, part],
    ['a condition that the position has not', { takes: 'condition', of: ['unheard-of'] }, part],
    ['the highest of such a condition', { takes: 'highest', of: ['unheard-of'] }, part],
    ['what only a capacitor has', { takes: 'capacitance', of: [] }, part],
  ])('for want of %s', (_what, field, one) => {
    expect(inputsOf([{ takes: 'mark', of: [] }, field], one)).toBeUndefined();
  });

  it('where a finding leads to none, or came to nothing', () => {
    const field: Field = { takes: 'mark', of: [] };
    expect(inputsOf([field])?.sum).toBe('made-sum');
    expect(inputsOf([field], part, circumstances(), 'alone')).toBeUndefined();
    expect(inputsOf([field], part, circumstances(), 'unheard-of')).toBeUndefined();
  });
});
