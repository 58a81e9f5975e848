import { cornerFrequency, resistanceForCorner } from '../../src/engine/equations/coupling.ts';
import { droop, insulationResistance, leakageThrough } from '../../src/engine/equations/leakage.ts';
import { reactiveCurrent, voltageLeft } from '../../src/engine/equations/mains.ts';
import { selfResonance } from '../../src/engine/equations/resonance.ts';
import { settlingConstants } from '../../src/engine/equations/sampling.ts';
import { prepareDemands, judge } from '../../src/engine/assessment/finding.ts';
import type { Part } from '../../src/engine/index.ts';
import { exactly } from '../../src/engine/quantities/range.ts';
import { catalogue, circumstancesOf, given, knowing, known } from '../engine/assessment/setting.ts';
import { describeAnswers, readCases, type Answers, type Given } from './given.ts';

const cases = readCases('tests/published/circuits.csv');

/** What is said of a demand for a part, at a position under numbers of its own. */
const judged = (
  demand: string,
  position: string,
  part: Partial<Part>,
  conditions: Record<string, number>,
  from = catalogue,
) => {
  const circumstances = circumstancesOf(
    { original: { type: part.type ?? 'film-x2' }, position, conditions: given(conditions) },
    from,
  );
  const prepared = prepareDemands(circumstances).find((one) => one.demand.id === demand);
  if (prepared === undefined) throw new Error(`no demand ${demand}`);
  const exact = { ...circumstances.original, tolerance: { minus: 0, plus: 0 }, ...part };
  return judge(prepared, exact, circumstances);
};

const bleeding = (one: Given) =>
  judged(
    'mains-x-discharge',
    'mains-x',
    { capacitance: one.number('c') },
    { bleeder: one.number('r') },
  );

const drooping = (one: Given): number =>
  droop(5, one.number('c'), exactly(one.number('i')), exactly(0), one.number('t')).total.typ;

const CENTS_PER_VOLT = 1200;

/** What the equations and findings say, to be held against what a document says. */
const said: Answers = {
  droop: drooping,
  'droop-cents': (one) => CENTS_PER_VOLT * drooping(one),
  'settling-constants': (one) =>
    settlingConstants(1, one.has('bits') ? 2 ** -one.number('bits') : one.number('share')),
  settled: (one) => 1 - voltageLeft(1, one.number('constants'), 1),
  corner: (one) => cornerFrequency(exactly(one.number('c')), one.number('r')).typ,
  'corner-resistance': (one) => resistanceForCorner(one.number('c'), one.number('f')),
  leak: (one) =>
    leakageThrough(
      one.number('v'),
      insulationResistance(exactly(one.number('tau')), one.number('c')),
    ).typ,
  'reactive-current': (one) =>
    reactiveCurrent(one.number('f'), exactly(one.number('c')), one.number('v')).typ,
  resonance: (one) => selfResonance(exactly(one.number('l')), one.number('c')).typ,
  'time-constant': (one) => {
    const { outcome } = bleeding(one);
    return outcome.status === 'known' ? outcome.value.typ : NaN;
  },
  'time-constant-allowed': (one) => bleeding(one).verdict,
  'esr-window': (one) =>
    judged(
      'regulator-output-esr-window',
      'regulator-output',
      { type: 'glass' },
      { 'esr-min': one.number('low'), 'esr-max': one.number('high') },
      knowing(catalogue, 'glass', { 'esr-100khz': known(one.number('esr')) }),
    ).verdict,
};

describeAnswers('equations and findings of circuits against answers of others', cases, said, 30);
