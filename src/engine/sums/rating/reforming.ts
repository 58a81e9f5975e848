import type { Catalogue } from '../../catalogue.ts';
import { reformingPlan, type ReformingPlan } from '../../reforming/plan.ts';
import { dangerousVoltage } from '../dangerous-voltage.ts';
import { dot, type SumPlot } from '../picture.ts';
import { choice, noteIf, quantity, withFacts } from '../sum.ts';

/** The steps by how long each lasts at least: the last one, at full voltage, is held besides. */
const lasting = ({ steps, hold }: ReformingPlan): ReformingPlan['steps'] =>
  steps.map(({ voltage, time }, index) => ({
    voltage,
    time: index === steps.length - 1 ? time + hold : time,
  }));

/** The voltages of the supply by the hours since the start, the last one held to the end. */
const overTime = (plan: ReformingPlan, figure: (volts: number) => number) => {
  let start = 0;
  const points = lasting(plan).map(({ voltage, time }) => {
    const point = dot(start, figure(voltage));
    start += time;
    return point;
  });
  const last = points.at(-1)?.y ?? 0;
  return [...points, dot(start, last)];
};

const TIME = { label: 'Time from the start', unit: 's', scale: 'linear' } as const;

/** Where the supply comes to the rating of the reader’s own part. */
const atFull = (
  { steps }: ReformingPlan,
  heightOf: (step: ReformingPlan['steps'][number]) => number,
): SumPlot['points'] => {
  const last = steps.at(-1);
  const before = steps.slice(0, -1).reduce((sum, { time }) => sum + time, 0);
  return last === undefined ? [] : [{ x: before, y: heightOf(last) }];
};

const voltageOverTime = (plan: ReformingPlan): SumPlot => ({
  title: 'Voltage of the supply over time',
  x: TIME,
  y: { label: 'Supply', unit: 'V', scale: 'linear' },
  curves: [{ label: 'Supply', as: 'steps', points: overTime(plan, (volts) => volts) }],
  points: atFull(plan, ({ voltage }) => voltage),
  limits: [],
});

/** What the resistor lets through even into a short, and where the leakage is to come to rest. */
const mostCurrent = (plan: ReformingPlan): SumPlot => ({
  title: 'Current over time: the most that can flow, and where it is to come to rest',
  x: TIME,
  y: { label: 'Current', unit: 'A', scale: 'log' },
  curves: [
    {
      label: 'Into a short, through the resistor',
      as: 'steps',
      points: overTime(plan, (volts) => volts / plan.resistor),
    },
  ],
  points: atFull(plan, ({ voltage }) => voltage / plan.resistor),
  limits: [
    { label: 'good below', value: plan.leakage },
    { label: 'scrap above', value: plan.scrapDrop / plan.resistor },
  ],
});

/** What the plan needs, without the words that only other pages show. */
const factsOf = (catalogue: Catalogue) => {
  const { reforming, leakageLimits, units, types } = catalogue;
  const concerned = new Set(reforming.flatMap((row) => row.types));
  return {
    reforming: reforming.map((row) => ({ ...row, locator: '', note: '' })),
    leakageLimits: leakageLimits.map((row) => ({ ...row, locator: '', note: '' })),
    units,
    dangerous: dangerousVoltage(catalogue),
    types: Object.fromEntries(Object.entries(types).filter(([id]) => concerned.has(id))),
  };
};
type Facts = ReturnType<typeof factsOf>;

/** Voltage in steps through a resistor, for an electrolytic that lay without voltage. */
export const reforming = withFacts(factsOf)({
  id: 'reforming',
  title: 'Re-forming an old electrolytic',
  lead: 'Which resistor, which voltages and how long, and when to give up, for a wet electrolytic that lay for years without voltage.',
  group: 'rating',
  inputs: {
    type: choice<Facts>({
      label: 'Type',
      usual: 'al-electrolytic-wet',
      options: ({ types }) => Object.values(types).map(({ id, name }) => ({ id, name })),
    }),
    c: quantity({
      label: 'Marked value',
      symbol: 'C',
      unit: 'F',
      usual: '32 µF',
      lowest: 1e-10,
      highest: 1,
    }),
    rating: quantity({
      label: 'Rated voltage',
      symbol: 'U_R',
      unit: 'V',
      usual: '350 V',
      lowest: 3,
      highest: 1000,
    }),
    idle: quantity({
      label: 'Without voltage for',
      unit: 's',
      bare: 'years',
      usual: '30 years',
      lowest: 0,
      highest: 5e9,
    }),
  },
  outputs: {
    resistor: { label: 'Resistor in series', symbol: 'R', unit: 'ohm', headline: true },
    heat: { label: 'Heat in it should the part be a short', symbol: 'P', unit: 'W' },
    leakage: { label: 'Good when the leakage settles below', symbol: 'I', unit: 'A' },
    drop: { label: 'The same as voltage across the resistor', symbol: 'V_g', unit: 'V' },
    scrap: { label: 'Scrap when so much is still across it', symbol: 'V_s', unit: 'V' },
    giveUp: { label: '… after this time at the rated voltage', unit: 's' },
    whole: { label: 'Takes at least', unit: 's' },
    discharge: { label: 'Then discharge through', unit: 'ohm' },
  },
  equations: ['P = U_R^2/R', 'V_g = I*R'],
  at: ({ type, c, rating, idle }, facts) => {
    const plan = reformingPlan(facts, { type, capacitance: c, ratedVoltage: rating }, idle);
    return {
      resistor: plan?.resistor,
      heat: plan?.heat,
      leakage: plan?.leakage,
      drop: plan?.drop,
      scrap: plan?.scrapDrop,
      giveUp: plan?.giveUp,
      whole:
        plan === undefined ? undefined : lasting(plan).reduce((sum, { time }) => sum + time, 0),
      discharge: plan?.discharge,
    };
  },
  tables: ({ type, c, rating, idle }, facts) => {
    const plan = reformingPlan(facts, { type, capacitance: c, ratedVoltage: rating }, idle);
    if (plan === undefined) return [];
    return [
      {
        caption: 'Step by step, through the resistor',
        head: ['Step', 'Supply', 'At least for'],
        rows: lasting(plan).map(({ voltage, time }, index) => [
          String(index + 1),
          { value: voltage, unit: 'V' as const },
          { value: time, unit: 's' as const },
        ]),
      },
    ];
  },
  notes: ({ rating, type }, _outputs, { types, dangerous }) => [
    ...noteIf(
      rating >= dangerous,
      'caution',
      'This is done at a voltage that can kill, on a part that can burst: cover it, keep a hand in the pocket, and let nobody near who does not know.',
    ),
    ...noteIf(
      types[type]?.polarity === 'non-polar',
      'remark',
      'A part for both signs is re-formed once each way round.',
    ),
    {
      kind: 'limit',
      text: 'A part that gets warm, hisses or swells is scrap at once. Re-forming mends leakage, not lost value or dried electrolyte: measure both after a rest.',
    },
  ],
  pictures: ({ type, c, rating, idle }, facts) => {
    const plan = reformingPlan(facts, { type, capacitance: c, ratedVoltage: rating }, idle);
    return plan === undefined ? [] : [voltageOverTime(plan), mostCurrent(plan)];
  },
  cautions: ['reform-old-stock', 'electrolytic-vent', 'stored-charge'],
  sources: ['cde-reage-1993'],
  checks: [
    {
      what: 'Printed: up to 75 V through 10 kΩ',
      inputs: { rating: '63', c: '10 µF', idle: '3 years' },
      expected: { resistor: 10_000 },
      within: 0.001,
      source: 'cde-reage-1993',
    },
  ],
});
