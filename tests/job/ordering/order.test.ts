import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  isCapacitor,
  orderOf,
  orderText,
  planJob,
  readDelimited,
  recordOf,
  sheetOf,
} from '../../../src/job/index.ts';
import { emptyJob, type Line } from '../../../src/job/model/job.ts';
import { formingNote } from '../../../src/job/ordering/lead-forming.ts';
import { orderCsv, orderTabbed } from '../../../src/job/ordering/order-csv.ts';
import { sparesFor, spareRuleOf } from '../../../src/job/ordering/spares.ts';
import { understandWith } from '../../../src/job/understanding/understood.ts';
import { can, catalogue, catalogueAt, film, jobOf, line, other, planned } from '../boards.ts';

describe('spares', () => {
  test.each([
    ['10 %', '1', 30, 3],
    ['10 %', '1', 31, 4],
    ['10 %', '2', 3, 2],
    ['', '0', 7, 0],
    ['0.1', '0', 1000, 1],
    ['10 %', '1', 0, 0],
  ])('%s and at least %s of %i', (spareShare, spareLeast, needed, expected) => {
    const rule = spareRuleOf({ ...emptyJob('', new Date(0)).whole, spareShare, spareLeast });
    expect(rule.faults).toEqual([]);
    expect(sparesFor(needed, rule)).toBe(expected);
  });

  test.each([
    ['some', '1'],
    ['10 %', 'two'],
    ['-5 %', '1'],
    ['10 %', '1.5'],
  ])('%s and %s is a fault', (spareShare, spareLeast) => {
    const whole = { ...emptyJob('', new Date(0)).whole, spareShare, spareLeast };
    expect(spareRuleOf(whole).faults).toHaveLength(1);
  });
});

