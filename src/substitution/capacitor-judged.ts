import {
  judgeFirst,
  resolveSituation,
  signsOf,
  type Catalogue,
  type Request,
} from '../engine/index.ts';
import type { JudgedFirst } from './judge-view.ts';
import { evidenceFields, readEvidence } from './old-part.ts';

/** Whether an old capacitor needs replacing, by what the address of its page says of it. */
export const capacitorJudged = (
  catalogue: Catalogue,
  request: Request,
  query: URLSearchParams,
): JudgedFirst => {
  const { evidence, rejected } = readEvidence(query);
  const { original } = resolveSituation(catalogue, request);
  const { position } = request;
  return {
    judgement: judgeFirst(catalogue, original, position, {
      ...evidence,
      // Only where it is known: what is usual for a type condemns no part.
      age: request.original.age?.typ,
    }),
    inputs: evidenceFields.map(({ key, label, hint }) => {
      const message = rejected[key];
      return { key, label, note: message ?? hint, fault: message !== undefined };
    }),
    besides: 'Its age counts as well: give it with the numbers below.',
    signs: signsOf(catalogue, original.type, position),
    seen: evidence.signs ?? [],
  };
};
