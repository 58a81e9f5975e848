import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { emptyState, type ColourState } from '../../src/reading/colours/state.ts';
import {
  stepByKey,
  stepByTyped,
  stepToForm,
  stepToLayout,
} from '../../src/reading/colours/steps.ts';

const tables = loadCatalogue().markings;

/** A state with the colours of a text, `-` for a place that is open. */
const having = (layout: string, text: string): ColourState => ({
  ...emptyState(tables, layout),
  marks: text.split(' ').map((word) => (word === '-' ? undefined : word)),
});
const written = ({ marks }: ColourState): string => marks.map((mark) => mark ?? '-').join(' ');

/** Four bands of which the second is being set. */
const HALF = 'yellow - - -';

describe('a key among places and colours', () => {
  // Figures are those of IEC 60062: 2 is red, 7 violet.
  test.each<[key: string, before: string, at: number, after: string, next: number]>([
    ['7', HALF, 1, 'yellow violet - -', 2],
    ['2', 'yellow violet red -', 3, 'yellow violet red red', 4],
    ['?', 'yellow violet - -', 1, 'yellow - - -', 2],
    ['Enter', HALF, 1, HALF, 2],
    ['Enter', HALF, 3, HALF, 0],
    ['Backspace', 'yellow violet - -', 2, 'yellow - - -', 1],
    ['Delete', 'yellow violet - -', 1, 'yellow - - -', 1],
    ['Backspace', '- - - -', 0, '- - - -', 0],
    ['v', HALF, 1, 'yellow violet - -', 1],
    ['V', HALF, 1, 'yellow violet - -', 1],
  ])('%s in %s', (key, before, at, after, next) => {
    const step = stepByKey(tables, { state: having('resistor-4', before), at }, key);
    expect(step && written(step.state)).toBe(after);
    expect(step?.at).toBe(next);
  });

  test('a letter goes round the colours that begin with it', () => {
    const met = new Set<string>();
    let state = having('resistor-4', '- - - -');
    for (let times = 0; times < 10; times += 1) {
      const step = stepByKey(tables, { state, at: 0 }, 'b');
      if (step === undefined) throw new Error('no colour');
      state = step.state;
      met.add(written(state));
    }
    for (const colour of ['black', 'brown', 'blue']) expect(met).toContain(`${colour} - - -`);
    expect(met.size).toBeLessThan(10);
  });

  test.each(['k', 'Tab', 'ArrowLeft', ' ', 'bb'])('%s is left to the browser', (key) => {
    expect(stepByKey(tables, { state: having('resistor-4', HALF), at: 1 }, key)).toBeUndefined();
  });
});

describe('colours that are typed', () => {
  test.each<[typed: string, layout: string, after: string, at: number, said: string]>([
    ['472 gold', 'resistor-4', 'yellow violet red gold', 4, ''],
    // As many places as are typed, where the body comes with so many.
    ['yellow violet black red brown', 'resistor-5', 'yellow violet black red brown', 5, ''],
    ['47', 'resistor-4', 'yellow violet - -', 2, ''],
    ['47 mauve', 'resistor-4', 'yellow violet - -', 2, 'No colour: mauve.'],
    [
      '1234567',
      'resistor-4',
      'brown red orange yellow',
      7,
      'This body has 4 at most; 3 more typed.',
    ],
  ])('%s', (typed, layout, after, at, said) => {
    const step = stepByTyped(tables, emptyState(tables), typed);
    expect([step.state.layout.id, written(step.state), step.at, step.said]).toEqual([
      layout,
      after,
      at,
      said,
    ]);
  });
});

describe('another body or number of places', () => {
  test.each<[id: string, before: string, after: string, at: number]>([
    ['resistor-5', 'yellow violet red -', 'yellow violet red - -', 3],
    ['resistor-3', 'yellow violet red gold', 'yellow violet red', 0],
  ])('%s after %s', (id, before, after, at) => {
    const step = stepToLayout(tables, having('resistor-4', before), id);
    expect([step.state.layout.id, written(step.state), step.at]).toEqual([id, after, at]);
  });

  test.each<[form: string, before: string, layout: string]>([
    // With nothing set, what is usual of the body.
    ['ceramic-tube', '- - - -', 'ceramic-tube-5'],
    // Else as many places as are set, where it comes with so many.
    ['tantalum-bead', 'yellow violet - -', 'tantalum-bead-4'],
    ['ceramic-body', 'yellow violet - -', 'ceramic-body-1'],
  ])('%s after %s', (form, before, layout) => {
    expect(stepToForm(tables, having('resistor-4', before), form).state.layout.id).toBe(layout);
  });
});
