import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { lookKey, type LookAnswers, type LookResult } from '../../../src/engine/index.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';

const catalogue = loadCatalogue();
const { questions, answers: allAnswers, styles } = catalogue.look;
const idsOf = (question: string): string[] =>
  allAnswers.filter((answer) => answer.question === question).map(({ id }) => id);

/** Any number that a question takes, in SI, and some beyond. */
const numberFor = (id: string): fc.Arbitrary<LookAnswers['numbers']> => {
  const question = questions.find((one) => one.id === id);
  const factor = catalogue.units[question?.unit ?? '']?.factor ?? 1;
  const [low, high] = [(question?.lowest ?? 0) * factor, (question?.highest ?? 1) * factor];
  const one =
    question?.scale === 'log'
      ? fc.double({ min: Math.log10(low), max: Math.log10(high), noNaN: true }).map((x) => 10 ** x)
      : fc.double({ min: low, max: high, noNaN: true });
  return fc
    .tuple(one, one)
    .map(([a, b]) => ({ [id]: { min: Math.min(a, b), typ: (a + b) / 2, max: Math.max(a, b) } }));
};

const ofNumbers = questions.filter(({ kind }) => kind === 'range').map(({ id }) => id);
const ofChoices = questions.filter(({ kind }) => kind !== 'range').map(({ id }) => id);

const anyAnswers: fc.Arbitrary<LookAnswers> = fc.record({
  chosen: fc
    .subarray(ofChoices)
    .chain((ids) =>
      fc.record(
        Object.fromEntries(ids.map((id) => [id, fc.subarray(idsOf(id), { maxLength: 3 })])),
      ),
    ),
  numbers: fc
    .subarray(ofNumbers)
    .chain((ids) => fc.tuple(...ids.map(numberFor)))
    .map((all) => Object.assign({}, ...all) as Record<string, never>),
});

const likelihoodOf = (result: LookResult, style: string): number =>
  result.styles.find(({ id }) => id === style)?.likelihood ?? NaN;
const rankOf = (result: LookResult, style: string): number => {
  const own = likelihoodOf(result, style);
  return result.styles.filter(({ likelihood }) => likelihood > own * (1 + 1e-9)).length;
};
const sum = (numbers: readonly number[]): number => numbers.reduce((all, one) => all + one, 0);

describe('whatever is answered', () => {
  test('likelihoods are numbers that sum to one', () => {
    fc.assert(
      fc.property(anyAnswers, (answers) => {
        const { styles: likely, kinds } = lookKey(catalogue, answers);
        expect(likely).toHaveLength(styles.length);
        for (const group of [likely, kinds, ...likely.map((style) => style.kinds)]) {
          for (const { likelihood } of group) {
            expect(likelihood).toBeGreaterThanOrEqual(0);
            expect(likelihood).toBeLessThanOrEqual(1 + 1e-9);
          }
        }
        expect(sum(likely.map(({ likelihood }) => likelihood))).toBeCloseTo(1, 9);
        expect(sum(kinds.map(({ likelihood }) => likelihood))).toBeCloseTo(1, 9);
      }),
      { numRuns: 40 },
    );
  });

  test('what is worth asking is a number, and nothing that was answered', () => {
    fc.assert(
      fc.property(anyAnswers, (answers) => {
        const { next } = lookKey(catalogue, answers);
        for (const { worth } of next) {
          expect(worth).toBeGreaterThanOrEqual(0);
          expect(Number.isFinite(worth)).toBe(true);
        }
        const given = [
          ...Object.entries(answers.chosen ?? {})
            .filter(([, ticked]) => ticked.length > 0)
            .map(([id]) => id),
          ...Object.keys(answers.numbers ?? {}),
        ];
        expect(next.map(({ question }) => question)).not.toEqual(
          expect.arrayContaining(given.length > 0 ? [given[0]] : ['none']),
        );
      }),
      { numRuns: 25 },
    );
  });

  test('the order of questions and of ticks does not matter', () => {
    const turned = (record: Readonly<Record<string, unknown>> = {}): Record<string, never> =>
      Object.fromEntries(
        Object.entries(record)
          .map(([id, value]) => [id, Array.isArray(value) ? value.toReversed() : value])
          .toReversed(),
      ) as Record<string, never>;
    fc.assert(
      fc.property(anyAnswers, (answers) => {
        const other = { chosen: turned(answers.chosen), numbers: turned(answers.numbers) };
        expect(lookKey(catalogue, other)).toEqual(lookKey(catalogue, answers));
      }),
      { numRuns: 20 },
    );
  });

  test('it survives being written out', () => {
    const result = lookKey(catalogue, { chosen: { form: ['tube'] }, numbers: {} });
    expect(JSON.parse(JSON.stringify(result))).toEqual(result);
  });
});

