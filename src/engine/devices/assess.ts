import type { DeviceRow, UseRow } from '../../schemas/devices.ts';
import type { DemandRow, FindingRow } from '../../schemas/positions.ts';
import type { Finding, Judged } from '../assessment/finding.ts';
import { limitTimes } from '../assessment/limit.ts';
import { MARKETS, decisiveDemand, meanMargin, worstMargin } from '../assessment/rank.ts';
import {
  beyondLimit,
  verdictFor,
  verdictOrder,
  worse,
  type Verdict,
} from '../assessment/verdict.ts';
import type { Catalogue } from '../catalogue.ts';
import type { Limit, Outcome } from '../findings/model.ts';
import { exactly, type Range } from '../quantities/range.ts';
import { explain, type Prepared } from './explain.ts';
import type { DeviceCircumstances } from './model.ts';
import { deviceModels } from './models/index.ts';
import { usualNumbers } from './usual.ts';

/** One device tried in the place of another. */
export interface DeviceAssessment {
  device: DeviceRow;
  verdict: Verdict;
  /** The finding that decides. */
  worst: string;
  /** In the order of the demands. */
  findings: Finding[];
}

/** The same with its place among others: smaller numbers stand first. */
export interface RankedDevice extends DeviceAssessment {
  order: number[];
}

/** What is asked: what stands in for a device in a use. */
export interface DeviceRequest {
  original: DeviceRow;
  use: UseRow;
  /** Conditions that the visitor gave, SI. */
  given?: Readonly<Record<string, number>> | undefined;
}

/** What the findings of a use are worked out from. */
export const deviceCircumstances = (
  catalogue: Catalogue,
  { original, use, given = {} }: DeviceRequest,
): DeviceCircumstances => {
  const conditions = usualNumbers(catalogue, use, original).map(
    ({ condition, range }): [string, Range] => {
      const asked = given[condition];
      return [condition, asked === undefined ? range : exactly(asked)];
    },
  );
  return { catalogue, use, original, conditions: Object.fromEntries(conditions) };
};

/** The limit of a demand, SI: a plain one, a multiple of a condition, or of what the old part gives. */
const limitOf = (
  demand: DemandRow,
  row: FindingRow,
  before: Outcome,
  { catalogue, conditions }: DeviceCircumstances,
): Limit => {
  const factor = ((): number | undefined => {
    if (demand.limit_of === '') return catalogue.units[row.unit]?.factor ?? 1;
    if (demand.limit_of === 'old') return before.status === 'known' ? before.value.typ : undefined;
    return conditions[demand.limit_of]?.typ;
  })();
  return limitTimes(demand, row, factor);
};

const prepare = (circumstances: DeviceCircumstances): Prepared[] => {
  const { catalogue, use, original } = circumstances;
  return catalogue.devices.demands
    .filter((demand) => demand.position === use.id)
    .map((demand) => {
      const row = catalogue.devices.findings.find(({ id }) => id === demand.finding);
      const model = deviceModels[demand.finding];
      if (row === undefined || model === undefined)
        throw new RangeError(`there is no finding ${demand.finding}`);
      const before = model.measure(original, circumstances);
      return { demand, row, model, before, limit: limitOf(demand, row, before, circumstances) };
    });
};

const judge = (one: Prepared, device: DeviceRow, circumstances: DeviceCircumstances): Judged => {
  const { demand, row, model, before, limit } = one;
  // Nobody can tell whether a part keeps to what the old one gives, where that is not known.
  const isOpen = demand.limit_of === 'old' && before.status === 'unknown';
  const outcome = isOpen ? before : model.measure(device, circumstances);
  if (outcome.status === 'unknown') {
    // What nobody knows of the mild demands is no reason for a condition.
    const verdict = demand.weight === 'mild' ? 'fits' : 'fits-if';
    return { demand, row, outcome, limit, beyond: { unfavourable: 1, typical: 1 }, verdict };
  }
  const { catalogue } = circumstances;
  const beyond = beyondLimit({}, outcome.value, limit, catalogue);
  const verdict = verdictFor(catalogue.verdictRules, demand.weight, beyond);
  return { demand, row, outcome, limit, beyond, verdict };
};

/** What to order by, the weightiest first: a smaller number stands first. */
const orderOf = (
  device: DeviceRow,
  original: DeviceRow,
  judged: readonly Judged[],
  verdict: Verdict,
): number[] => [
  verdictOrder.indexOf(verdict),
  // Of parts that serve alike, one orders the number that is there already.
  Number(device.id !== original.id),
  -worstMargin(judged, 'hard'),
  -worstMargin(judged, 'strong'),
  MARKETS.indexOf(device.market),
  -meanMargin(judged, 'strong'),
  -meanMargin(judged, 'mild'),
];

const compare = (a: readonly number[], b: readonly number[]): number =>
  a.map((mine, index) => mine - (b[index] ?? 0)).find((gap) => Math.abs(gap) > 1e-9) ?? 0;

/** Whether a device can be put to a use. */
export const isMetIn = (device: DeviceRow, use: UseRow): boolean =>
  use.functions.includes(device.function) && !device.never_in.includes(use.id);

/** The uses that a device can be put to, those that it is met in most first. */
export const usesOf = ({ devices: { uses } }: Catalogue, device: DeviceRow): UseRow[] => {
  const met = uses.filter((use) => isMetIn(device, use));
  const usual = device.usual_in.flatMap((id) => met.find((use) => use.id === id) ?? []);
  return [...usual, ...met.filter((use) => !usual.includes(use))];
};

/** One device judged by demands that are prepared for the old one. */
const assessBy = (
  prepared: readonly Prepared[],
  device: DeviceRow,
  circumstances: DeviceCircumstances,
): RankedDevice => {
  const judged = prepared.map((one) => judge(one, device, circumstances));
  const verdict = judged.reduce<Verdict>((worst, one) => worse(worst, one.verdict), 'fits');
  return {
    device,
    verdict,
    worst: decisiveDemand(judged, verdict),
    findings: prepared.map((one, index) =>
      explain(one, judged[index] ?? judge(one, device, circumstances), device, circumstances),
    ),
    order: orderOf(device, circumstances.original, judged, verdict),
  };
};

/** What one device comes to in the place of another, whether it can be bought or not. */
export const assessDevice = (
  catalogue: Catalogue,
  request: DeviceRequest,
  device: DeviceRow,
): RankedDevice => {
  const circumstances = deviceCircumstances(catalogue, request);
  return assessBy(prepare(circumstances), device, circumstances);
};

/**
 * What may stand in for a device in a use: every device of its function that can be bought, itself
 * among them, the best first.
 */
export const deviceStandIns = (catalogue: Catalogue, request: DeviceRequest): RankedDevice[] => {
  const circumstances = deviceCircumstances(catalogue, request);
  const prepared = prepare(circumstances);
  return catalogue.devices.devices
    .filter((one) => one.function === request.original.function && one.market !== 'old-stock')
    .map((device) => assessBy(prepared, device, circumstances))
    .toSorted((a, b) => compare(a.order, b.order) || (a.device.id < b.device.id ? -1 : 1));
};
