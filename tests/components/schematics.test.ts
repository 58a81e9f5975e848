import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { schematicMarkup, schematics } from '../../src/components/schematics/index.ts';
import type { Element, Markup } from '../../src/markup/node.ts';

const { positions, kindPositions } = loadCatalogue();

const elementsOf = (markup: Markup): Element[] =>
  typeof markup === 'string' ? [] : [markup, ...markup.children.flatMap(elementsOf)];

const wordsOf = (markup: Markup): string =>
  typeof markup === 'string' ? markup : markup.children.map(wordsOf).join('');

/** Places that strokes run to. */
const placesOf = (d: string): [number, number][] =>
  [...d.matchAll(/[ML]([-\d.]+) ([-\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);

/** Width of a character, about, at the size of the labels. */
const CHARACTER = 6.2;

/** Where a label begins and ends. */
const spanOf = (text: Element): [number, number] => {
  const x = Number(text.attributes['x']);
  const width = wordsOf(text).length * CHARACTER;
  const start =
    { middle: x - width / 2, end: x - width }[text.attributes['text-anchor'] ?? ''] ?? x;
  return [start, start + width];
};

const drawings = Object.entries(schematics).flatMap(([id, schematic]) =>
  schematic ? [{ id, schematic, drawing: schematicMarkup(schematic) }] : [],
);

it('every position has a circuit, and no circuit is without its position', () => {
  expect(drawings.map(({ id }) => id).sort()).toEqual(
    Object.keys({ ...positions, ...kindPositions }).sort(),
  );
});

describe.each(drawings)('the circuit of $id', ({ schematic, drawing }) => {
  const elements = elementsOf(drawing);
  const here = elements.filter(({ attributes }) => attributes['class'] === 'here');

  it('is named in a sentence of its own', () => {
    expect(drawing.attributes['aria-label']).toMatch(/^[A-Z].{30,}\.$/);
    expect(drawings.filter((other) => other.schematic.name === schematic.name)).toHaveLength(1);
  });

  it('shows the part in question, by weight as well as by colour', () => {
    expect(here.length).toBeGreaterThan(0);
    for (const group of here) {
      const plates = elementsOf(group).filter(({ attributes }) => 'stroke-width' in attributes);
      expect(plates).toHaveLength(1);
    }
  });

  it('keeps within its frame', () => {
    const [width, height] = schematic.size.map((steps) => steps * 10) as [number, number];
    for (const { attributes } of elements.filter(({ tag }) => tag === 'path')) {
      for (const [x, y] of placesOf(attributes['d'] ?? '')) {
        expect(x).toBeGreaterThanOrEqual(0);
        expect(x).toBeLessThanOrEqual(width);
        expect(y).toBeGreaterThanOrEqual(0);
        expect(y).toBeLessThanOrEqual(height);
      }
    }
    for (const text of elements.filter(({ tag }) => tag === 'text')) {
      const [start, end] = spanOf(text);
      expect(start).toBeGreaterThanOrEqual(0);
      expect(end).toBeLessThanOrEqual(width);
    }
  });

  it('fits a phone and asks for no style of its own', () => {
    expect(schematic.size[0]).toBeLessThanOrEqual(35);
    for (const { attributes } of elements) {
      expect(attributes).not.toHaveProperty('style');
      for (const value of Object.values(attributes)) expect(value).not.toMatch(/NaN|undefined|#/);
    }
  });
});
