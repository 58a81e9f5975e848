import {
  absorptionError,
  absorptionPerDecade,
  recoveryDecades,
  type AbsorptionTimes,
} from '../equations/absorption.ts';
import { droop as droopOf } from '../equations/leakage.ts';
import { formatQuantity, formatValue } from '../quantities/index.ts';
import { asPitch } from './as-pitch.ts';
import { leakOf } from './insulation.ts';
import { conditionOf, rangeOf, type Circumstances, type FindingModel } from './model.ts';

const ABSORPTION = 'dielectric-absorption';

/** Times of the test that all absorption figures have been brought to. */
const referenceTest = ({ catalogue }: Circumstances): AbsorptionTimes => {
  const test = Object.values(catalogue.absorptionTests)[0];
  if (test === undefined) throw new Error('no absorption test in the catalogue');
  return { soak: test.soak_s, short: test.short_s, open: test.open_s };
};

const holdTimes = (circumstances: Circumstances): AbsorptionTimes => ({
  short: conditionOf(circumstances, 'settle-time').typ,
  open: conditionOf(circumstances, 'hold-time').typ,
});

/** Voltage that creeps back towards the old value during the hold. */
export const absorption: FindingModel = {
  measure: (part, circumstances) => {
    const figure = rangeOf(circumstances, part, ABSORPTION);
    if (figure === undefined) return { status: 'unknown', missing: [ABSORPTION] };
    const perDecade = absorptionPerDecade(figure, referenceTest(circumstances));
    const step = conditionOf(circumstances, 'step').typ;
    return {
      status: 'known',
      value: absorptionError(step, perDecade, holdTimes(circumstances)),
      properties: [ABSORPTION],
    };
  },
  working: (part, circumstances, value) => {
    const figure = rangeOf(circumstances, part, ABSORPTION);
    const test = referenceTest(circumstances);
    const perDecade = figure && absorptionPerDecade(figure, test);
    return (
      `${formatValue(conditionOf(circumstances, 'step').typ, 'V')} × ` +
      `${perDecade ? formatQuantity(perDecade, 'fraction') : 'unknown'} per decade × ` +
      `${formatValue(recoveryDecades(holdTimes(circumstances)), 'grade')} decades = ` +
      `${formatQuantity(value, 'V')}; from a test of ${formatValue(test.short, 's')} short and ` +
      `${formatValue(test.open, 's')} open, derived${asPitch(circumstances, value)}`
    );
  },
};

/** Voltage lost during the hold, and how much of that is the part's own doing. */
export const droop: FindingModel = {
  measure: (part, circumstances) => {
    const voltage = conditionOf(circumstances, 'vdc').max;
    const leak = leakOf(part, circumstances, voltage);
    if (leak === undefined) return { status: 'unknown', missing: ['insulation-rc'] };
    const { total } = droopOf(
      voltage,
      part.capacitance,
      conditionOf(circumstances, 'other-leakage'),
      leak.current,
      conditionOf(circumstances, 'hold-time').typ,
    );
    return { status: 'known', value: total, properties: leak.properties };
  },
  working: (part, circumstances, value) => {
    const voltage = conditionOf(circumstances, 'vdc').max;
    const leak = leakOf(part, circumstances, voltage);
    if (leak === undefined) return '';
    const other = conditionOf(circumstances, 'other-leakage');
    const time = conditionOf(circumstances, 'hold-time').typ;
    const { ownShare } = droopOf(voltage, part.capacitance, other, leak.current, time);
    return (
      `(${formatQuantity(other, 'A')} + ${formatQuantity(leak.current, 'A')}) × ` +
      `${formatValue(time, 's')} / ${formatValue(part.capacitance, 'F')} = ` +
      `${formatQuantity(value, 'V')}; ${formatValue(ownShare, 'fraction')} of it is the capacitor's${asPitch(circumstances, value)}`
    );
  },
};
