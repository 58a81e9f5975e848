import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { cautionList } from '../../../src/job-view/caution-list.ts';
import {
  demoJob,
  emptyJob,
  emptyLine,
  planJob,
  sheetOf,
  understandWith,
  type Sheet,
} from '../../../src/job/index.ts';
import type { Line } from '../../../src/job/model/job.ts';
import { toHtml } from '../../../src/markup/to-html.ts';

const catalogue = loadCatalogue();
const tools = { catalogueAt: () => catalogue, understand: understandWith(catalogue) };

const sheetWith = (
  lines: readonly Partial<Line>[],
  conditions: Record<string, string> = {},
): Sheet => {
  const empty = emptyJob('assumed', new Date(0));
  const job = {
    ...empty,
    whole: { ...empty.whole, conditions },
    lines: lines.map((line, at) => ({ ...emptyLine(`line-${String(at)}`), ...line })),
  };
  return sheetOf(job, planJob(job, tools), { catalogueAt: () => catalogue, common: catalogue });
};

const bias: Partial<Line> = {
  designators: 'R1-R3',
  kind: 'resistor',
  type: 'carbon-composition',
  value: '47 kΩ',
  tolerance: '10 %',
  volts: '0.5 W',
  position: 'bias-resistor',
  decision: 'replace',
};
const rail: Partial<Line> = {
  designators: 'C1',
  kind: 'capacitor',
  type: 'al-electrolytic-wet',
  value: '47 µF',
  volts: '350 V',
  position: 'bulk-rail',
  decision: 'replace',
};

const highVoltage = ({ cautions }: Sheet) => cautions.find(({ row }) => row.id === 'high-voltage');

describe('a caution that rests on a number that nobody typed', () => {
  // 0.3 of half a watt in 47 kilohm: √(0.15 · 47 000) = 84 V.
  it('names the number, where it comes from, and whose it is', () => {
    const found = highVoltage(sheetWith([bias]));
    expect(found?.assumed).toMatchObject({
      how: 'derived',
      designators: ['R1', 'R2', 'R3'],
      from: 60,
      lines: 1,
    });
    expect(found?.assumed?.range.typ).toBeCloseTo(83.96, 1);
    const html = found === undefined ? '' : cautionList([found]).map(toHtml).join('');
    expect(html).toContain('assumed: 84');
    expect(html).toMatch(
      /nobody typed .* \(R1[–-]R3\) is taken as 84.V, worked out from the old part/iu,
    );
    expect(html).toMatch(/below 60.V this goes/u);
  });

  it.each([
    ['a typed number that is high', { vdc: '250 V' }, true],
    ['a typed number that is low', { vdc: '15 V' }, false],
  ])('with %s says nothing of assuming', (_, conditions, isDue) => {
    const found = highVoltage(sheetWith([{ ...bias, conditions }]));
    expect(found !== undefined).toBe(isDue);
    expect(found?.assumed).toBeUndefined();
  });

  it('goes by what is typed for the whole board', () => {
    expect(highVoltage(sheetWith([bias], { vdc: '200 V' }))?.assumed).toBeUndefined();
    expect(highVoltage(sheetWith([bias], { vdc: '12 V' }))).toBeUndefined();
  });

  it('takes the highest of several lines, and is sure as soon as one is typed', () => {
    // Three quarters of 350 V.
    const both = highVoltage(sheetWith([bias, rail]))?.assumed;
    expect(both).toMatchObject({ designators: ['C1'], lines: 2 });
    expect(both?.range.typ).toBeCloseTo(262.5);
    const typed = sheetWith([bias, { ...rail, conditions: { vdc: '300 V' } }]);
    expect(highVoltage(typed)?.assumed).toBeUndefined();
    const own = typed.steps.find(({ designator }) => designator === 'R1')?.cautions;
    expect(own?.find(({ row }) => row.id === 'high-voltage')?.assumed).toBeDefined();
  });

  it('does not make a caution of a place sound assumed', () => {
    const { cautions } = sheetWith([{ ...rail, type: 'film-x2', position: 'mains-x' }]);
    const mains = cautions.find(({ row }) => row.id === 'mains');
    expect(mains).toBeDefined();
    expect(mains?.assumed).toBeUndefined();
  });
});

it('the card of the mixer, on rails of 15 V, warns of no high voltage', () => {
  const job = demoJob(catalogue.job, 'mixer-card', new Date(0));
  const { cautions, steps } = sheetOf(job, planJob(job, tools), {
    catalogueAt: () => catalogue,
    common: catalogue,
  });
  const ids = [cautions, ...steps.map((step) => step.cautions)].flat().map(({ row }) => row.id);
  expect(ids).not.toContain('high-voltage');
  expect(ids).not.toContain('valve-supply');
});