/** Questions that styles alone answer: what is inside has no say in them. */
const ofStyles = ['form', 'leads', 'finish', 'ends', 'colour', 'place'];

test('an answer that a style fits better than any other never lowers its rank', () => {
  const nothing = lookKey(catalogue, {});
  const best = ofStyles.flatMap((question) =>
    idsOf(question).flatMap((answer) => {
      const alone = lookKey(catalogue, { chosen: { [question]: [answer] } });
      const gains = styles.map(({ id }) => ({
        id,
        gain: likelihoodOf(alone, id) / likelihoodOf(nothing, id),
      }));
      const most = Math.max(...gains.map(({ gain }) => gain));
      return gains
        .filter(({ gain }) => gain >= most * (1 - 1e-9))
        .map(({ id }) => ({ question, answer, id }));
    }),
  );
  expect(best.length).toBeGreaterThan(80);
  fc.assert(
    fc.property(anyAnswers, fc.constantFrom(...best), (answers, { question, answer, id }) => {
      const chosen = { ...answers.chosen, [question]: [] };
      const before = lookKey(catalogue, { ...answers, chosen });
      const after = lookKey(catalogue, {
        ...answers,
        chosen: { ...chosen, [question]: [answer] },
      });
      expect(rankOf(after, id)).toBeLessThanOrEqual(rankOf(before, id));
    }),
    { numRuns: 40 },
  );
});

const sure = { form: ['tube'], finish: ['wax'], ends: ['wax-plug'], leads: ['ends'] };

describe('answers', () => {
  test.each([
    { what: 'none at all', answers: {} },
    { what: 'an empty list', answers: { chosen: { form: [] } } },
    { what: 'a question that there is not', answers: { chosen: { smell: ['wax'] } } },
    { what: 'an answer that there is not', answers: { chosen: { form: ['egg'] } } },
    { what: 'a number for a question of looks', answers: { numbers: { form: exactly(1) } } },
  ])('$what change nothing', ({ answers }) => {
    expect(lookKey(catalogue, answers)).toEqual(lookKey(catalogue, {}));
  });

  test('one wrong answer does not rule a style out', () => {
    const wrong = lookKey(catalogue, { chosen: { ...sure, colour: ['violet'] } });
    expect(wrong.styles[0]?.id).toBe('paper-wax-tubular');
    const worse = lookKey(catalogue, { chosen: { ...sure, leads: ['studs'] } });
    expect(worse.styles[0]?.id).toBe('paper-wax-tubular');
    expect(worse.styles[0]?.against.map(({ question }) => question)).toEqual(['leads']);
  });

  test('of two ticks to one question either may be meant', () => {
    const both = lookKey(catalogue, { chosen: { form: ['disc', 'drop'] } });
    const one = lookKey(catalogue, { chosen: { form: ['disc'] } });
    for (const style of ['ceramic-disc-class2', 'ta-bead']) {
      expect(rankOf(both, style)).toBeLessThan(15);
    }
    expect(likelihoodOf(one, 'ta-bead')).toBeLessThan(likelihoodOf(both, 'ta-bead'));
  });

  test('marks that are seen count one by one', () => {
    const dot = lookKey(catalogue, { chosen: { form: ['drop'], marks: ['polarity'] } });
    const more = lookKey(catalogue, {
      chosen: { form: ['drop'], marks: ['polarity', 'side-dot'] },
    });
    expect(likelihoodOf(more, 'ta-bead')).toBeGreaterThan(likelihoodOf(dot, 'ta-bead'));
  });

  test('a year counts as a span', () => {
    const of = (min: number, max: number): LookResult =>
      lookKey(catalogue, {
        chosen: { form: ['tube'], finish: ['moulded'] },
        numbers: { year: { min, typ: (min + max) / 2, max } },
      });
    const paper = (result: LookResult): number => likelihoodOf(result, 'paper-moulded-banded');
    const film = (result: LookResult): number => likelihoodOf(result, 'pet-tubular-moulded');
    expect(paper(of(1952, 1952))).toBeGreaterThan(film(of(1952, 1952)));
    expect(film(of(1972, 1972))).toBeGreaterThan(paper(of(1972, 1972)));
    expect(paper(of(1950, 1959)) / film(of(1950, 1959))).toBeGreaterThan(
      paper(of(1955, 1975)) / film(of(1955, 1975)),
    );
  });

  test('insulation times capacitance is held against the capacitance that is known', () => {
    const standing = (capacitance: number | undefined): string | undefined => {
      const numbers = {
        insulation: exactly(5e9),
        ...(capacitance !== undefined && { capacitance: exactly(capacitance) }),
      };
      const { styles: likely } = lookKey(catalogue, { chosen: { form: ['tube'] }, numbers });
      const film = likely.find(({ id }) => id === 'pet-tubular-moulded');
      return [...(film?.for ?? []), ...(film?.against ?? [])].find(
        ({ question }) => question === 'insulation',
      )?.how;
    };
    // 5 GΩ is good film at 1 µF, would be poor film at 10 nF, and says nothing by itself.
    expect(standing(1e-6)).toBe('inside');
    expect(standing(1e-8)).toBe('outside');
    expect(standing(undefined)).toBeUndefined();
  });

  test('insulation that only a capacitance could place says nothing against a part', () => {
    const share = (insulation: number): number =>
      likelihoodOf(
        lookKey(catalogue, { chosen: sure, numbers: { insulation: exactly(insulation) } }),
        'paper-wax-tubular',
      );
    // Sound waxed paper of a small value reads thousands of megohms, leaky one tens.
    expect(share(5e9)).toBeGreaterThan(0.9);
    expect(share(5e7)).toBeGreaterThan(0.9);
  });

  test('what a better reading says already is not counted twice', () => {
    const numbers = { 'd-1khz': exactly(0.005) };
    const more = { ...numbers, 'c-ratio': exactly(1.2) };
    const [once, twice] = [lookKey(catalogue, { numbers }), lookKey(catalogue, { numbers: more })];
    expect(twice.styles).toEqual(once.styles);
  });

  test('a reading that makes no sense for a part speaks against it', () => {
    const { styles: likely } = lookKey(catalogue, {
      chosen: { form: ['tube'] },
      numbers: { 'd-1khz': exactly(0.005) },
    });
    const resistor = likely.find(({ id }) => id === 'r-carbon-composition');
    expect(resistor?.against.map(({ how }) => how)).toContain('senseless');
  });
});

