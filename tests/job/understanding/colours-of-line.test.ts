import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { sliceColours, sliceReading } from '../../../src/catalogue/slices/slice-reading.ts';
import { haveColours, understandWith } from '../../../src/job/index.ts';
import { emptyLine, type Line } from '../../../src/job/model/job.ts';
import { understoodLine } from '../../../src/job/understanding/understood.ts';
import { toHtml } from '../../../src/markup/to-html.ts';
import { readColourRow } from '../../../src/reading/colours/row.ts';
import { colourAnswer } from '../../../src/search/colour-answer.ts';

// As a browser has them: what sees colours and what reads them are two slices.
const whole = loadCatalogue();
const [reading, colours] = [sliceReading(whole), sliceColours(whole)];
const readRow = (row: readonly string[]) => readColourRow(colours, row);
const lineOf = (said: Partial<Line>): Line => ({ ...emptyLine('a'), designators: 'R1', ...said });
const read = (said: Partial<Line>) => understoodLine(reading, lineOf(said), readRow);

describe('a line marked with colours', () => {
  it.each([
    ['brown black orange gold', 10_000, 0.05],
    ['Brown, Black, Orange, Gold', 10_000, 0.05],
    ['brown-black-orange-gold', 10_000, 0.05],
    ['BN BK OG GD', 10_000, 0.05],
    ['yellow violet orange silver', 47_000, 0.1],
    ['gray red yellow gold', 820_000, 0.05],
    ['brown black black red brown', 10_000, 0.01],
  ])('of a resistor, %s', (marking, ohm, tolerance) => {
    const { part, asks } = read({ kind: 'resistor', marking });
    // A fifth band may be one of another scheme, which is asked.
    const offered = asks.find(({ about }) => about === 'marking')?.choices[0]?.set;
    const { part: taken } = read({ kind: 'resistor', marking, ...offered });
    expect((part.value ?? taken.value)?.typ).toBeCloseTo(ohm);
    expect((part.tolerance ?? taken.tolerance)?.plus).toBeCloseTo(tolerance);
  });

  it('takes four plain bands without asking', () => {
    const { part, asks } = read({ kind: 'resistor', marking: 'brown black orange gold' });
    expect(part.value?.typ).toBeCloseTo(10_000);
    expect(asks.map(({ about }) => about)).not.toContain('marking');
  });

  it('asks where the list says something else', () => {
    const said = { kind: 'resistor', marking: 'brown black orange gold' };
    const ask = (value: string) =>
      read({ ...said, value }).asks.find(({ about }) => about === 'value');
    expect(ask('10k')).toBeUndefined();
    expect(ask('100k')?.question).toMatch(/100.kΩ, which is used; the marking reads as 10.kΩ/u);
  });

  it('asks of a part of no known kind which it is, each answer told apart', () => {
    const { asks } = read({ designators: '', kind: '', marking: 'yellow violet yellow gold' });
    const choices = asks.find(({ about }) => about === 'marking')?.choices ?? [];
    expect(choices[0]?.set).toMatchObject({ kind: 'resistor', value: '470k' });
    expect(choices.map(({ set }) => set.kind)).toContain('capacitor');
    const labels = choices.map(({ label }) => label);
    expect(new Set(labels).size).toBe(labels.length);
  });

  it('of a striped film takes what stripes say, not what bands on tubes would', () => {
    const { part } = read({
      kind: 'capacitor',
      type: 'pet-metallized',
      marking: 'yellow violet yellow white red',
    });
    expect(part.capacitance?.typ).toBeCloseTo(4.7e-7);
    expect(part.ratedVoltage?.typ).toBe(250);
  });

  it('of a diode or a chip is not read', () => {
    for (const kind of ['diode', 'ic', 'fuse'])
      expect(read({ kind, marking: 'brown black orange gold' }).part.value, kind).toBeUndefined();
  });

  it('stays unread, and harmless, until what reads colours is there', () => {
    const line = lineOf({ kind: 'resistor', marking: 'brown black orange gold', value: '10k' });
    const { value, rejected } = understandWith(reading)(line);
    expect(value?.typ).toBeCloseTo(10_000);
    expect(rejected).toEqual({});
  });

  it('says what the box of the home page says', () => {
    const row = ['brown', 'black', 'orange', 'gold'];
    const answer = colourAnswer(colours, row);
    const said = answer === undefined ? '' : toHtml(answer);
    const names = readRow(row).map(({ readings }) => readings[0].colours?.name ?? '');
    expect(names.filter((name) => name !== '').length).toBeGreaterThan(0);
    for (const name of names) expect(said).toContain(name);
  });
});

describe('whether lines need what reads colours', () => {
  it.each([
    ['brown black orange gold', true],
    ['RD RD RD', true],
    ['red disc', false],
    ['104K', false],
    ['yellow violet', false],
    ['black red brown axial', false],
    ['', false],
  ])('%s: %s', (marking, needs) => {
    const lines = [lineOf({ marking: '4n7' }), lineOf({ marking })];
    expect(haveColours(reading, lines)).toBe(needs);
  });
});
