import { expect } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { allSums } from '../../../src/engine/sums/index.ts';
import { readInputs } from '../../../src/engine/sums/read-inputs.ts';
import { typicalOf } from '../../../src/engine/sums/span.ts';
import type { Sum, SumCell } from '../../../src/engine/sums/sum.ts';

/** Bench sums asked as people write it, for what they show beside their numbers. */

export const catalogue = loadCatalogue();

export const sumOf = (id: string): Sum => {
  const sum = allSums.find((one) => one.id === id);
  if (sum === undefined) throw new Error(`there is no sum ${id}`);
  return sum;
};

export type Texts = Readonly<Record<string, string>>;

export const valuesOf = (sum: Sum, facts: unknown, texts: Texts) => {
  const { given, faults } = readInputs(sum, facts, texts);
  expect(faults).toEqual({});
  return typicalOf(given);
};

export const tablesOf = (id: string, texts: Texts, facts: unknown = sumOf(id).facts?.(catalogue)) =>
  sumOf(id).tables?.(valuesOf(sumOf(id), facts, texts), facts) ?? [];

export const picturesOf = (
  id: string,
  texts: Texts,
  facts: unknown = sumOf(id).facts?.(catalogue),
) => sumOf(id).pictures?.(valuesOf(sumOf(id), facts, texts), facts) ?? [];

/** A cell as plain text: numbers in SI without their last digits, and their unit. */
const plain = (cell: SumCell): string => {
  if (typeof cell === 'string') return cell.replaceAll(/\s/gu, ' ');
  const { value, unit } = cell;
  const said = (number: number): string => String(Number(number.toPrecision(4)));
  return typeof value === 'number'
    ? `${said(value)} ${unit}`
    : `${said(value.min)}..${said(value.typ)}..${said(value.max)} ${unit}`;
};

export const rowsOf = (id: string, texts: Texts, facts?: unknown): string[][] =>
  tablesOf(id, texts, ...(facts === undefined ? [] : [facts])).flatMap(({ rows }) =>
    rows.map((row) => row.map(plain)),
  );

export const range = (min: number, typ: number, max: number) => ({ min, typ, max });
