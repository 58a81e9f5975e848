import type { Catalogue } from '../../src/engine/index.ts';
import { emptyJob, emptyLine, newPlanCache, planJob, type Job } from '../../src/job/index.ts';
import { median, repeat, RUNS, show, timed, type Row } from './measuring.ts';

/** Lines of a large board, and how many of them differ. */
const LINES = 2000;
const DISTINCT_VALUES = 30;
/** A board as large as any, of which many lines differ. */
const MOST_LINES = 10_000;
const MANY_VALUES = 400;
const FRESH_RUNS = 3;
/** What the parts of a board are, in the places where they are usual. */
const PARTS_IN_PLACES: readonly (readonly [type: string, position: string, unit: string])[] = [
  ['al-electrolytic-wet', 'interstage-coupling', 'µF'],
  ['al-electrolytic-wet', 'bulk-rail', 'µF'],
  ['ta-mno2-solid', 'local-decoupling', 'µF'],
  ['pet-metallized', 'tone-stack', 'nF'],
  ['ceramic-disc-unknown', 'rc-filter-audio', 'nF'],
];

/** A board with many lines of which few differ, as boards are. */
const boardOf = (count: number, values = DISTINCT_VALUES): Job => ({
  ...emptyJob('bench', new Date(0)),
  lines: Array.from({ length: count }, (_, index) => {
    const [type = '', position = '', unit = ''] =
      PARTS_IN_PLACES[index % PARTS_IN_PLACES.length] ?? [];
    const step = Math.floor(index / PARTS_IN_PLACES.length) % values;
    return {
      ...emptyLine(String(index)),
      designators: `C${String(index)}`,
      kind: 'capacitor',
      type,
      position,
      value: `${String(10 + step)} ${unit}`,
    };
  }),
});

/** A whole board planned afresh, and again after an edit or a change of what holds for all of it. */
export const boards = (catalogue: Catalogue): Row[] => {
  const job = boardOf(LINES);
  const warm = boardOf(LINES);
  const tools = { catalogueAt: () => catalogue, cache: newPlanCache() };
  const fresh = (): unknown => planJob(job, { catalogueAt: () => catalogue });
  planJob(job, tools);
  const edited = {
    ...warm,
    lines: warm.lines.map((line, index) => (index === 0 ? { ...line, value: '82 µF' } : line)),
  };
  const warmed = (degrees: number): Job => ({
    ...job,
    whole: { ...job.whole, conditions: { 't-max': String(degrees) } },
  });
  const everything = Array.from({ length: RUNS }, (_, run) =>
    timed(() => planJob(warmed(41 + run), tools)),
  );
  const large = boardOf(MOST_LINES, MANY_VALUES);
  const largest = timed(() => planJob(large, { catalogueAt: () => catalogue }));
  const distinct = PARTS_IN_PLACES.length * DISTINCT_VALUES;
  const again = Array.from({ length: RUNS }, (_, run) =>
    timed(() => planJob(run % 2 === 0 ? edited : job, tools)),
  );
  return [
    [
      `plan of ${String(LINES)} lines, ${String(distinct)} distinct`,
      show(median(repeat(FRESH_RUNS, fresh))),
      'ms',
      '200',
    ],
    ['the same after a change of the whole board', show(median(everything)), 'ms', '200'],
    [
      `plan of ${String(MOST_LINES)} lines, ${String(PARTS_IN_PLACES.length * MANY_VALUES)} distinct`,
      show(largest),
      'ms',
    ],
    [`${String(LINES)} lines after one edit`, show(median(again)), 'ms'],
  ];
};
