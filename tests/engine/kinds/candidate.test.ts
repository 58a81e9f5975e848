import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { assessKind, findKindStandIns } from '../../../src/engine/index.ts';
import { exactly } from '../../../src/engine/quantities/range.ts';

/** Which part is assessed: what is asked for, filled up with what the market offers of the type. */

const catalogue = loadCatalogue();
const request = {
  original: { type: 'carbon-film', value: exactly(10e3), rating: exactly(0.25) },
  position: 'bias-resistor',
};
const offered = assessKind(catalogue, request, { type: 'metal-film' });
const wide = { minus: 0.1, plus: 0.2 };

describe('assessKind', () => {
  it('takes what is offered of the type, and says how it is sold', () => {
    expect(offered.candidate).toStrictEqual({
      type: 'metal-film',
      value: 10e3,
      unit: 'ohm',
      tolerance: { minus: 0.01, plus: 0.01 },
      rating: 0.25,
      ratingUnit: 'W',
    });
    expect(offered.buy?.style).toMatch(/\w/);
    expect(offered.buy?.pitch).toEqual([]);
    expect(offered.buy?.series).toMatch(/^E\d+$/);
  });

  it.each([
    [{ value: 12e3 }, { value: 12e3, rating: 0.25, tolerance: { minus: 0.01, plus: 0.01 } }],
    [{ tolerance: wide }, { value: 10e3, rating: 0.25, tolerance: wide }],
    [{ rating: 0.6 }, { value: 10e3, rating: 0.6, tolerance: { minus: 0.01, plus: 0.01 } }],
    [
      { value: 12e3, tolerance: wide, rating: 1 },
      { value: 12e3, tolerance: wide, rating: 1 },
    ],
  ])('keeps what is said, %o, and fills up the rest', (said, candidate) => {
    const found = assessKind(catalogue, request, { type: 'metal-film', ...said });
    expect(found.candidate).toStrictEqual({
      type: 'metal-film',
      unit: 'ohm',
      ratingUnit: 'W',
      ...candidate,
    });
    // Nobody said that the market has it.
    expect(found.buy).toBeUndefined();
  });

  it('judges each demand of the position once, the gravest finding first', () => {
    const demands = offered.findings.map(({ demand }) => demand);
    const asked = catalogue.demands.filter(({ position }) => position === request.position);
    expect(new Set(demands).size).toBe(demands.length);
    expect(demands.length).toBe(asked.length);
    const order = ['keep-out', 'stopgap', 'fits-if', 'fits'];
    const far = assessKind(catalogue, request, { type: 'metal-film', value: 100e3 });
    const ranks = far.findings.map(({ verdict }) => order.indexOf(verdict));
    expect(ranks[0]).toBe(Math.min(...ranks));
    expect(far.verdict).toBe('keep-out');
  });

  it('does not know a type that there is not', () => {
    expect(() => assessKind(catalogue, request, { type: 'no-such' })).toThrow(/type/);
  });
});

describe('findKindStandIns', () => {
  const found = findKindStandIns(catalogue, request);

  it('has the best of each type that is sold, once, kept-out ones last', () => {
    const types = found.map(({ candidate }) => candidate.type);
    expect(new Set(types).size).toBe(types.length);
    const firstOut = found.findIndex(({ verdict }) => verdict === 'keep-out');
    if (firstOut >= 0)
      expect(found.slice(firstOut).every(({ verdict }) => verdict === 'keep-out')).toBe(true);
    expect(found[0]?.verdict).toBe('fits');
    expect(found.find(({ candidate }) => candidate.type === 'metal-film')?.buy).toEqual(
      offered.buy,
    );
  });

  it('offers nothing that is made for a duty alone where nobody asks for it', () => {
    const alone = Object.values(catalogue.kindTypes).filter(({ only_asked }) => only_asked);
    expect(alone.length).toBeGreaterThan(0);
    const types = found.map(({ candidate }) => candidate.type);
    for (const { id } of alone) expect(types).not.toContain(id);
  });
});
