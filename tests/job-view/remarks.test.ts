import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { remarksOf, wantsAttention } from '../../src/job-view/remarks.ts';
import { demoJob } from '../../src/job/model/demo.ts';
import { emptyJob, emptyLine, type Line } from '../../src/job/model/job.ts';
import { planJob } from '../../src/job/planning/plan.ts';
import { firstAsk } from '../../src/job/planning/questions.ts';
import { understandWith } from '../../src/job/understanding/understood.ts';

const catalogue = loadCatalogue();
const words = {
  typeName: (id: string) => catalogue.types[id]?.name ?? id,
  askOf: (planned: Parameters<typeof firstAsk>[1]) => firstAsk(catalogue, planned),
  common: catalogue,
};
const tools = { catalogueAt: () => catalogue, understand: understandWith(catalogue) };

const planOf = (...said: Partial<Line>[]) => {
  const lines = said.map((one, at) => ({ ...emptyLine(String(at)), ...one }));
  return planJob({ ...emptyJob('a', new Date(0)), lines }, tools).lines;
};

const disc: Partial<Line> = {
  designators: 'C1',
  kind: 'capacitor',
  type: 'ceramic-z5u',
  value: '47 nF',
  volts: '50 V',
  position: 'tone-stack',
};

test.each<[string, Partial<Line>, RegExp]>([
  ['a place that the old type does not suit', disc, /^It may stay, but even new/u],
  ['a decision without its reason', { ...disc, decision: 'replace' }, /give the reason/u],
  ['a number that is not one', { ...disc, value: 'ten' }, /^Value: /u],
  ['a designator that is none', { ...disc, designators: 'C1-R4' }, /^Designators: /u],
  ['no designator', { ...disc, designators: '' }, /^Still to say: designators/u],
  ['no type', { ...disc, type: '' }, /What type of capacitor/u],
  ['no value', { ...disc, value: '' }, /^Still to say: value/u],
  [
    'a rating of a valve circuit that is to become a lower one',
    { ...disc, type: 'ceramic-disc-unknown', volts: '1 kV' },
    /^Rated for \d+\sV, the old part for 1\skV/u,
  ],
  [
    'a rating for AC that is to become a lower one for DC',
    { ...disc, type: 'ceramic-disc-unknown', volts: '250 V~' },
    /^Rated for \d+\sV, the old part for 250\sV AC, a peak of 354\sV/u,
  ],
  [
    'a choice that is no type',
    {
      ...disc,
      choice: {
        type: 'x',
        value: '',
        tolerance: '',
        rating: '',
        reason: '',
        locked: true,
      },
    },
    /^Your choice is left unused/u,
  ],
  ['another kind that nobody judged', { designators: 'U1', kind: 'ic', value: 'x' }, /Say what/u],
])('%s wants attention', (_what, line, said) => {
  const [planned] = planOf(line);
  if (planned === undefined) throw new Error('no line');
  expect(wantsAttention(planned, words)).toBe(true);
  expect(
    remarksOf(planned, words)
      .filter(({ acts }) => acts)
      .map(({ text }) => text),
  ).toEqual(expect.arrayContaining([expect.stringMatching(said)]));
});

test('what the visitor decided with a reason is told and left alone', () => {
  const [planned] = planOf({ ...disc, decision: 'leave', decisionReason: 'Sounds right' });
  if (planned === undefined) throw new Error('no line');
  expect(wantsAttention(planned, words)).toBe(false);
  expect(remarksOf(planned, words).map(({ text }) => text)).toEqual([
    expect.stringMatching(/even new the old type/u),
  ]);
});

test('a place that is not known is asked about, and nothing is waited for', () => {
  const line = { ...emptyLine('1'), ...disc, position: 'somewhere in the coupling' };
  const { lines } = planJob(
    { ...emptyJob('a', new Date(0)), lines: [line] },
    { ...tools, catalogueAt: () => undefined },
  );
  const said = lines.flatMap((planned) => remarksOf(planned, words).map(({ text }) => text));
  expect(said).toEqual([expect.stringMatching(/not a position that is known here/u)]);
});

test('both rows of a doubled designator want attention', () => {
  const planned = planOf(
    { ...disc, decision: 'leave', decisionReason: 'x' },
    { ...disc, decision: 'leave', decisionReason: 'x', designators: 'C1, C2' },
  );
  expect(planned.map((one) => wantsAttention(one, words))).toEqual([true, true]);
});

test('a demonstration leaves something to look at, and not everything', () => {
  for (const { id } of catalogue.job.demoJobs) {
    const { lines } = planJob(demoJob(catalogue.job, id, new Date(0)), tools);
    const wanted = lines.filter((one) => wantsAttention(one, words)).length;
    expect(wanted).toBeLessThan(lines.length / 2);
  }
});

test.each<[string, Partial<Line>, RegExp | undefined]>([
  ['a mains part in a signal', { type: 'film-x2', value: '0.1 µF', volts: '275~' }, /AC voltage/u],
  ['the same by its mark', { type: 'film-x2', marking: '0.1 X2 275~' }, /AC voltage/u],
  [
    'wax paper for AC',
    { type: 'paper-wax', value: '', volts: '', marking: '0.1 250 VAC' },
    /AC voltage/u,
  ],
  ['one rated for direct voltage', { type: 'film-x2', value: '0.1 µF', volts: '275 V' }, undefined],
])('%s: which voltage its rating is for', (_, said, expected) => {
  const [planned] = planOf({ ...disc, ...said, position: 'interstage-coupling' });
  const texts = planned === undefined ? [] : remarksOf(planned, words).map(({ text }) => text);
  const found = texts.filter((text) => text.includes('AC voltage'));
  expect(found).toEqual(expected === undefined ? [] : [expect.stringMatching(expected)]);
});

test('a chip in the place of a part with leads is said', () => {
  const job = demoJob(catalogue.job, 'mixer-card', new Date(0));
  const bead = planJob(job, tools).lines.find(({ line }) => line.designators === 'C9');
  const texts = bead === undefined ? [] : remarksOf(bead, words).map(({ text }) => text);
  expect(texts).toContainEqual(expect.stringMatching(/chip without leads/u));
  expect(texts).toContainEqual(
    expect.stringMatching(/With leads: Tantalum.+.22.µF .+, fits if …/u),
  );
});

const film: Partial<Line> = { ...disc, type: 'pet-metallized', volts: '1 kV' };
test.each<[string, Partial<Line>]>([
  ['the voltage is typed', { ...film, conditions: { vdc: '40 V' } }],
  ['the old part is rated for less than valves need', { ...film, volts: '100 V' }],
])('nothing is said of a lower rating where %s', (_where, line) => {
  const [planned] = planOf(line);
  if (planned === undefined) throw new Error('no line');
  const said = remarksOf(planned, words).map(({ text }) => text);
  expect(said.filter((text) => text.startsWith('Rated for'))).toEqual([]);
});
