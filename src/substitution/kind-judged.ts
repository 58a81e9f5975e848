import {
  judgeOfKind,
  resolveKindSituation,
  type Catalogue,
  type Judgement,
  type KindEvidence,
  type KindRequest,
} from '../engine/index.ts';
import type { KindRow } from '../schemas/kinds.ts';
import type { JudgedFirst } from './judge-view.ts';
import { readResistance, resistanceField, resistanceHint } from './old-resistance.ts';

/** Whether an old resistor, trimmer or control needs replacing, by what a meter reads on it. */

/** Whether rules judge the parts of a kind by what they read. */
export const isJudgedByReading = ({ kindTriage }: Catalogue, { id }: KindRow): boolean =>
  kindTriage.some(({ reading, kinds }) => reading !== 'none' && kinds.includes(id));

/**
 * What was read of an old part from end to end, as typed, and what is wrong with that. Nothing typed:
 * the total that stands beside a trimmer's setting.
 */
export const kindEvidence = (
  catalogue: Catalogue,
  { conditions }: KindRequest,
  typed: string,
): { evidence: KindEvidence; message?: string } => {
  if (typed.trim() === '') return { evidence: { resistance: conditions?.['old-total'] } };
  const read = readResistance(catalogue, typed.trim());
  return 'value' in read
    ? { evidence: { resistance: read.value } }
    : { evidence: {}, message: read.message };
};

/** By what was read of it; nobody can be held to the mark of a part that is only usual in its place. */
export const judgeOldKind = (
  catalogue: Catalogue,
  request: KindRequest,
  evidence: KindEvidence,
): Judgement => {
  const { type, tolerance } = resolveKindSituation(catalogue, request).original;
  return judgeOfKind(catalogue, { type, tolerance, value: request.original.value?.typ }, evidence);
};

const BESIDES =
  'A reading is judged by the value and the tolerance that are marked: give them with the numbers below.';

/** What the address of a page says of the old part besides its numbers. */
export const kindJudged = (
  catalogue: Catalogue,
  request: KindRequest,
  query: URLSearchParams,
): JudgedFirst => {
  const kind = catalogue.kinds[catalogue.kindTypes[request.original.type]?.kind ?? ''];
  const { key, label } = resistanceField;
  const typed = query.get(key) ?? '';
  const { evidence, message } = kindEvidence(catalogue, request, typed);
  const isUnmarked = typed.trim() !== '' && request.original.value === undefined;
  const hint =
    kind && (isUnmarked ? 'counts once you say below what it is marked' : resistanceHint(kind));
  const inputs =
    kind && isJudgedByReading(catalogue, kind)
      ? [{ key, label, note: message ?? hint ?? '', fault: message !== undefined }]
      : [];
  return {
    judgement: judgeOldKind(catalogue, request, evidence),
    inputs,
    besides: BESIDES,
    signs: [],
    seen: [],
  };
};
