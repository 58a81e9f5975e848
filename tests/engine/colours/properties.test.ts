import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readColours } from '../../../src/engine/colours/index.ts';
import { groupsOf } from '../../../src/engine/colours/scheme.ts';
import type { Reading } from '../../../src/engine/markings/index.ts';
import { catalogue } from '../markings/tables.ts';

const { colours, colourMeanings, colourSchemes, colourForms } = catalogue.markings;

type Scheme = (typeof colourSchemes)[number];
type Meaning = (typeof colourMeanings)[number];

/** The usual meanings of a role in a scheme: what a maker would paint. */
const painted = (scheme: Scheme, role: string): Meaning[] =>
  colourMeanings.filter(
    (row) =>
      scheme.codes.includes(row.code) &&
      row.role === role &&
      row.use === 'usual' &&
      row.colour !== 'none',
  );

/** A part as its maker would paint it, and what it then is. */
interface PaintedPart {
  marks: string[];
  meanings: Meaning[];
  /** In F or ohm, worked out here and not by what is tested. */
  value: number | undefined;
}

const valueOf = (scheme: Scheme, meanings: readonly Meaning[]): number | undefined => {
  const digits = meanings.filter(({ role }) => role === 'digit').map(({ value }) => value ?? 0);
  const factor = meanings.find(({ role }) => role === 'multiplier')?.value;
  if (factor === undefined || scheme.unit_si === undefined) return undefined;
  return digits.reduce((sum, digit) => sum * 10 + digit, 0) * factor * scheme.unit_si;
};

/** Whether a tolerance or voltage is painted on parts of such a value. */
const goesWith = ({ from_f: from, below_f: below }: Meaning, value: number | undefined): boolean =>
  value === undefined ||
  ((from === undefined || value >= from) && (below === undefined || value < below));

const isMade = (scheme: Scheme, { meanings, value }: PaintedPart): boolean =>
  value === undefined ||
  (value >= (scheme.value_min ?? 0) &&
    value <= (scheme.value_max ?? Infinity) &&
    meanings.find(({ role }) => role === 'digit')?.value !== 0 &&
    meanings.every((meaning) => goesWith(meaning, value)));

const partOf = (scheme: Scheme, meanings: readonly Meaning[]): PaintedPart => ({
  marks: groupsOf(scheme.places).flatMap(({ at }, index) => {
    const meaning = meanings[index];
    return at.length === 1
      ? [meaning?.colour ?? '']
      : [meaning?.colour ?? '', meaning?.second ?? ''];
  }),
  meanings: [...meanings],
  value: valueOf(scheme, meanings),
});

/** The choices of each group: one colour for one place, two for two. */
const choicesOf = (scheme: Scheme): Meaning[][] =>
  groupsOf(scheme.places).map(({ role, at }) =>
    painted(scheme, role).filter(({ second }) => (second !== '') === (at.length === 2)),
  );

const part = (scheme: Scheme): fc.Arbitrary<PaintedPart> =>
  fc
    .tuple(...choicesOf(scheme).map((choices) => fc.constantFrom(...choices)))
    .map((meanings) => partOf(scheme, meanings))
    .filter((one) => isMade(scheme, one));

const near = (actual: number | undefined, wanted: number): boolean =>
  actual !== undefined && Math.abs(actual - wanted) <= Math.abs(wanted) * 1e-9;

const tellsTolerance = ({ tolerance }: Reading, { meanings }: PaintedPart): boolean => {
  const wanted = meanings.find(({ role }) => role === 'tolerance');
  const size = wanted?.unit === 'pF' ? 1e-12 : 0.01;
  return (
    wanted === undefined ||
    (near(tolerance?.plus, (wanted.high ?? NaN) * size) &&
      near(tolerance?.minus, -(wanted.low ?? NaN) * size))
  );
};

const tellsVoltage = ({ ratedVoltage }: Reading, { meanings }: PaintedPart): boolean => {
  const volts = meanings.find(({ role }) => role === 'voltage')?.value;
  const hundreds = meanings.filter(({ role }) => role === 'hundreds-of-volts');
  const wanted = volts ?? Number(hundreds.map((row) => row.value).join('')) * 100;
  return wanted === 0 || ratedVoltage?.typ === wanted;
};

const tells = (reading: Reading, one: PaintedPart): boolean => {
  const read = reading.resistance?.typ ?? reading.capacitance?.typ;
  return (
    reading.colours?.turned === false &&
    (one.value === undefined || near(read, one.value)) &&
    tellsTolerance(reading, one) &&
    tellsVoltage(reading, one)
  );
};

