import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import {
  planJob,
  sheetOf,
  understandWith,
  type PlannedLine,
  type SheetStep,
} from '../../src/job/index.ts';
import { emptyJob, emptyLine, type Job, type Line } from '../../src/job/model/job.ts';
import { answerHtml } from '../search/answer-html.ts';

/**
 * A technician’s walk for each family of parts: what the box answers to a mark, what the line of a job
 * comes to with the numbers of one’s own circuit, and what the bench sheet then asks to be done.
 */

const catalogue = loadCatalogue();
const tools = { catalogueAt: () => catalogue, understand: understandWith(catalogue) };
const common = { catalogueAt: () => catalogue, common: catalogue };

interface Walk {
  /** What is typed into the box, and the page that it has to lead to. */
  mark: string;
  leadsTo: string;
  line: Partial<Line>;
  goesIn: RegExp;
  /** What each of these findings says of the part that goes in. */
  says: Readonly<Record<string, RegExp>>;
  /** What can be written down at the bench. */
  fields: readonly string[];
}

const WALKS: Readonly<Record<string, Walk>> = {
  resistor: {
    mark: '22R 1W',
    leadsTo: '/types/carbon-composition/?value=22&amp;rating=1',
    line: {
      kind: 'resistor',
      type: 'carbon-composition',
      value: '22',
      volts: '1 W',
      position: 'inrush-limiter',
      conditions: { 'v-fault': '120 V' },
    },
    goesIn: /^Ceramic composition resistor, 22 Ω/u,
    says: {
      flammability: /120 V across 22 Ω makes 655 W, .* does not burn/u,
      'resistor-power': /0.1 W; 1 W × 82.6 % at 60 °C/u,
      'surge-duty': /charging 100 µF to 325 V puts 5\.28 J into it/u,
      'self-inductance': /nH at 1 MHz/u,
    },
    fields: ['resistance'],
  },
  trimmer: {
    mark: '10K LIN',
    leadsTo: '/types/carbon-pot/',
    line: {
      kind: 'trimmer',
      type: 'carbon-preset',
      value: '10k',
      position: 'pitch-trim',
      conditions: { load: '100k', 'other-leakage': '500 nA' },
    },
    goesIn: /ermet/u,
    says: {
      'setting-under-load': /100 kΩ and 500 nA at the wiper leave 4\.88 V of 5 V/u,
      'contact-jump': /in 2\.5 kΩ \+ 100 kΩ: up to [\d.]+ mV of 4\.88 V/u,
      'divider-current': /mA in the track/u,
      'setting-transfer': /set the same ratio/u,
    },
    fields: [],
  },
  pot: {
    mark: 'B50K',
    leadsTo: '/types/carbon-pot/',
    line: { kind: 'pot', marking: 'B50K', type: 'carbon-pot', position: 'volume-control' },
    goesIn: /arbon.*50 kΩ/u,
    says: { 'rotation-share': /turns/u },
    fields: [],
  },
  switch: {
    mark: 'CD4016AE',
    leadsTo: '/devices/4016a/',
    line: {
      kind: 'ic',
      marking: 'CD4016AE',
      position: 'switch-hold',
      conditions: {},
    },
    goesIn: /40/u,
    says: { 'charge-step': /pC|V/u, 'hold-droop': /for 10 ms on 10 nF/u, span: /V/u },
    fields: [],
  },
  logic: {
    mark: 'SN7400N',
    leadsTo: '/devices/',
    line: { kind: 'ic', marking: '4011', position: 'logic-12v' },
    goesIn: /4011/u,
    says: { 'supply-high': /V/u },
    fields: [],
  },
  amplifier: {
    mark: 'uA741CP',
    leadsTo: '/devices/741/',
    line: { kind: 'ic', marking: 'uA741', position: 'amp-integrator' },
    goesIn: /./u,
    says: { 'dc-error': /V/u, slewing: /./u, swing: /V/u },
    fields: [],
  },
  diode: {
    mark: '1N4001',
    leadsTo: '/devices/1n4001/',
    line: { kind: 'diode', marking: '1N4001', position: 'diode-rectifier' },
    goesIn: /1N/u,
    says: { surge: /A/u, reverse: /V/u, recovery: /./u },
    fields: [],
  },
  regulator: {
    mark: 'LM7815CT',
    leadsTo: '/devices/7815/',
    line: { kind: 'regulator', marking: 'LM7815CT', position: 'reg-rail' },
    goesIn: /7815/u,
    says: { headroom: /V/u, 'output-capacitor': /F/u, discharge: /./u },
    fields: [],
  },
  socket: {
    mark: '14 pin DIL',
    leadsTo: '/devices/dip-14-dual/',
    line: { kind: 'socket', type: 'dip-14-dual', position: 'socket-corner' },
    goesIn: /DIP-14/u,
    says: { 'seat-height': /mm/u, contact: /Ω/u },
    fields: ['notch'],
  },
};

const jobOf = (line: Partial<Line>): Job => ({
  ...emptyJob('walk', new Date(0)),
  lines: [{ ...emptyLine('1'), designators: 'X1', decision: 'replace', ...line }],
});

const walked = (line: Partial<Line>): { planned: PlannedLine; step: SheetStep } => {
  const job = jobOf(line);
  const plan = planJob(job, tools);
  const [planned] = plan.lines;
  const [step] = sheetOf(job, plan, common).steps;
  if (planned === undefined || step === undefined) throw new Error('nothing to do');
  return { planned, step };
};

const spaced = (text: string): string => text.replaceAll('\u00a0', ' ');

test('a load that the old trimmer had as well does not make a stopgap of the new one', () => {
  const { planned } = walked({
    ...WALKS['trimmer']?.line,
    conditions: { load: '20k', 'other-leakage': '0' },
  });
  const found = planned.standIn?.findings.find(({ finding }) => finding === 'setting-under-load');
  expect(found?.verdict).toBe('fits-if');
});

describe.each(Object.entries(WALKS))('a walk with a %s', (_family, walk) => {
  test('the box leads to its page', () => {
    const html = answerHtml(catalogue, walk.mark);
    expect(html).toContain(walk.leadsTo);
  });

  test('the job and the bench sheet carry it through', () => {
    const { planned, step } = walked(walk.line);
    expect(planned.state).toBe('assessed');
    expect(spaced(step.fit)).toMatch(walk.goesIn);
    const findings = planned.standIn?.findings ?? [];
    for (const [id, words] of Object.entries(walk.says)) {
      const said = findings.filter(({ finding }) => finding === id);
      expect(
        said.length,
        `${id} is not among ${findings.map((one) => one.finding).join(' ')}`,
      ).toBeGreaterThan(0);
      for (const { working } of said) expect(spaced(working), id).toMatch(words);
    }
    expect(step.row).toBeDefined();
    const ids = step.fields.map(({ row }) => row.id);
    expect(ids).toEqual(expect.arrayContaining([...walk.fields]));
  });
});
