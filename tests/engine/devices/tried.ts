import { deviceModels } from '../../../src/engine/devices/models/index.ts';
import { exactly, type Range } from '../../../src/engine/quantities/range.ts';
import type { DeviceFigureRow } from '../../../src/schemas/devices.ts';
import { catalogueWith, device, figure, use } from './made-up.ts';

/** Tries an invented device in place of another, with the figures of both and numbers of a circuit. */

/** The least, the usual and the most. */
export type Three = readonly [number, number, number];
export type Figures = Readonly<Record<string, Three | number>>;
export type Numbers = Readonly<Record<string, number>>;

/** Figures in SI: a volt has no factor. */
const rows = (of: string, figures: Figures): DeviceFigureRow[] =>
  Object.entries(figures).map(([property, said]) => {
    const [min, typ, max] = typeof said === 'number' ? [said, said, said] : said;
    return figure(of, property, { min, typ, max, unit: 'V' });
  });

export const tried = device('tried');
const original = device('old');

export const circumstances = (figures: DeviceFigureRow[], conditions: Numbers) => ({
  catalogue: catalogueWith({ figures }),
  use,
  original,
  conditions: Object.fromEntries(
    Object.entries(conditions).map(([id, number]) => [id, exactly(number)]),
  ),
});

/** What the finding `id` comes to, and what its working says with common blanks. */
export const tryOut = (id: string, figures: Figures, numbers: Numbers, old: Figures = {}) => {
  const where = circumstances([...rows('tried', figures), ...rows('old', old)], numbers);
  const model = deviceModels[id];
  if (model === undefined) throw new Error(`no model ${id}`);
  const outcome = model.measure(tried, where);
  const working = (value: Range): string =>
    model.working(tried, where, value).replaceAll(/[\u00A0\u202F]/gu, ' ');
  return { outcome, working };
};
