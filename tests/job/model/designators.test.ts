import { readFile } from 'node:fs/promises';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { designatorLettersModule } from '../../../scripts/generate-designator-letters.ts';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { sliceJob } from '../../../src/catalogue/slices/slice-job.ts';
import {
  expandDesignators,
  isRatherTypeNumber,
  shortenDesignators,
} from '../../../src/job/model/designators.ts';
import { askKind, usualKind } from '../../../src/job/understanding/kinds.ts';

describe('designators', () => {
  test.each([
    ['C1', ['C1']],
    ['C1-C3, C22', ['C1', 'C2', 'C3', 'C22']],
    ['C1-3', ['C1', 'C2', 'C3']],
    ['C1…C3', ['C1', 'C2', 'C3']],
    ['C1–C3', ['C1', 'C2', 'C3']],
    ['C1 ... C3', ['C1', 'C2', 'C3']],
    ['C1 to C3', ['C1', 'C2', 'C3']],
    ['C 1 - C 3', ['C1', 'C2', 'C3']],
    ['C1;C2 C3', ['C1', 'C2', 'C3']],
    ['C1, 2, 4-5', ['C1', 'C2', 'C4', 'C5']],
    ['R12a', ['R12a']],
    ['VR1', ['VR1']],
    ['Rö1, Rö2', ['Rö1', 'Rö2']],
    ['С1-С3', ['С1', 'С2', 'С3']],
    ['C08-C10', ['C08', 'C09', 'C10']],
    // Older lists have a dash behind the letters, and a letter for one of a pair.
    ['C-101', ['C101']],
    ['CR-101, CR-102', ['CR101', 'CR102']],
    ['C-101 to C-103', ['C101', 'C102', 'C103']],
    ['C-101A', ['C101A']],
    ['TR4&5', ['TR4', 'TR5']],
    ['C1 & C2', ['C1', 'C2']],
    ['', []],
  ])('%s', (text, list) => {
    expect(expandDesignators(text)).toEqual({ list, faults: [] });
  });

  test.each([
    ['C16-C1', [], /backwards/],
    ['C1-C1001', [], /more than 1,000/],
    ['C1-C99999999999999999999', [], /more than 1,000/],
    ['C1-R4', [], /two kinds/],
    ['C1, C2, C1', ['C1', 'C2'], /more than once: C1\./],
    ['constructor, C1', ['C1'], /“constructor” is not/],
    ['__proto__', [], /is not/],
    // Values behind a designator are no more of its kind.
    ['C1 10uF', ['C1'], /“10uF” is not/],
    ['C1 100n', ['C1'], /“100n” is not/],
    ['R1 25V', ['R1'], /“25V” is not/],
  ])('%s is at fault', (text, list, fault) => {
    const found = expandDesignators(text);
    expect(found.list).toEqual(list);
    expect(found.faults).toHaveLength(1);
    expect(found.faults[0]).toMatch(fault);
  });

  test('a range of just 1,000 is taken', () => {
    expect(expandDesignators('C1-C1000').list).toHaveLength(1000);
  });

  const name = fc
    .tuple(
      fc.constantFrom('C', 'R', 'VR', 'IC', 'c'),
      fc.integer({ min: 0, max: 30 }),
      fc.constantFrom('', '', 'a'),
    )
    .map(([letters, number, suffix]) => `${letters}${String(number)}${suffix}`);

  test('there and back', () => {
    fc.assert(
      fc.property(fc.uniqueArray(name, { maxLength: 60 }), (list) => {
        expect(expandDesignators(shortenDesignators(list))).toEqual({ list, faults: [] });
      }),
    );
  });

  test('never throws', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 100 }), (text) => {
        const { list } = expandDesignators(text);
        expect(new Set(list).size).toBe(list.length);
      }),
    );
  });
});

describe('a type number where designators stand', () => {
  test.each(['TL072', 'BC109', 'NE5532', 'LM317', 'CA3080', 'bc109c', 'SAD1024'])('%s', (name) => {
    expect(isRatherTypeNumber(name)).toBe(true);
  });

  test.each(['C101', 'IC101', 'TR102', 'ic12', 'Q7', 'TL72', 'X1', 'VR1001'])(
    '%s is none',
    (name) => {
      expect(isRatherTypeNumber(name)).toBe(false);
    },
  );

  test('letters of designators that are known are those of a type number only where their row says so', () => {
    const { designatorLetters } = loadCatalogue().job;
    for (const { letters, numbers_too: numbersToo } of designatorLetters) {
      expect(isRatherTypeNumber(`${letters}101`), letters).toBe(numbersToo);
      expect(isRatherTypeNumber(`${letters}1`), letters).toBe(false);
    }
  });
});

test('the letters are those of the table; run scripts/generate-designator-letters.ts if not', async () => {
  const committed = new URL(
    '../../../src/job/model/designator-letters.generated.ts',
    import.meta.url,
  );
  expect(await readFile(committed, 'utf8')).toBe(await designatorLettersModule());
});

describe('letters that stand for no kind of part', () => {
  // By the table TP is a test point and HY a hybrid, which may be anything.
  test.each([
    ['LED1', 'diode'],
    ['RLY1', 'relay'],
    ['FU1', 'fuse'],
    ['HY1', undefined],
    ['TP3', undefined],
    ['RL1', 'relay'],
    ['XYZ1', undefined],
  ])('%s: %s', (designator, kind) => {
    expect(usualKind(loadCatalogue(), [designator])).toBe(kind);
    const { question, choices } = askKind(loadCatalogue(), [designator]);
    expect(question.includes('usually stands for')).toBe(kind !== undefined);
    expect(choices.map(({ set }) => set.kind)).not.toContain('');
    expect(choices.every(({ label }) => label !== '')).toBe(true);
  });

  test('are in no slice', () => {
    const { designatorLetters } = loadCatalogue().job;
    const carried = sliceJob(loadCatalogue()).job.designatorLetters;
    expect(carried.map(({ letters }) => letters)).toEqual(
      designatorLetters.filter(({ kind }) => kind !== '').map(({ letters }) => letters),
    );
    expect(carried.length).toBeLessThan(designatorLetters.length);
  });
});
