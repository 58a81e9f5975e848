import fc from 'fast-check';
import { emptyJob, emptyLine, type Job, type Line } from '../../src/job/model/job.ts';

/** Texts with what is awkward in tables, files and addresses. */
const anyText = fc.oneof(
  fc.string({ unit: 'grapheme', maxLength: 12 }),
  fc.constantFrom('=1+1', '-40', "'=x", '@a', '\tb', 'a\r\nb', '"q"', 'a;b', '4,7 nF', '</script>'),
);

const anyKey = fc.oneof(
  fc.constantFrom('constructor', 'toString', 'Qty', 'Value'),
  fc.stringMatching(/^[A-Za-z ]{1,8}$/u),
);
const byKey = fc.dictionary(anyKey, anyText, { maxKeys: 3, noNullPrototype: true });

const anyPreset = fc.record({
  from: anyText,
  to: anyText,
  use: fc.constantFrom('rheostat', 'divider'),
  old: anyText,
  oldTotal: anyText,
  supplied: anyText,
  total: anyText,
  turns: anyText,
});

const anyAdjustment = fc.record({
  id: anyText,
  what: anyText,
  before: anyText,
  after: anyText,
  done: fc.boolean(),
  at: anyText,
});

export const anyLine: fc.Arbitrary<Line> = fc
  .record({
    designators: anyText,
    kind: anyText,
    marking: anyText,
    type: anyText,
    value: anyText,
    tolerance: anyText,
    volts: anyText,
    position: anyText,
    note: anyText,
    conditions: byKey,
    rest: byKey,
    decision: fc.constantFrom('judge', 'replace', 'test', 'leave'),
    choice: fc.option(
      fc.record({
        type: anyText,
        value: anyText,
        tolerance: anyText,
        rating: anyText,
        reason: anyText,
        locked: fc.boolean(),
      }),
    ),
    fitted: fc.dictionary(
      anyKey,
      fc.record({
        done: fc.boolean(),
        did: anyText,
        found: byKey,
        measured: byKey,
        before: anyText,
        after: anyText,
        preset: fc.option(anyPreset),
        note: anyText,
        at: anyText,
      }),
      { maxKeys: 2, noNullPrototype: true },
    ),
  })
  .map((said) => ({ ...emptyLine(''), ...said }));

export const anyJob: fc.Arbitrary<Job> = fc
  .record({
    title: anyText,
    note: anyText,
    lines: fc.array(anyLine, { maxLength: 6 }),
    adjustments: fc.array(anyAdjustment, { maxLength: 3 }),
  })
  .map(({ lines, ...said }) => ({
    ...emptyJob('any', new Date(0)),
    ...said,
    lines: lines.map((line, at) => ({ ...line, id: `l${String(at)}` })),
  }));