describe('grounds', () => {
  const result = lookKey(catalogue, {
    chosen: { ...sure, marks: ['end-band'] },
    numbers: { year: exactly(1985), capacitance: exactly(5e-8) },
  });
  const wax = result.styles[0];

  test('name what speaks for a style and against it, with the source', () => {
    expect(wax?.for.map(({ question }) => question)).toEqual(
      expect.arrayContaining(['form', 'finish', 'ends', 'marks']),
    );
    expect(wax?.against).toMatchObject([{ question: 'year', how: 'outside' }]);
    expect(wax?.for.find(({ question }) => question === 'finish')).toMatchObject({
      how: 'usual',
      source: 'antiqradio-types',
    });
  });

  test('stand in the order of their weight', () => {
    const bits = (wax?.for ?? []).map((ground) => ground.bits);
    expect(bits).toEqual(bits.toSorted((a, b) => b - a));
  });

  test('cite only sources that there are', () => {
    const cited = result.styles.flatMap((style) => [...style.for, ...style.against]);
    expect(cited.every(({ source }) => Object.hasOwn(catalogue.sources, source))).toBe(true);
  });
});

describe('what to ask next', () => {
  test('is the shape, as long as nothing is known', () => {
    expect(lookKey(catalogue, {}).next[0]?.question).toBe('form');
  });

  test('is what the leading parts differ in', () => {
    const { next } = lookKey(catalogue, { chosen: { form: ['box'], finish: ['plastic'] } });
    expect(next[0]?.question).not.toBe('form');
    const worth = next.map((one) => one.worth);
    expect(worth).toEqual(worth.toSorted((a, b) => b - a));
  });

  test('leaves out what a better reading says already', () => {
    const { next } = lookKey(catalogue, { numbers: { 'd-1khz': exactly(0.005) } });
    expect(next.map(({ question }) => question)).not.toContain('c-ratio');
  });

  test('polyester and polypropylene in tape are told apart by loss and by warming', () => {
    const { apart } = lookKey(catalogue, {
      chosen: { form: ['tube'], finish: ['tape'], ends: ['resin'], marks: ['uf'] },
    });
    expect([apart?.first.kind, apart?.second.kind].toSorted()).toEqual([
      'pet-metallized',
      'pp-metallized',
    ]);
    const asked = apart?.tellings.map(({ question }) => question);
    expect(asked).toContain('warm-c');
    expect(asked).toContain('d-1khz');
  });
});
