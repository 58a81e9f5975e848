import { expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { demoJob, planJob, recordOf, sheetOf, understandWith } from '../../../src/job/index.ts';
import { emptyFitted, emptyPreset } from '../../../src/job/model/job.ts';

const catalogue = loadCatalogue();
const whole = { catalogueAt: () => catalogue, understand: understandWith(catalogue) };

/** RV1 of the invented board, whose old one reads 2.687 kΩ, with what the new one was set to. */
const setTo = (text: string) => {
  const job = demoJob(catalogue.job, 'mixer-card', new Date(0));
  const lines = job.lines.map((line) =>
    line.designators === 'RV1'
      ? {
          ...line,
          fitted: {
            RV1: {
              ...emptyFitted(),
              preset: { ...emptyPreset(), old: '2.687 k', total: '10 k', turns: '25' },
              measured: { 'set-to': text },
            },
          },
        }
      : line,
  );
  const set = { ...job, lines };
  const plan = planJob(set, whole);
  const step = sheetOf(set, plan, { ...whole, common: catalogue }).steps.find(
    ({ designator }) => designator === 'RV1',
  );
  const entry = recordOf(set, plan, catalogue, () => catalogue).entries.find(
    ({ designator }) => designator === 'RV1',
  );
  const field = step?.fields.find(({ row }) => row.id === 'set-to');
  return { outside: field?.outside, recorded: JSON.stringify(entry) };
};

test.each([
  ['2.687 k', false],
  ['2,69 k', false],
  ['2.72 k', true],
  ['3.1 k', true],
  ['268.7', true],
  ['wobbly', false],
  ['', false],
])('a trimmer set to %s: whether that is off its setting', (text, isOff) => {
  const { outside, recorded } = setTo(text);
  expect(outside !== '', outside).toBe(isOff);
  expect(recorded.includes('off its setting')).toBe(isOff);
});

test('it says by how much, which way, and what is possible', () => {
  const said = setTo('3.1 k').outside?.replaceAll('\u00A0', ' ');
  expect(said).toMatch(/it has to read 2\.687 kΩ, this is 413 Ω more, .* within 5 Ω/u);
});
