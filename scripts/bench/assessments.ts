import { findStandIns, type Catalogue } from '../../src/engine/index.ts';
import { median, MILLISECONDS, quantile, show, timed, type Row } from './measuring.ts';

/** A run over every pair takes long; a few will do. */
const MATRIX_RUNS = 3;

const pairsOf = ({ types, positions }: Catalogue): [type: string, position: string][] =>
  Object.keys(types).flatMap((type) =>
    Object.keys(positions).map((position): [string, string] => [type, position]),
  );

/** Every type assessed in every position at reference conditions. */
export const assessments = (catalogue: Catalogue): Row[] => {
  const pairs = pairsOf(catalogue);
  const assessAll = (): number[] =>
    pairs.map(([type, position]) =>
      timed(() => findStandIns(catalogue, { original: { type }, position })),
    );
  const runs = Array.from({ length: MATRIX_RUNS }, assessAll);
  const seconds = median(runs.map((run) => run.reduce((sum, ms) => sum + ms, 0))) / MILLISECONDS;
  return [
    ['assessments', show(pairs.length / seconds), 'pairs/s'],
    ['one pair, median', show(median(runs.map(median))), 'ms'],
    ['one pair, 95th percentile', show(median(runs.map((run) => quantile(run, 0.95)))), 'ms'],
    [`all ${String(pairs.length)} pairs`, show(seconds), 's'],
  ];
};
