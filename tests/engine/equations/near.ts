import { expect } from 'vitest';

/** Numbers under names, such as a range or what an equation tells all at once. */
export type Numbers = Readonly<Record<string, number>>;

const asNumbers = (answer: number | object): Numbers =>
  typeof answer === 'number' ? { answer } : (answer as Numbers);

/** That every number is the one worked out by hand, to one in a million. */
export const expectNear = (got: number | object, expected: number | object): void => {
  const [found, wanted] = [asNumbers(got), asNumbers(expected)];
  expect(Object.keys(found).toSorted()).toEqual(Object.keys(wanted).toSorted());
  for (const [name, value] of Object.entries(wanted)) {
    const near = Number.isFinite(value)
      ? Math.abs((found[name] ?? NaN) - value) <= 1e-6 * Math.abs(value) + 1e-18
      : found[name] === value;
    expect(near ? value : found[name], name).toBe(value);
  }
};