describe('what a maker paints is among what is read', () => {
  test.each(colourSchemes.map((scheme) => [scheme.id, scheme] as const))('%s', (_, scheme) => {
    fc.assert(
      fc.property(part(scheme), (one) => {
        const readings = readColours(catalogue, { scheme: scheme.id, colours: one.marks });
        expect(readings.some((reading) => tells(reading, one))).toBe(true);
      }),
    );
  });
});

describe('every value of a scheme comes back', () => {
  const valued = colourSchemes.filter(
    ({ places }) => places.filter((place) => place === 'digit').length === 2,
  );
  test.each(valued.map((scheme) => [scheme.id, scheme] as const))('%s', (_, scheme) => {
    const others = choicesOf(scheme).map((choices) => choices.slice(0, 1));
    const wide = choicesOf(scheme).map((choices, index) =>
      ['digit', 'multiplier'].includes(choices[0]?.role ?? '') ? choices : (others[index] ?? []),
    );
    const all = wide.reduce<Meaning[][]>(
      (parts, choices) => parts.flatMap((one) => choices.map((choice) => [...one, choice])),
      [[]],
    );
    const lost = all
      .map((meanings) => partOf(scheme, meanings))
      .filter((one) => isMade(scheme, one))
      .filter((one) => {
        const readings = readColours(catalogue, { scheme: scheme.id, colours: one.marks });
        return !readings.some(
          ({ resistance, capacitance, colours: read }) =>
            read?.turned === false && near(resistance?.typ ?? capacitance?.typ, one.value ?? NaN),
        );
      });
    expect(all.length).toBeGreaterThan(500);
    expect(lost.map(({ marks }) => marks.join(' '))).toEqual([]);
  });
});

test('a colour that cannot be told gives the right value among others', () => {
  const schemes = colourSchemes.filter(({ places }) => places.includes('multiplier'));
  const one = fc.constantFrom(...schemes).chain((scheme) =>
    fc.record({
      scheme: fc.constant(scheme),
      painted: part(scheme),
      faded: fc.constantFrom(
        ...scheme.places.flatMap((role, at) =>
          role === 'digit' || role === 'multiplier' ? [at] : [],
        ),
      ),
    }),
  );
  fc.assert(
    fc.property(one, ({ scheme, painted: { marks, value }, faded }) => {
      const seen = marks.map((mark, at) => (at === faded ? undefined : mark));
      const readings = readColours(catalogue, { scheme: scheme.id, colours: seen });
      const values = readings.map(({ resistance, capacitance }) => resistance ?? capacitance);
      expect(values.some((range) => near(range?.typ, value ?? NaN))).toBe(true);
    }),
  );
});

test('no colours, however many, make it throw or tell nonsense', () => {
  const ids = [...colours.map(({ id }) => id), 'no-such-colour', '', '__proto__', undefined];
  const request = fc.record({
    colours: fc.array(fc.constantFrom(...ids), { maxLength: 11 }),
    form: fc.constantFrom(undefined, 'toString', ...colourForms.map(({ id }) => id)),
    apart: fc.constantFrom('first' as const, 'last' as const, undefined),
  });
  fc.assert(
    fc.property(request, (asked) => {
      const readings = readColours(catalogue, asked);
      for (const reading of readings) {
        const { resistance, capacitance, sure, evidence } = reading;
        for (const range of [resistance, capacitance]) {
          if (range === undefined) continue;
          expect(range.min).toBeLessThanOrEqual(range.typ);
          expect(range.typ).toBeLessThanOrEqual(range.max);
          expect(range.max).toBeLessThan(1e13);
        }
        expect(evidence.length).toBeGreaterThan(0);
        expect(reading.colours?.marks).toHaveLength(asked.colours.length);
        if (reading !== readings[0]) expect(sure).toBe('possible');
      }
    }),
    { numRuns: 500 },
  );
});

test('turning the part round changes nothing but which end is given first', () => {
  const turnable = colourSchemes.filter(({ id }) => id.startsWith('resistor-4'));
  const one = fc.constantFrom(...turnable).chain((scheme) => part(scheme));
  fc.assert(
    fc.property(one, ({ marks, value }) => {
      const values = (given: readonly string[]) =>
        readColours(catalogue, { form: 'resistor', colours: given }).map(({ resistance }) =>
          resistance?.typ.toPrecision(6),
        );
      const turned = readColours(catalogue, { form: 'resistor', colours: marks.toReversed() });
      expect(turned.length).toBeGreaterThan(0);
      // Gold and silver are never figures, so with them only one end is possible.
      if (!['gold', 'silver'].includes(marks.at(-1) ?? '')) return;
      expect(values(marks)).toEqual(values(marks.toReversed()));
      expect(values(marks)[0]).toBe((value ?? NaN).toPrecision(6));
    }),
  );
});
