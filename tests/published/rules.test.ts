import { lossHeat } from '../../src/engine/equations/alternating.ts';
import { factorUnderBias } from '../../src/engine/equations/bias.ts';
import { ageingLoss } from '../../src/engine/equations/drift.ts';
import { currentForHeat } from '../../src/engine/equations/heat.ts';
import { insulationAt, insulationResistance } from '../../src/engine/equations/leakage.ts';
import { wearLife } from '../../src/engine/equations/life.ts';
import { acVoltage } from '../../src/engine/findings/alternating.ts';
import { reverseWithstood } from '../../src/engine/findings/reverse.ts';
import { peakVoltage, ratedVoltage, voltageMargin } from '../../src/engine/findings/voltage.ts';
import { judgeFirst, type Part } from '../../src/engine/index.ts';
import { exactly, mapFalling, scale, type Range } from '../../src/engine/quantities/range.ts';
import { ruleOf } from '../../src/engine/rule-of-thumb.ts';
import { reformingPlan } from '../../src/engine/reforming/plan.ts';
import { bodyOfRow } from '../../src/engine/sizes/body.ts';
import { frequencyFactor, temperatureFactor } from '../../src/engine/sizes/ripple-factors.ts';
import { listedRipple } from '../../src/engine/sizes/ripple-of.ts';
import { coreRiseOf } from '../../src/engine/sizes/surface.ts';
import { esrOfNew } from '../../src/engine/triage/esr-of-new.ts';
import { leakageLimit } from '../../src/engine/triage/leakage-limit.ts';
import { catalogue, circumstancesOf, given } from '../engine/assessment/setting.ts';
import { madeBody } from '../engine/sizes/setting.ts';
import { describeAnswers, readCases, type Answers, type Given } from './given.ts';

const cases = readCases('tests/published/rules.csv');

const HOUR = 3600;
const HOTTEST = 125;
const YEAR = 31_557_600;
/** Long enough to be re-formed, too short for the gentler recipes of old stock. */
const FEW_YEARS = 5 * YEAR;

/** What is known of a type, SI. */
const figureOf = (type: string, property: string): Range | undefined => {
  const known = catalogue.knowledge[type]?.[property];
  return known?.status === 'known' ? known.range : undefined;
};

const partOf = (one: Given): Part => ({
  type: one.word('type'),
  capacitance: one.has('c') ? one.number('c') : 1e-6,
  ratedVoltage: one.number('rated'),
  voltageKind: 'dc',
  tolerance: { minus: 0, plus: 0 },
});

const rail = (conditions: Record<string, number>, guideline?: string) =>
  circumstancesOf({
    original: { type: 'al-electrolytic-wet' },
    position: 'bulk-rail',
    conditions: given(conditions),
    guideline,
  });

/** Voltage (V) at the limit of a rule: a volt over the share that it uses up. */
const allowed = (part: Part, temperature: number, guideline: string): number => {
  const model = guideline === 'maker' ? ratedVoltage : voltageMargin;
  const conditions = { vdc: 1, vac: 0, 'v-surge': 0, 't-max': temperature };
  const outcome = model.measure(part, rail(conditions, guideline));
  return outcome.status === 'known' ? 1 / outcome.value.typ : NaN;
};

/** Alternating voltage (V) that a part takes. */
const alternating = (part: Part): Range => {
  const circumstances = circumstancesOf({
    original: { type: part.type },
    position: 'speaker-crossover',
    conditions: given({ vac: 1 }),
  });
  const outcome = acVoltage.measure(part, circumstances);
  return outcome.status === 'known'
    ? mapFalling(outcome.value, (share) => 1 / share)
    : exactly(NaN);
};

/** Life (h) by the rule of ten kelvin. */
const life = (one: Given): number =>
  wearLife({
    rated: one.number('l0') * HOUR,
    ratedTemperature: one.number('t0'),
    ambient: one.number('t'),
    doubling: 10,
    rise: 0,
    riseHalving: 10,
    voltageFactor: 1,
    longest: ruleOf(catalogue, 'longest-life'),
  }) / HOUR;

/** How much longer a part lives by a rise (K) that is smaller than another. */
const lifeByRise = (smaller: number, larger: number, riseHalving: number): number => {
  const [long, short] = [smaller, larger].map((rise) =>
    wearLife({
      rated: 1000 * HOUR,
      ratedTemperature: 105,
      ambient: 105,
      doubling: 10,
      rise,
      riseHalving,
      voltageFactor: 1,
      longest: ruleOf(catalogue, 'longest-life'),
    }),
  );
  return (long ?? NaN) / (short ?? NaN);
};

const factorOf = (found: { factor: number } | undefined): number => found?.factor ?? NaN;

