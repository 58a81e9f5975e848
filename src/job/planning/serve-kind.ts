import {
  askedOfEach,
  assessKind,
  borneByEach,
  findKindStandIns,
  formatQuantity,
  isTaper,
  kindChain,
  resolveKindSituation,
  type Catalogue,
  type KindAssessment,
  type KindCandidate,
  type KindEvidence,
  type KindRequest,
  type Range,
  type Unit,
} from '../../engine/index.ts';
import { knownRange } from '../../engine/known-range.ts';
import { ok } from '../../engine/result.ts';
import { readKindAddress } from '../../substitution/kind-address.ts';
import { strangeness } from '../../substitution/strangeness.ts';
import { judgeOldKind, kindEvidence } from '../../substitution/kind-judged.ts';
import { resistanceField } from '../../substitution/old-resistance.ts';
import { messagesOf } from '../../substitution/typed-numbers.ts';
import { asOrdered, misfitOf, restOf, type Asking, type Server } from './asked.ts';
import { readKindCandidate } from './choice.ts';
import { addressOfLine } from './line-request.ts';
import type { Rest, Worked } from './planned.ts';
import { withSetting } from './setting-of-line.ts';
import type { KindStandIn, StandIn } from './stand-in.ts';

/** What a line asks, and what was read of its old part. */
interface KindLine {
  request: KindRequest;
  evidence: KindEvidence;
}

const known = (catalogue: Catalogue, type: string, property: string): Range | undefined =>
  knownRange(catalogue.knowledge[type]?.[property]);

/** What one orders a type by besides value and rating: `temperature coefficient ±100 ppm/K`. */
const detailsOf = (catalogue: Catalogue, type: string): string[] => {
  const kind = catalogue.kinds[catalogue.kindTypes[type]?.kind ?? ''];
  return (kind?.ordered ?? []).flatMap((property) => {
    const range = known(catalogue, type, property);
    const row = catalogue.properties[property];
    if (range === undefined || row === undefined) return [];
    const unit = (catalogue.units[row.unit]?.si ?? row.unit) as Unit;
    return [`${row.name.toLowerCase()} ${formatQuantity(range, unit)}`];
  });
};

/** How the track of a stand-in has to go: as the old one is marked, else as its place asks. */
const taperOf = (catalogue: Catalogue, { part, position }: Asking): string[] => {
  const duties = catalogue.kindPositions[position]?.duties ?? [];
  const taper = part.taper ?? duties.find(isTaper);
  return taper === undefined ? [] : [`${taper} track`];
};

/** How many of a stand-in have to be on one shaft. */
const gangsOf = ({ part }: Asking): string[] =>
  part.gangs === undefined ? [] : [`${String(part.gangs)} on one shaft`];

const standInOf = (
  catalogue: Catalogue,
  assessment: KindAssessment,
  ordered: readonly string[],
  chained: Pick<KindStandIn, 'inSeries' | 'bears'> = {},
): KindStandIn => {
  const { type } = assessment.candidate;
  const turns = known(catalogue, type, 'turns');
  const finest = {
    rheostat: known(catalogue, type, 'adjust-rheostat'),
    divider: known(catalogue, type, 'adjust-divider'),
  };
  return {
    ...assessment,
    details: [...ordered, ...detailsOf(catalogue, type)],
    ...chained,
    ...(turns === undefined ? {} : { turns, finest }),
  };
};

/** How many stand in series, and what each of them bears. */
const chainedBy = (
  catalogue: Catalogue,
  request: KindRequest,
  candidate: KindCandidate,
  count: number,
): Pick<KindStandIn, 'inSeries' | 'bears'> => {
  const bears = borneByEach(catalogue, askedOfEach(catalogue, request, count), candidate);
  return { inSeries: count, ...(bears === undefined ? {} : { bears }) };
};

/** Parts in series that do as well as what fits by itself stand behind the first; they are first where none does. */
const withChain = ({ standIns, keptOut }: Rest, chain: StandIn | undefined): Rest => {
  if (chain === undefined) return { standIns, keptOut };
  const before = standIns[0]?.verdict === 'fits' ? 1 : 0;
  return { standIns: standIns.toSpliced(before, 0, chain), keptOut };
};

const work = (
  catalogue: Catalogue,
  { request, evidence }: KindLine,
  ordered: readonly string[],
): Worked => {
  const { original, conditions } = resolveKindSituation(catalogue, request);
  const all = findKindStandIns(catalogue, request);
  const { verdict, findings } = assessKind(catalogue, request, original);
  const single = restOf(
    asOrdered(all, (one) => strangeness(catalogue, request, one)),
    (one) => standInOf(catalogue, one, ordered),
  );
  const chain = kindChain(catalogue, request, all);
  const several = chain && chainedBy(catalogue, request, chain.each.candidate, chain.count);
  const rest = withChain(single, chain && standInOf(catalogue, chain.each, ordered, several));
  return {
    conditions,
    judgement: judgeOldKind(catalogue, request, evidence),
    best: rest.standIns[0],
    misfit: () => misfitOf(verdict, () => findings),
    rest: () => rest,
  };
};

const requestOf = (asking: Asking) => {
  const { catalogue, line, part, type, position, whole } = asking;
  const { value, tolerance, rating, designators } = part;
  const query = addressOfLine(withSetting(line, designators), whole);
  const asked = readKindAddress(catalogue, type, position, query);
  const request: KindRequest = {
    ...asked.request,
    original: { type, value, tolerance, rating },
  };
  const { evidence, message } = kindEvidence(catalogue, request, line.found.resistance);
  const unread = message === undefined ? {} : { [resistanceField.reading]: message };
  return {
    request,
    evidence,
    rejected: { ...part.rejected, ...messagesOf(asked.rejected), ...unread },
  };
};

/** Resistors, trimmers and other kinds that go by value. */
export const kinds: Server = {
  knowsType: ({ kindTypes }, type) => Object.hasOwn(kindTypes, type),
  knowsPosition: ({ kindPositions }, position) => Object.hasOwn(kindPositions, position),
  ask: (asking) => {
    const { catalogue, part } = asking;
    const { request, evidence, rejected } = requestOf(asking);
    const ordered = [...taperOf(catalogue, asking), ...gangsOf(asking)];
    return {
      key: JSON.stringify([part.kind, request, evidence, ordered]),
      rejected,
      work: () => work(catalogue, { request, evidence }, ordered),
      judge: () => judgeOldKind(catalogue, request, evidence),
      choose: (choice) => {
        const read = readKindCandidate(catalogue, choice);
        if (!read.ok) return read;
        const { candidate, inSeries } = read.value;
        const asked = inSeries === undefined ? request : askedOfEach(catalogue, request, inSeries);
        const several =
          inSeries === undefined ? {} : chainedBy(catalogue, request, candidate, inSeries);
        return ok({
          key: JSON.stringify(read.value),
          assess: () =>
            standInOf(catalogue, assessKind(catalogue, asked, candidate), ordered, several),
        });
      },
    };
  },
};