describe('the order', () => {
  test('groups what is bought alike, whatever the lines', () => {
    const job = jobOf(line('C1-C3', film), line('C9', film), line('C10', can), line('R1', other));
    job.whole.spareLeast = '1';
    const { groups } = orderOf(planned(job), job.whole, catalogue);
    expect(groups.map(({ designators, needed, total }) => [designators, needed, total])).toEqual([
      [['C1', 'C2', 'C3', 'C9'], 4, 5],
      [['C10'], 1, 2],
      [['R1'], 1, 2],
    ]);
    expect(groups[2]?.notes).toEqual(['as typed, not assessed']);
  });

  test('says what it cannot order', () => {
    const job = jobOf(
      line('C1', { ...film, type: '' }),
      line('', film),
      line('Q1', { kind: 'transistor' }),
    );
    const { groups, unsettled } = orderOf(planned(job), job.whole, catalogue);
    expect(groups).toEqual([]);
    expect(unsettled.map(({ reason }) => reason)).toEqual([
      'its type is not known',
      'no designator is given',
      'nothing says what it is',
    ]);
  });

  const gain = { ...other, type: 'carbon-film', position: 'gain-resistor' };
  test.each<[string, Partial<Line>, string]>([
    ['a capacitor without a value', { ...film, value: '' }, 'its value is not known'],
    ['a resistor without a value', { ...gain, value: '' }, 'its value is not known'],
    ['a resistor in farads', { ...gain, value: '10 uF' }, 'its value is not understood'],
    ['an impossible rating', { ...film, volts: '99999 kV' }, 'its rated voltage is not understood'],
    ['a power that is none', { ...gain, volts: 'half' }, 'its rating is not understood'],
  ])('buys no usual part in the place of %s', (_what, said, reason) => {
    const job = jobOf(line('X1', said));
    const plan = planJob(job, { catalogueAt, understand: understandWith(catalogue) });
    const { groups, unsettled } = orderOf(plan, job.whole, catalogue);
    expect(groups).toEqual([]);
    expect(unsettled.map((one) => one.reason)).toEqual([reason]);
    const { steps } = sheetOf(job, plan, { catalogueAt, common: catalogue });
    expect(steps.map(({ fit }) => fit)).toEqual(['']);
  });

  test('buys what the visitor names where the old value is not known', () => {
    const choice = {
      type: 'pet-metallized',
      value: '47 nF',
      tolerance: '10 %',
      rating: '63 V',
      reason: 'read off the diagram',
      locked: true,
    };
    const job = jobOf(line('C1', { ...film, value: '', choice }));
    const { groups } = orderOf(planned(job), job.whole, catalogue);
    expect(groups.map(({ value }) => value)).toEqual(['47\u00A0nF']);
  });

  test('buys both parts of a pair and its resistors', () => {
    // 33 µF at 350 V in film is no single part; side by side or in series it is.
    const job = jobOf(
      line('C1', {
        type: 'al-electrolytic-wet',
        value: '100 µF',
        volts: '500 V',
        position: 'reservoir',
        conditions: { vdc: '480' },
      }),
    );
    const plan = planned(job);
    const made = plan.lines[0]?.worked
      ?.rest()
      .standIns.filter(isCapacitor)
      .find(({ candidate }) => candidate.made !== undefined);
    if (made?.candidate.made === undefined) throw new Error('no pair is offered');
    const lines = plan.lines.map((one) => ({ ...one, standIn: made }));
    const { groups } = orderOf({ ...plan, lines }, job.whole, catalogue);
    const { parts, resistor, bleeder } = made.candidate.made;
    const expected =
      parts.length + (resistor === undefined ? 0 : 1) + (bleeder === undefined ? 0 : parts.length);
    expect(groups.reduce((sum, { needed }) => sum + needed, 0)).toBe(expected);
  });

  test('tells of leads to be formed where the place is known to differ', () => {
    const at = (room: string) => {
      const job = jobOf(line('C1', { ...film, conditions: { room } }));
      return orderOf(planned(job), job.whole, catalogue).groups[0]?.notes.join();
    };
    expect(at('10 mm')).toContain('form the leads');
    expect(at('')).toBe('');
  });

  // Lead bends by the diameter of the lead: below 0.8 mm one of them, from 0.8 to 1.2 mm one and a half.
  test.each([
    [undefined, 'tighter than 1 lead diameter inside, for leads under 0.8\u00A0mm'],
    [0.6, 'tighter than 1 lead diameter inside, for leads of 0.6\u00A0mm'],
    [0.8, 'tighter than 1.5 lead diameters inside, for leads of 0.8\u00A0mm'],
    [1.3, 'tighter than 2 lead diameters inside, for leads of 1.3\u00A0mm'],
  ])('tells how leads of %s mm are bent', (lead, said) => {
    const job = jobOf(line('C1', { ...film, conditions: { room: '10 mm' } }));
    const [{ worked } = {}] = planned(job).lines;
    const [best] = worked?.rest().standIns.filter(isCapacitor) ?? [];
    if (best?.buy?.body === undefined || job.lines[0] === undefined) throw new Error('no body');
    const { shape, length, width, height } = best.buy.body;
    const sides = { shape, length, width, height, pitch: [15] };
    const body = lead === undefined ? sides : { ...sides, lead };
    const note = formingNote(job.lines[0], { ...best, buy: { ...best.buy, body } }, catalogue);
    expect(note).toContain(said);
    expect(note).toContain('straight for 0.8\u00A0mm or 1 lead diameter, whichever is more');
  });

  test.each([
    ['ta-polymer', ['a chip without leads: it needs pads or short wires']],
    ['ta-mno2-solid', []],
  ])('tells of a part without leads: %s', (type, notes) => {
    const job = jobOf(
      line('C9', {
        type: 'ta-mno2-solid',
        value: '22 µF',
        volts: '16 V',
        position: 'local-decoupling',
        decision: 'replace',
      }),
    );
    const plan = planned(job);
    const standIn = plan.lines[0]?.worked
      ?.rest()
      .standIns.filter(isCapacitor)
      .find(({ candidate }) => candidate.type === type);
    if (standIn === undefined) throw new Error(`${type} is not offered`);
    const lines = plan.lines.map((one) => ({ ...one, standIn }));
    const [group] = orderOf({ ...plan, lines }, job.whole, catalogue).groups;
    expect(group?.notes).toEqual(notes);
  });

  test('is safe to open and plain to copy', () => {
    const job = jobOf(line('R1', { ...other, value: '=cmd()' }), line('C1', film));
    const order = orderOf(planned(job), job.whole, catalogue);
    expect(orderCsv(order)).toContain("'=cmd()");
    expect(orderText(order).split('\n')).toHaveLength(3);
    const copied = readDelimited(orderTabbed(order));
    const saved = readDelimited(orderCsv(order));
    if (!copied.ok || !saved.ok) throw new Error('a table of our own cannot be read');
    expect([copied.delimiter, saved.delimiter]).toEqual(['\t', ',']);
    expect(copied.rows).toEqual(saved.rows);
    expect(copied.rows).toHaveLength(3);
  });

  const lines = fc.array(
    fc.record({
      count: fc.integer({ min: 0, max: 30 }),
      what: fc.constantFrom(film, can, other, { ...film, type: '' }),
      decision: fc.constantFrom('judge', 'replace', 'test', 'leave'),
    }),
    { maxLength: 12 },
  );

  test('comes to every designator that is replaced, plus spares; the record has all', () => {
    fc.assert(
      fc.property(lines, fc.integer({ min: 0, max: 5 }), (said, least) => {
        const job = jobOf(
          ...said.map(({ count, what, decision }, n) => ({
            ...line(count === 0 ? '' : `C${String(n * 100)}-C${String(n * 100 + count - 1)}`, what),
            id: String(n),
            decision,
          })),
        );
        job.whole.spareLeast = String(least);
        const plan = planned(job);
        const { groups, unsettled } = orderOf(plan, job.whole, catalogue);
        const count = (of: readonly { part: { designators: readonly string[] } }[]) =>
          of.reduce((sum, { part }) => sum + part.designators.length, 0);
        const replaced = plan.lines.filter(({ decision }) => decision === 'replace');
        const needed = groups.reduce((sum, group) => sum + group.needed, 0);
        expect(needed + count(unsettled.map((one) => one.planned))).toBe(count(replaced));
        for (const group of groups) expect(group.total).toBe(group.needed + least);
        const { entries } = recordOf(job, plan, catalogue, catalogueAt);
        const names = plan.lines.flatMap(({ part }) =>
          part.designators.length === 0 ? [''] : part.designators,
        );
        expect(entries.map(({ designator }) => designator)).toEqual(names);
      }),
      { numRuns: 40 },
    );
  });
});
