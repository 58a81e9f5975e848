import type { DemandRow, FindingRow, VerdictRuleRow } from '../../schemas/positions.ts';
import type { FindingId, PropertyId, SourceId } from '../catalogue.ts';
import { findingModels } from '../findings/index.ts';
import {
  conditionOf,
  knowledgeOf,
  type Circumstances,
  type CommonCircumstances,
  type FindingModel,
  type KnownPart,
  type Limit,
  type Outcome,
} from '../findings/model.ts';
import type { Range } from '../quantities/range.ts';
import { rowsAt } from './at-position.ts';
import { ExplainedFinding, siUnitOf } from './explained.ts';
import { limitTimes } from './limit.ts';
import { rowNamed } from './original.ts';
import type { Part } from './parts.ts';
import { surenessOf, type Sureness } from './sureness.ts';
import { beyondLimit, verdictFor, type Beyond, type Verdict } from './verdict.ts';

/** One demand checked for one part, with its working. */
export interface Finding extends Sureness {
  /** Demand id; unique within a position. */
  demand: string;
  finding: FindingId;
  name: string;
  weight: DemandRow['weight'];
  /** SI unit of the figures below. */
  unit: string;
  original?: Range;
  standIn?: Range;
  limit?: Limit;
  /** Limit over figure at the unfavourable end: 1 at the limit, more is better; 0 where not known. */
  margin: number;
  verdict: Verdict;
  /** Properties without data; the finding is then not known. */
  missing: PropertyId[];
  working: string;
  why: string;
  sources: SourceId[];
}

/** What a demand comes to for one part, without the words. */
export interface Judged {
  demand: DemandRow;
  row: FindingRow;
  outcome: Outcome;
  limit: Limit;
  beyond: Beyond;
  verdict: Verdict;
}

/** A demand with all that is needed to judge parts by it, looked up once. */
export interface PreparedDemand<P = Part, C = Circumstances> {
  demand: DemandRow;
  row: FindingRow;
  model: FindingModel<P, C>;
  limit: Limit;
  /** The rules that turn how far it is beyond its limit into a verdict. */
  rules: VerdictRuleRow[];
  /** What the old part comes to, worked out when it is first asked for. */
  before: () => Outcome;
}

/** The limit of a demand in SI. */
const limitOf = <P, C extends CommonCircumstances<P>>(
  demand: DemandRow,
  row: FindingRow,
  model: FindingModel<P, C>,
  circumstances: C,
): Limit => {
  if (model.limit !== undefined) return model.limit(circumstances);
  const factor =
    demand.limit_of === ''
      ? (circumstances.catalogue.units[row.unit]?.factor ?? 1)
      : conditionOf(circumstances, demand.limit_of).typ;
  return limitTimes(demand, row, factor);
};

/**
 * Every demand of a position, ready to judge parts by the models of their kind.
 * @throws RangeError for a finding that the catalogue or the engine does not have
 */
export const demandsBy = <P, C extends CommonCircumstances<P>>(
  circumstances: C,
  models: Readonly<Record<FindingId, FindingModel<P, C>>>,
): PreparedDemand<P, C>[] =>
  rowsAt(circumstances.catalogue.demands, circumstances.position.id).map((demand) => {
    const row = rowNamed(circumstances.catalogue.findings, demand.finding, 'finding');
    const model = rowNamed(models, demand.finding, 'finding');
    let before: Outcome | undefined;
    return {
      demand,
      row,
      model,
      limit: limitOf(demand, row, model, circumstances),
      rules: circumstances.catalogue.verdictRules.filter(({ weight }) => weight === demand.weight),
      before: () => (before ??= model.measure(circumstances.original, circumstances)),
    };
  });

/** The same for capacitors. */
export const prepareDemands = (circumstances: Circumstances): PreparedDemand[] =>
  demandsBy(circumstances, findingModels);

/** What one demand comes to for one part. */
export const judge = <P, C extends CommonCircumstances<P>>(
  { demand, row, model, limit, rules }: PreparedDemand<P, C>,
  part: P,
  circumstances: C,
): Judged => {
  const outcome = model.measure(part, circumstances);
  if (outcome.status === 'unknown') {
    const beyond = { unfavourable: 1, typical: 1 };
    return { demand, row, outcome, limit, beyond, verdict: 'fits-if' };
  }
  const beyond = beyondLimit(model, outcome.value, limit, circumstances.catalogue);
  const verdict = verdictFor(rules, demand.weight, beyond);
  return { demand, row, outcome, limit, beyond, verdict };
};

const sourcesOf = (
  judged: Judged,
  part: KnownPart,
  circumstances: Pick<Circumstances, 'catalogue'>,
): SourceId[] => {
  const { outcome, demand, row } = judged;
  const properties = outcome.status === 'known' ? outcome.properties : outcome.missing;
  const own = outcome.status === 'known' ? (outcome.sources ?? []) : [];
  const figures = properties.flatMap(
    (property) => knowledgeOf(circumstances, part, property).sources,
  );
  return [...new Set([...figures, ...own, demand.source, row.source])];
};

class PartFinding<P extends KnownPart, C extends CommonCircumstances<P>> extends ExplainedFinding {
  readonly #prepared: PreparedDemand<P, C>;
  readonly #judged: Judged;
  readonly #part: P;
  readonly #circumstances: C;

  constructor(prepared: PreparedDemand<P, C>, judged: Judged, part: P, circumstances: C) {
    super(judged, prepared.before(), siUnitOf(circumstances.catalogue, judged.row));
    this.#prepared = prepared;
    this.#judged = judged;
    this.#part = part;
    this.#circumstances = circumstances;
  }

  /** With what the figure means for the circuit today. */
  protected override workOut(): string {
    const { model } = this.#prepared;
    const { outcome } = this.#judged;
    if (outcome.status === 'unknown') return '';
    const working = model.working(this.#part, this.#circumstances, outcome.value);
    return [working, model.today?.(this.#circumstances) ?? '']
      .filter((words) => words !== '')
      .join('; ');
  }

  protected override cite(): SourceId[] {
    return sourcesOf(this.#judged, this.#part, this.#circumstances);
  }

  protected override rate(): Sureness {
    const { outcome, limit, row } = this.#judged;
    return surenessOf(outcome, limit, row, this.#part, this.#circumstances);
  }
}

/** A judged demand with everything that a reader needs to check it. */
export const explain = <P extends KnownPart, C extends CommonCircumstances<P>>(
  prepared: PreparedDemand<P, C>,
  judged: Judged,
  part: P,
  circumstances: C,
): Finding => new PartFinding(prepared, judged, part, circumstances);

/** The finding that decides an assessment: the one that it names as the worst. */
export const decidingFinding = ({
  findings,
  worst,
}: {
  findings: readonly Finding[];
  worst: string;
}): Finding | undefined => findings.find(({ demand }) => demand === worst) ?? findings[0];
