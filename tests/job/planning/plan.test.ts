import { describe, expect, test, vi } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import {
  isCapacitor,
  newPlanCache,
  planJob,
  planSteps,
  recordOf,
  sheetOf,
} from '../../../src/job/index.ts';
import { emptyLine, type Job, type Line } from '../../../src/job/model/job.ts';
import { partAsTyped } from '../../../src/job/understanding/part-of-line.ts';
import { understandWith } from '../../../src/job/understanding/understood.ts';
import { jobOf } from '../boards.ts';

const catalogue = loadCatalogue();
const tools = () => ({ catalogueAt: () => catalogue, cache: newPlanCache() });

const line = (id: string, said: Partial<Line>): Line => ({ ...emptyLine(id), ...said });

const coupling = (id: string, said: Partial<Line> = {}): Line =>
  line(id, {
    designators: id.toUpperCase(),
    kind: 'capacitor',
    type: 'al-electrolytic-wet',
    value: '10 µF',
    volts: '25 V',
    position: 'interstage-coupling',
    ...said,
  });

const only = (job: Job) => {
  const [planned] = planJob(job, tools()).lines;
  if (planned === undefined) throw new Error('no line');
  return planned;
};

describe('designators', () => {
  test.each([
    ['C1', ['C1']],
    ['C1-C3, C7', ['C1', 'C2', 'C3', 'C7']],
    ['R4–6', ['R4', 'R5', 'R6']],
    ['C9 - C10', ['C9', 'C10']],
    ['', []],
  ])('%s', (text, expected) => {
    expect(partAsTyped(line('x', { designators: text })).designators).toEqual(expected);
  });
});

test('lines that say the same of parts with other letters are understood apart', () => {
  const understand = vi.fn(understandWith(catalogue));
  const marking = '470/25 regulator';
  const job = jobOf(
    line('a', { designators: 'C3', marking }),
    line('b', { designators: 'C4', marking }),
    line('c', { designators: 'IC5', marking }),
  );
  const { lines } = planJob(job, { ...tools(), understand });
  expect(lines.map(({ part }) => part.kind)).toEqual(['capacitor', 'capacitor', 'regulator']);
  // Those with the same letters once.
  expect(understand).toHaveBeenCalledTimes(2);
});

describe('what to do with a line', () => {
  test.each<[string, Partial<Line>, string, string]>([
    ['the rules decide', {}, 'test', 'rules'],
    [
      'a reading decides',
      { found: { ...emptyLine('').found, capacitance: '5 µF' } },
      'replace',
      'rules',
    ],
    ['the visitor outranks them', { decision: 'leave' }, 'leave', 'visitor'],
    ['nothing is known', { type: '' }, 'test', 'nobody'],
  ])('%s', (_, said, decision, decidedBy) => {
    expect(only(jobOf(coupling('c1', said)))).toMatchObject({ decision, decidedBy });
  });

  test('a decision against the rules asks for its reason', () => {
    expect(only(jobOf(coupling('c1', { decision: 'leave' }))).wantsReason).toBe(true);
    const said = { decision: 'leave', decisionReason: 'new last year' } as const;
    expect(only(jobOf(coupling('c1', said))).wantsReason).toBe(false);
  });

  test.each<[Partial<Line>, string, string[]]>([
    [{ kind: 'resistor', type: '', value: '4k7' }, 'other', []],
    [{ type: '' }, 'open', ['type']],
    [{ position: '' }, 'open', ['position']],
    [{ type: 'no-such' }, 'open', ['type']],
  ])('%o is %s', (said, state, missing) => {
    expect(only(jobOf(coupling('c1', said)))).toMatchObject({ state, missing });
  });

  test('a line waits for the catalogue of its position', () => {
    const plan = planJob(jobOf(coupling('c1')), { catalogueAt: () => undefined });
    expect(plan.lines[0]?.state).toBe('waiting');
    expect(plan.wanted).toEqual(['interstage-coupling']);
  });

  test('each line keeps its own designators, and what is wrong with them', () => {
    const job = jobOf(coupling('c1'), coupling('c2', { designators: 'C5-C2' }));
    const { lines } = planJob(job, tools());
    expect(lines.map(({ part }) => part.designators)).toEqual([['C1'], []]);
    expect(lines.map(({ rejected }) => Object.keys(rejected))).toEqual([[], ['designators']]);
  });

  test('a number that cannot be understood is reported', () => {
    const found = { ...emptyLine('').found, esr: 'low' };
    const { rejected } = only(jobOf(coupling('c1', { found })));
    expect(Object.keys(rejected)).toEqual(['esr']);
  });

  test.each<[Partial<Line>]>([[{ value: 'a lot' }], [{ volts: 'many' }]])(
    'nothing is offered for %o, as if it were usual',
    (said) => {
      const planned = only(jobOf(coupling('c1', said)));
      expect(planned).toMatchObject({ state: 'open', missing: [] });
      expect(Object.keys(planned.rejected)).toEqual(Object.keys(said));
      expect(planned.standIn).toBeUndefined();
    },
  );
});