/** What the engine and its tables say, to be held against what a document says. */
const said: Answers = {
  allowed: (one) => allowed(partOf(one), one.number('t'), one.word('guideline')),
  category: (one) => allowed(partOf(one), HOTTEST, 'maker'),
  peak: (one) => peakVoltage(rail({ vdc: one.number('vdc'), vac: one.number('vac') })).typ,
  'reverse-within': (one) => reverseWithstood(partOf(one), rail({})) ?? exactly(NaN),
  'ac-within': (one) => alternating(partOf(one)),
  'ripple-temperature': (one) =>
    factorOf(
      temperatureFactor(
        catalogue,
        { type: one.word('type') },
        one.number('from'),
        one.number('to'),
      ),
    ),
  'ripple-frequency': (one) =>
    factorOf(frequencyFactor(catalogue, partOf(one), one.number('from'), one.number('to'))),
  'ripple-listed': (one) => listedRipple(catalogue, partOf(one), one.number('f'))?.current ?? NaN,
  'core-rise': (one) => {
    const across = one.number('diameter') * 1000;
    const can = madeBody({ shape: 'can', length_mm: across, width_mm: across });
    const row = coreRiseOf(catalogue, one.word('type'), bodyOfRow(can, 'listed'));
    return one.number('surface') * (row?.ratio ?? NaN);
  },
  'loss-heat': (one) =>
    lossHeat(one.number('volts'), {
      frequency: one.number('f'),
      capacitance: one.number('c'),
      loss: one.number('tan'),
    }),
  'ripple-life': (one) =>
    lifeByRise(
      one.number('rated') * one.number('share') ** 2,
      one.number('rated'),
      one.number('halving'),
    ),
  life,
  'leakage-limit': (one) => {
    const { type, capacitance, ratedVoltage: volts } = partOf(one);
    return leakageLimit(catalogue.leakageLimits, type, capacitance, volts) ?? NaN;
  },
  'leakage-held': (one) => {
    const { type, capacitance, ratedVoltage: volts } = partOf(one);
    const max = leakageLimit(catalogue.leakageLimits, type, capacitance, volts) ?? NaN;
    return { min: 0, typ: max / 2, max };
  },
  'leakage-warm': (one) => {
    const halving = figureOf(one.word('type'), 'insulation-halving');
    return halving === undefined ? NaN : 1 / insulationAt(exactly(1), halving, one.number('t')).typ;
  },
  'insulation-within': (one) => {
    const cold = figureOf(one.word('type'), 'insulation-rc');
    const most = figureOf(one.word('type'), 'insulation-cap');
    return cold === undefined ? exactly(NaN) : insulationResistance(cold, one.number('c'), most);
  },
  'figure-within': (one) => figureOf(one.word('type'), one.word('property')) ?? exactly(NaN),
  'class2-letter': (one) => {
    const sign = catalogue.markings.class2Signs.find(({ symbol }) => symbol === one.word('mark'));
    return sign === undefined ? 'none' : `${sign.low ?? ''} to ${sign.high ?? ''}`;
  },
  advice: (one) =>
    judgeFirst(
      catalogue,
      { type: one.word('type'), capacitance: one.number('c'), ratedVoltage: one.number('rated') },
      one.word('position'),
      {
        ...(one.has('age') ? { age: one.number('age') * YEAR } : {}),
        ...(one.has('insulation') ? { insulation: one.number('insulation') } : {}),
      },
    ).advice,
  'current-for-heat': (one) => currentForHeat(one.number('watt'), one.number('ohm')),
  'reforming-resistor': (one) => reformingPlan(catalogue, partOf(one), FEW_YEARS)?.resistor ?? NaN,
  'reformed-after': (one) => {
    const kept = figureOf(one.word('type'), 'shelf-life');
    return kept !== undefined && one.number('years') * YEAR > kept.min ? 'yes' : 'no';
  },
  'esr-of-new': (one) =>
    esrOfNew(
      catalogue.esrOfNew,
      one.word('grade') === 'worst-case' ? 'worst-case' : 'standard-grade',
      one.number('c'),
      one.number('rated'),
    ) ?? NaN,
  'left-under-bias': (one) => {
    const change = figureOf(one.word('type'), 'voltage-coefficient');
    if (change === undefined) return NaN;
    const left = factorUnderBias(change, one.number('v'), one.number('rated'));
    return scale(left, one.number('c'));
  },
  'ageing-between': (one) => {
    const lost = (hours: number): number => ageingLoss(exactly(one.number('rate')), hours).typ;
    return lost(one.number('to')) - lost(one.number('from'));
  },
  'change-limits': (one) => {
    const change = figureOf(one.word('type'), 'capacitance-change-temperature');
    return change === undefined ? 'not known' : `${change.min} to ${change.max}`;
  },
  'classes-to-earth': (one) =>
    catalogue.markings.safetyClasses.find(
      ({ types, meaning }) =>
        types.includes(one.word('type')) && meaning.includes('basic insulation'),
    )?.mark ?? 'none',
  impulse: (one) =>
    catalogue.markings.safetyClasses.find(({ mark }) => mark === one.word('mark'))
      ?.impulse_test_v ?? NaN,
};

describeAnswers('rules of derating, life and ripple as documents print them', cases, said, 40);
