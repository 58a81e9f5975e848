import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { sliceDrawings } from '../../src/catalogue/slices/slice-job.ts';
import { outlines } from '../../src/job-view/outline-sketch.ts';
import { demoJob, planJob, sheetOf, understandWith } from '../../src/job/index.ts';

const catalogue = loadCatalogue();
const looks = sliceDrawings(catalogue);

const stepAt = (board: string, designator: string) => {
  const job = demoJob(catalogue.job, board, new Date(0));
  const whole = { catalogueAt: () => catalogue, understand: understandWith(catalogue) };
  const { steps } = sheetOf(job, planJob(job, whole), { ...whole, common: catalogue });
  const step = steps.find((one) => one.designator === designator);
  if (step === undefined) throw new Error(`no step for ${designator}`);
  return step;
};

test.each([
  [
    'mixer-card',
    'R1',
    [
      ['old part', 'composition'],
      ['new part', 'resistor'],
    ],
  ],
  [
    'mixer-card',
    'RV1',
    [
      ['old part', 'open-preset'],
      ['new part', 'multi-turn'],
    ],
  ],
  ['mixer-card', 'RV3', [['old part', 'open-preset']]],
  // The same number goes in again.
  ['mixer-card', 'Q3', [['old and new part', 'flat-sided']]],
  ['mains-card', 'D1', [['old part', 'axial-bead']]],
  ['mains-card', 'U1', [['old part', 'tabbed']]],
  // Nothing says how these look, and capacitors are drawn by their own tables.
  ['mixer-card', 'J1', []],
  ['mixer-card', 'C10', []],
] as const)('%s %s is drawn as it usually looks', (board, designator, expected) => {
  const drawn = outlines(stepAt(board, designator), catalogue, looks);
  expect(drawn.map(({ name, spec }) => [name, spec.form])).toEqual(expected);
});

test('a diode shows its cathode, a device its number, and what looks alike is drawn once', () => {
  const [diode] = outlines(stepAt('mains-card', 'D1'), catalogue, looks);
  expect(diode?.spec).toMatchObject({ polarity: 'cathode-band', marking: ['1N4002'] });
});

test('bands tell value and tolerance of a resistor, and have their names beside them', () => {
  const [old, fresh] = outlines(stepAt('mixer-card', 'R1'), catalogue, looks);
  expect(old?.spec.bands).toEqual(['yellow', 'violet', 'orange', 'silver']);
  expect(old?.said).toContain('bands yellow – violet – orange – silver');
  expect(fresh?.spec.bands).toEqual(['yellow', 'violet', 'black', 'red', 'brown']);
  // Trimmers have none.
  const [trimmer] = outlines(stepAt('mixer-card', 'RV1'), catalogue, looks);
  expect(trimmer?.spec.bands ?? []).toEqual([]);
});
