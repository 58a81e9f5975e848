import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import {
  assess,
  findStandIns,
  verdictOrder,
  type Assessment,
  type Request,
} from '../../src/engine/index.ts';
import { exactly } from '../../src/engine/quantities/range.ts';

const list = (cell: string): string[] => cell.split(';').filter((item) => item !== '');

const pairs = (cell: string, sign: string): [string, string][] =>
  list(cell).map((item) => {
    const at = item.indexOf(sign);
    return [item.slice(0, at), item.slice(at + sign.length)];
  });

/** Cases on which the trade and its guides agree. */
const row = z.strictObject({
  id: z.string().min(1),
  original: z.string().min(1),
  value_f: z.coerce.number().positive(),
  rated_v: z.coerce.number().positive(),
  position: z.string().min(1),
  conditions: z.string().transform((cell) => pairs(cell, '=')),
  should_fit: z.string().transform(list),
  fits_if_because: z.string().transform((cell) => Object.fromEntries(pairs(cell, '='))),
  must_keep_out: z.string().transform(list),
  order: z.string().transform((cell) => pairs(cell, '>')),
  source: z.string().min(1),
  note: z.string(),
});
type Case = z.output<typeof row>;

const records: unknown = parse(readFileSync('tests/published/consensus.csv', 'utf8'), {
  columns: true,
});
const cases = z.array(row).parse(records);

const catalogue = loadCatalogue();

const requestOf = ({ original, value_f, rated_v, position, conditions }: Case): Request => ({
  original: { type: original, capacitance: exactly(value_f), ratedVoltage: exactly(rated_v) },
  position,
  conditions: Object.fromEntries(conditions.map(([id, value]) => [id, exactly(Number(value))])),
});

const rankings = new Map<string, Assessment[]>();

const rankingOf = (one: Case): Assessment[] => {
  const ranking = rankings.get(one.id) ?? findStandIns(catalogue, requestOf(one));
  rankings.set(one.id, ranking);
  return ranking;
};

/** A type in a case, whether it is offered or not, and its place: unoffered parts have none. */
const standing = (one: Case, type: string): { assessment: Assessment; place?: number } => {
  const ranking = rankingOf(one);
  const place = ranking.findIndex(({ candidate }) => candidate.type === type);
  const found = ranking[place];
  return found === undefined
    ? { assessment: assess(catalogue, requestOf(one), { type }) }
    : { assessment: found, place };
};

const said = ({ candidate, verdict, worst }: Assessment): string =>
  `${candidate.type} is ${verdict} by ${worst}`;

const comesBefore = (one: Case, better: string, worse: string): boolean => {
  const [first, second] = [standing(one, better), standing(one, worse)];
  if (first.place !== undefined && second.place !== undefined) return first.place < second.place;
  const rank = ({ verdict }: Assessment): number => verdictOrder.indexOf(verdict);
  return rank(first.assessment) < rank(second.assessment);
};

/** Everything in which the engine disagrees with a case. */
const disagreements = (one: Case): string[] => [
  ...one.should_fit.flatMap((type) => {
    const { assessment } = standing(one, type);
    const allowed = one.fits_if_because[type] === undefined ? ['fits'] : ['fits', 'fits-if'];
    return allowed.includes(assessment.verdict) ? [] : [said(assessment)];
  }),
  ...one.must_keep_out.flatMap((type) => {
    const { assessment } = standing(one, type);
    return assessment.verdict === 'keep-out' ? [] : [said(assessment)];
  }),
  ...one.order.flatMap(([better, worse]) =>
    comesBefore(one, better, worse) ? [] : [`${better} does not come before ${worse}`],
  ),
];

describe('cases on which the trade agrees', () => {
  test.each(cases.map((one) => [one.id, one] as const))('%s', (_id, one) => {
    expect(disagreements(one)).toEqual([]);
  });

  test('name types, positions and conditions that there are', () => {
    for (const one of cases) {
      const named = [
        one.original,
        ...one.should_fit,
        ...one.must_keep_out,
        ...one.order.flat(),
        ...Object.keys(one.fits_if_because),
      ];
      for (const type of named) expect(catalogue.types[type], `${one.id} ${type}`).toBeDefined();
      const asked = catalogue.conditions
        .filter(({ position }) => position === one.position)
        .map(({ condition }) => condition);
      expect(asked).toEqual(expect.arrayContaining(one.conditions.map(([id]) => id)));
    }
  });

  test('excuse a "fits if" only where there is one', () => {
    for (const one of cases) {
      for (const type of Object.keys(one.fits_if_because)) {
        expect(one.should_fit).toContain(type);
        expect(standing(one, type).assessment.verdict, `${one.id} ${type}`).toBe('fits-if');
      }
    }
  });
});

