import type { FindingRow } from '../../schemas/positions.ts';
import type { Catalogue, FindingId, PropertyId, SourceId } from '../catalogue.ts';
import type { Limit, Outcome } from '../findings/model.ts';
import type { Range } from '../quantities/range.ts';
import type { Finding, Judged } from './finding.ts';
import type { Sureness } from './sureness.ts';
import type { Verdict } from './verdict.ts';

/** SI unit that the figures of a finding are in. */
export const siUnitOf = (catalogue: Catalogue, row: FindingRow): string =>
  catalogue.units[row.unit]?.si ?? row.unit;

/** A figure of nothing at all is this far inside its limit, so that a margin stays a number. */
const LEAST_BEYOND = 1e-12;

/**
 * A judged demand as a finding. Its words and what it rests on are worked out when they are first
 * read, for of most findings only the verdict is: a class, because hundreds are made at an edit.
 */
export abstract class ExplainedFinding implements Finding {
  readonly demand: string;
  readonly finding: FindingId;
  readonly name: string;
  readonly weight: Finding['weight'];
  readonly unit: string;
  declare readonly original?: Range;
  declare readonly standIn?: Range;
  readonly limit: Limit;
  readonly margin: number;
  readonly verdict: Verdict;
  readonly missing: PropertyId[];
  readonly why: string;
  #working: string | undefined;
  #sources: SourceId[] | undefined;
  #sureness: Sureness | undefined;

  /**
   * @param before what the old part comes to
   * @param unit SI unit of the figures
   */
  constructor(
    { demand, row, outcome, limit, beyond, verdict }: Judged,
    before: Outcome,
    unit: string,
  ) {
    this.demand = demand.id;
    this.finding = row.id;
    this.name = row.name;
    this.weight = demand.weight;
    this.unit = unit;
    if (before.status === 'known') this.original = before.value;
    if (outcome.status === 'known') {
      this.standIn = outcome.value;
      this.margin = 1 / Math.max(beyond.unfavourable, LEAST_BEYOND);
      this.missing = [];
    } else {
      this.margin = 0;
      this.missing = outcome.missing;
    }
    this.limit = limit;
    this.verdict = verdict;
    this.why = demand.why;
  }

  /** How a known figure was reckoned. */
  protected abstract workOut(): string;
  /** Where it all is from. */
  protected abstract cite(): SourceId[];
  protected abstract rate(): Sureness;

  get working(): string {
    return (this.#working ??= this.standIn === undefined ? 'not known' : this.workOut());
  }

  get sources(): SourceId[] {
    return (this.#sources ??= this.cite());
  }

  get #sure(): Sureness {
    return (this.#sureness ??= this.rate());
  }

  get sure(): Sureness['sure'] {
    return this.#sure.sure;
  }

  get basis(): Sureness['basis'] {
    return this.#sure.basis;
  }

  get weakest(): Sureness['weakest'] {
    return this.#sure.weakest;
  }

  get apart(): Sureness['apart'] {
    return this.#sure.apart;
  }
}
