import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { drawingKey, sheetTable, stretchesOf } from '../../src/job-view/sheet-table.ts';
import {
  emptyFitted,
  emptyJob,
  emptyLine,
  planJob,
  sheetOf,
  understandWith,
  type Sheet,
} from '../../src/job/index.ts';
import type { Line } from '../../src/job/model/job.ts';
import { toHtml } from '../../src/markup/to-html.ts';

const catalogue = loadCatalogue();

const sheetWith = (lines: readonly Partial<Line>[]): Sheet => {
  const job = {
    ...emptyJob('large', new Date(0)),
    lines: lines.map((line, at) => ({ ...emptyLine(`line-${String(at)}`), ...line })),
  };
  const tools = { catalogueAt: () => catalogue, understand: understandWith(catalogue) };
  const plan = planJob(job, tools);
  return sheetOf(job, plan, { catalogueAt: () => catalogue, common: catalogue });
};

const wet: Partial<Line> = {
  kind: 'capacitor',
  type: 'al-electrolytic-wet',
  position: 'bulk-rail',
  value: '47 µF',
  volts: '25 V',
};
const large = sheetWith([
  { ...wet, designators: 'C1-C400' },
  { ...wet, designators: 'C401', value: '10 µF', decision: 'replace', decisionReason: 'vented' },
  { designators: 'RV1-RV2', kind: 'trimmer', value: '10 kohm', decision: 'replace' },
  {
    designators: 'C500',
    kind: 'capacitor',
    type: 'film-unknown',
    position: 'rc-filter-audio',
    value: '10 nF',
    decision: 'test',
    note: '<b>beside RV1</b>',
    fitted: {
      C500: { ...emptyFitted(), found: { capacitance: '9,1 n' }, note: 'dull', done: true },
    },
  },
]);

describe('a large bench sheet on paper', () => {
  const stretches = stretchesOf(large.steps);
  const electrolytic = large.steps.find(({ designator }) => designator === 'C1');
  const drawings = new Map([[(electrolytic && drawingKey(electrolytic)) ?? '', 7]]);
  const html = stretches.map((one) =>
    'rows' in one ? toHtml(sheetTable(one.rows, drawings)) : '',
  );

  it('has every step once, in its order, trimmers by themselves', () => {
    const ids = stretches.flatMap((one) =>
      'rows' in one ? one.rows.map(({ id }) => id) : [one.whole.id],
    );
    expect(ids).toEqual(large.steps.map(({ id }) => id));
    const whole = stretches.flatMap((one) => ('whole' in one ? [one.whole.designator] : []));
    expect(whole).toEqual(['RV1', 'RV2']);
    const rows = html.join('').match(/<tr data-step=/gu);
    expect(rows).toHaveLength(large.steps.length - whole.length);
  });

  it('says what was read and noted, as text', () => {
    const row = /<tr data-step="line-3 C500">.*?<\/tr>/u.exec(html.join(''))?.[0] ?? '';
    expect(row).toContain('Capacitance 9.1');
    expect(row).toContain('&lt;b&gt;beside RV1&lt;/b&gt;; dull');
    expect(row).not.toContain('<b>beside');
  });

  it('numbers one drawing for all that look alike, and none where the way round is all one', () => {
    const keys = new Set(large.steps.map(drawingKey));
    expect(keys.size).toBeLessThan(6);
    const film = large.steps.find(({ designator }) => designator === 'C500');
    expect(film && drawingKey(film)).toBeUndefined();
    expect(html.join('').match(/polarity\. Drawing 7\./giu)?.length).toBe(400);
  });

  it('says each caution in full once', () => {
    const said = large.steps.flatMap(({ cautions }) => cautions).filter(({ isFirst }) => isFirst);
    expect(html.join('').match(/<details/gu)?.length ?? 0).toBe(said.length);
  });
});
