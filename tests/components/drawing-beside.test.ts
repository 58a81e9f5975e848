import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { sliceDrawings } from '../../src/catalogue/slices/slice-job.ts';
import { slicePosition } from '../../src/catalogue/slices/slice-position.ts';
import { findStandIns, resolveSituation, type Catalogue } from '../../src/engine/index.ts';
import type { Element, Markup } from '../../src/markup/node.ts';
import { toHtml } from '../../src/markup/to-html.ts';
import { drawnBeside } from '../../src/substitution/drawn.ts';

const catalogue = loadCatalogue();

/** The catalogue as a browser has it, of a position and of what drawings need. */
const asFetched = (position: string): Catalogue => {
  const fetched = (slice: Catalogue): Catalogue => JSON.parse(JSON.stringify(slice)) as Catalogue;
  const { typeLooks, markings } = fetched(sliceDrawings(catalogue));
  return { ...fetched(slicePosition(catalogue, position)), typeLooks, markings };
};

const elementsOf = (markup: Markup): Element[] =>
  typeof markup === 'string' ? [] : [markup, ...markup.children.flatMap(elementsOf)];

const drawingOf = (markup: Markup): Element => {
  const drawing = elementsOf(markup).find(({ tag }) => tag === 'svg');
  if (drawing === undefined) throw new Error('expected a drawing');
  return drawing;
};

/** Types in positions where they are met, of several families. */
const PAIRS = [
  ['paper-wax', 'interstage-coupling'],
  ['ceramic-disc-unknown', 'rc-filter-audio'],
  ['ta-mno2-solid', 'local-decoupling'],
  ['al-electrolytic-wet', 'reservoir'],
  ['film-x2', 'mains-x'],
  ['ps-film-foil', 'active-filter'],
  ['pp-motor-run', 'motor-run'],
] as const;

describe.each(PAIRS)('%s in %s', (type, position) => {
  const request = { original: { type }, position };
  const [first] = findStandIns(catalogue, request);
  if (first === undefined) throw new Error('expected a stand-in');
  const { original } = resolveSituation(catalogue, request);
  const whole = drawnBeside(catalogue, original, first);

  test('is drawn in the browser as from everything', () => {
    expect(toHtml(drawnBeside(asFetched(position), original, first))).toBe(toHtml(whole));
  });

  test('is named before its stand-in, over one rule', () => {
    const label = drawingOf(whole).attributes['aria-label'];
    expect(label).toMatch(/^old part: .*; stand-in/);
    const rules = elementsOf(whole).filter(({ attributes }) => attributes['class'] === 'pd-rule');
    expect(rules).toHaveLength(1);
  });

  test('has no smaller scale where there is more room', () => {
    const scale = (room?: number): number =>
      Number(drawingOf(drawnBeside(catalogue, original, first, room)).attributes['data-px-per-mm']);
    expect(scale(700)).toBeGreaterThanOrEqual(scale());
    expect(scale(200)).toBeLessThanOrEqual(scale());
  });
});