describe('the part to fit', () => {
  test('the best stand-in unless the visitor chose', () => {
    const planned = only(jobOf(coupling('c1')));
    expect(planned.standIn).toEqual(planned.worked?.best);
    expect(planned.standIn?.verdict).toBe('fits');
    expect(planned.chosenBy).toBe('rules');
  });

  const kept = { type: 'ceramic-y5v', value: '', tolerance: '', rating: '' };

  test.each([
    [{ reason: 'it is in the drawer', locked: false }, 'visitor'],
    [{ reason: '', locked: true }, 'visitor'],
    [{ reason: '', locked: false }, 'rules'],
  ])('a worse choice with %o is that of the %s', (said, chosenBy) => {
    const planned = only(jobOf(coupling('c1', { choice: { ...kept, ...said } })));
    expect(planned.chosenBy).toBe(chosenBy);
    expect(planned.setAside !== undefined).toBe(chosenBy === 'rules');
  });

  test('a choice that is not understood is said', () => {
    const choice = { ...kept, value: 'much', reason: '', locked: true };
    expect(only(jobOf(coupling('c1', { choice }))).choiceFault).not.toBeUndefined();
  });
});

/** Tools that tell of each assessment that is worked out. */
const countingTools = () => {
  const counted = vi.fn();
  const { catalogueAt, cache } = tools();
  const { get } = cache.worked;
  cache.worked.get = (key, work) =>
    get(key, () => {
      counted();
      return work();
    });
  return { catalogueAt, cache, counted };
};

describe('the whole board', () => {
  test('its conditions hold where the line says nothing else', () => {
    const job = jobOf(coupling('c1'), coupling('c2', { conditions: { 't-max': '40' } }));
    job.whole.conditions = { 't-max': '70' };
    const values = planJob(job, tools()).lines.map(({ worked }) =>
      worked?.best?.findings.find(({ finding }) => finding === 'temperature'),
    );
    expect(values[0]).not.toEqual(values[1]);
    expect(values[0]).not.toBeUndefined();
  });

  test('lines that ask the same are worked out once, and a change works out one', () => {
    const { counted, ...shared } = countingTools();
    const lines = Array.from({ length: 40 }, (_, n) =>
      coupling(`c${String(n)}`, { value: n % 2 === 0 ? '10 µF' : '22 µF' }),
    );
    const job = jobOf(...lines);
    planJob(job, shared);
    planJob(job, shared);
    const written = lines.with(3, coupling('c3', { value: '22u' }));
    planJob({ ...job, lines: written }, shared);
    expect(counted).toHaveBeenCalledTimes(2);
    const changed = lines.with(3, coupling('c3', { value: '47 µF' }));
    planJob({ ...job, lines: changed }, shared);
    expect(counted).toHaveBeenCalledTimes(3);
  });

  test('a page may stop after any line, and what was worked out by then stays', () => {
    const { counted, ...shared } = countingTools();
    const job = jobOf(...['10 µF', '22 µF', '47 µF'].map((value) => coupling(value, { value })));
    const brokenOff = planSteps(job, shared);
    expect([brokenOff.next().done, brokenOff.next().done]).toEqual([false, false]);
    expect(counted).toHaveBeenCalledTimes(2);
    const plan = planJob(job, shared);
    expect(counted).toHaveBeenCalledTimes(3);
    const told = ({ lines }: ReturnType<typeof planJob>) =>
      lines.map(({ worked, ...line }) => ({
        ...line,
        worked: {
          ...worked,
          misfit: worked?.misfit(),
          rest: worked?.rest(),
          soldAsOld:
            line.standIn !== undefined && isCapacitor(line.standIn)
              ? worked?.soldAsOld?.(line.standIn, 'axial')
              : undefined,
        },
      }));
    expect(told(plan)).toEqual(told(planJob(job, tools())));
  });

  test('ten thousand lines of a kind are planned', () => {
    const understand = vi.fn(partAsTyped);
    const lines = Array.from({ length: 10_000 }, (_, n) =>
      coupling(`c${String(n)}`, { value: `${String(10 + (n % 5))} µF` }),
    );
    const { counted, ...shared } = countingTools();
    const plan = planJob(jobOf(...lines), { ...shared, understand });
    expect(plan.lines).toHaveLength(10_000);
    expect(counted).toHaveBeenCalledTimes(5);
    expect(understand).toHaveBeenCalledTimes(5);
  });
});

test('a line that has nothing but a note is no part: nothing is asked, tested or wanted of it', () => {
  const job = jobOf(line('0', { note: 'Power supply board' }));
  const plan = planJob(job, tools());
  const [planned] = plan.lines;
  expect(planned).toMatchObject({ state: 'other', decision: 'leave', missing: [] });
  const common = catalogue;
  expect(sheetOf(job, plan, { catalogueAt: () => catalogue, common }).steps).toEqual([]);
  expect(recordOf(job, plan, common, () => catalogue).entries).toMatchObject([
    { note: 'Power supply board', why: 'a note of the list, and no part' },
  ]);
  // A line that names a part besides is planned as before.
  const named = only(jobOf(line('0', { note: 'Power supply board', designators: 'C1' })));
  expect(named).toMatchObject({ state: 'open', decision: 'test' });
});