describe('the cases can fail', () => {
  const orders = cases.flatMap((one) => one.order.map((order) => [one, order] as const));
  const fits = cases.flatMap((one) => one.should_fit.map((type) => [one, type] as const));
  const keptOut = cases.flatMap((one) => one.must_keep_out.map((type) => [one, type] as const));
  const nothing = { should_fit: [], must_keep_out: [], order: [] };

  test('there are enough of them', () => {
    expect(cases.length).toBeGreaterThanOrEqual(17);
    expect(orders.length).toBeGreaterThanOrEqual(15);
    expect(fits.length).toBeGreaterThanOrEqual(30);
    expect(keptOut.length).toBeGreaterThanOrEqual(30);
  });

  test('every order fails the other way round', () => {
    for (const [one, [better, worse]] of orders) {
      const swapped: Case = { ...one, ...nothing, order: [[worse, better]] };
      expect(disagreements(swapped), `${one.id} ${worse}>${better}`).toHaveLength(1);
    }
  });

  test('every type that should fit fails as one that must be kept out', () => {
    for (const [one, type] of fits) {
      const swapped: Case = { ...one, ...nothing, must_keep_out: [type] };
      expect(disagreements(swapped), `${one.id} ${type}`).toHaveLength(1);
    }
  });

  test('every type that must be kept out fails as one that should fit, excused or not', () => {
    for (const [one, type] of keptOut) {
      const swapped: Case = {
        ...one,
        ...nothing,
        should_fit: [type],
        fits_if_because: { [type]: 'no reason' },
      };
      expect(disagreements(swapped), `${one.id} ${type}`).toHaveLength(1);
    }
  });
});

describe('what the notes of the cases say', () => {
  const caseOf = (id: string): Case => {
    const found = cases.find((one) => one.id === id);
    if (found === undefined) throw new Error(`no case ${id}`);
    return found;
  };
  const offered = (id: string, type: string): Assessment['candidate'] =>
    standing(caseOf(id), type).assessment.candidate;

  test.each([2.2e-5, 4.7e-5])('c07: the value of %d F is allowed for 25 uF', (capacitance) => {
    const { findings } = assess(catalogue, requestOf(caseOf('c07')), {
      type: 'al-electrolytic-wet',
      capacitance,
    });
    expect(findings.find(({ finding }) => finding === 'value')?.verdict).toBe('fits');
  });

  test('c10: the value stays, and the rating is a preferred one of 400 or 630 V', () => {
    const { capacitance, ratedVoltage } = offered('c10', 'pp-metallized');
    expect(capacitance).toBeCloseTo(2.2e-8, 12);
    expect([400, 630]).toContain(ratedVoltage);
  });

  test('c12: a ceramic part alone is no more than a stopgap, by its series resistance', () => {
    const { verdict, worst } = assess(catalogue, requestOf(caseOf('c12')), {
      type: 'ceramic-x7r',
      capacitance: 1e-5,
    });
    expect([verdict, worst]).toEqual(['stopgap', 'regulator-output-esr-window']);
    expect(offered('c12', 'ceramic-x7r').made?.kind).toBe('with-resistor');
  });

  test('c15: a rating of 25 or 35 V is offered, not 16 V again', () => {
    expect([25, 35]).toContain(offered('c15', 'al-electrolytic-wet').ratedVoltage);
  });

  test.each([0.05, 0.02])(
    'c20: polypropylene of ±%d serves, be it general or selected',
    (spread) => {
      const one = caseOf('c20');
      const better = assess(catalogue, requestOf(one), {
        type: 'pp-metallized',
        capacitance: one.value_f,
        tolerance: { minus: spread, plus: spread },
      });
      const same = assess(catalogue, requestOf(one), { type: one.original });
      expect(better.verdict).toBe('fits');
      const absorption = ({ findings }: Assessment): number =>
        findings.find(({ finding }) => finding === 'absorption')?.standIn?.typ ?? NaN;
      expect(absorption(better)).toBeLessThan(absorption(same) / 2);
    },
  );
});

describe('a larger and higher rated electrolytic on a rail', () => {
  // Common practice, no source: 47 µF 16 V may become 220 µF 35 V.
  const { verdict, findings } = assess(
    catalogue,
    {
      original: {
        type: 'al-electrolytic-wet',
        capacitance: exactly(47e-6),
        ratedVoltage: exactly(16),
      },
      position: 'bulk-rail',
    },
    { type: 'al-electrolytic-wet', capacitance: 220e-6, ratedVoltage: 35 },
  );

  test('fits, or fits on a condition', () => {
    expect(['fits', 'fits-if']).toContain(verdict);
  });

  test.each(['rated-voltage', 'voltage-margin', 'ripple-voltage', 'ripple-current', 'life'])(
    'betters the old part in %s',
    (id) => {
      const found = findings.find(({ finding }) => finding === id);
      expect(found?.verdict).toBe('fits');
      expect(found?.standIn?.typ).toBeLessThan(found?.original?.typ ?? 0);
    },
  );

  test('draws more at switch-on, within what the rectifier takes', () => {
    const found = findings.find(({ finding }) => finding === 'inrush');
    expect(found?.verdict).toBe('fits');
    expect(found?.standIn?.typ).toBeGreaterThan(found?.original?.typ ?? Infinity);
  });
});
