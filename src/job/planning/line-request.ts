import {
  type Catalogue,
  type Evidence,
  type PositionId,
  type Request,
  type TypeId,
} from '../../engine/index.ts';
import { readAddress } from '../../substitution/address.ts';
import { guidelineKey, partKeys } from '../../substitution/keys.ts';
import { evidenceFields, readEvidence, signsKey } from '../../substitution/old-part.ts';
import { messagesOf } from '../../substitution/typed-numbers.ts';
import type { Job, Line } from '../model/job.ts';
import type { PartOfLine } from '../understanding/part-of-line.ts';
import { withAlternating } from './alternating.ts';

/** What a line asks of the engine, and what of its numbers could not be understood, by key. */
export interface LineRequest {
  request: Request;
  evidence: Evidence;
  rejected: Readonly<Record<string, string>>;
}

/** The texts of a line as the address of a substitution page carries them, so that both read alike. */
export const addressOfLine = (line: Line, whole: Job['whole']): URLSearchParams => {
  const { age, signs, ...readings } = line.found;
  const query = new URLSearchParams({
    ...withAlternating({
      ...whole.conditions,
      // A text left empty says nothing, so what holds for the whole board stays.
      ...Object.fromEntries(
        Object.entries(line.conditions).filter(([, text]) => text.trim() !== ''),
      ),
    }),
    [partKeys.age]: age,
    [guidelineKey]: whole.guideline,
    [signsKey]: signs.join(','),
  });
  for (const { key, reading } of evidenceFields) query.set(key, readings[reading]);
  return query;
};

/** Where a part sits and what it is, once both are known. */
export interface Placed {
  type: TypeId;
  position: PositionId;
}

/**
 * What a capacitor's line asks: its own conditions before those of the whole board. Numbers that
 * cannot be understood leave the default in place and are reported.
 */
export const requestOfLine = (
  catalogue: Catalogue,
  line: Line,
  { type, position, part, whole }: Placed & { part: PartOfLine; whole: Job['whole'] },
): LineRequest => {
  const query = addressOfLine(line, whole);
  const asked = readAddress(catalogue, type, position, query);
  const { evidence, rejected } = readEvidence(query);
  const { age } = asked.request.original;
  const { capacitance, tolerance, ratedVoltage, voltageKind } = part;
  return {
    request: {
      ...asked.request,
      original: { type, capacitance, tolerance, ratedVoltage, voltageKind, age },
    },
    evidence: { ...evidence, ...(age === undefined ? {} : { age: age.typ }) },
    rejected: {
      ...part.rejected,
      ...messagesOf(asked.rejected),
      ...rejected,
    },
  };
};
