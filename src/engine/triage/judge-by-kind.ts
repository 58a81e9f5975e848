import type { DeviceRow } from '../../schemas/devices.ts';
import type { DeviceTriageRow, KindTriageRow } from '../../schemas/triage.ts';
import type { Catalogue } from '../catalogue.ts';
import type { Judgement, TriageReason } from './judge-first.ts';
import { borneOut, type KindEvidence, type MarkedKind } from './kind-readings.ts';

/** Whether an old part that is no capacitor needs replacing: what is said of its like, and what was read. */

const reasonOf = (
  { advice, why, source, basis, note }: KindTriageRow | DeviceTriageRow,
  working: string,
): TriageReason => ({ advice, why, working, source, basis, note });

/** The rules that say most of a part: the first group with any. What no rule speaks of is tested. */
const judgedBy = (groups: readonly (readonly (KindTriageRow | DeviceTriageRow)[])[]): Judgement => {
  const rules = groups.find(({ length }) => length > 0) ?? [];
  return {
    advice: rules[0]?.advice ?? 'test',
    reasons: rules.map((rule) => reasonOf(rule, '')),
  };
};

/**
 * Advice on an old resistor, trimmer or other part that goes by value: by what was read of it, else of
 * its type, else of its kind. A reading that settles the matter is all that is said.
 */
export const judgeOfKind = (
  catalogue: Catalogue,
  marked: MarkedKind,
  evidence: KindEvidence = {},
): Judgement => {
  const { kindTriage, kindTypes } = catalogue;
  const read = borneOut(catalogue, marked, evidence);
  if (read !== undefined)
    return { advice: read.row.advice, reasons: [reasonOf(read.row, read.working)] };
  const kind = kindTypes[marked.type]?.kind ?? '';
  const standing = kindTriage.filter(({ reading }) => reading === 'none');
  return judgedBy([
    standing.filter(({ types }) => types.includes(marked.type)),
    standing.filter(({ kinds }) => kinds.includes(kind)),
  ]);
};

/** Advice on an old part that goes by type number: of itself, else of its function in its usual body, else of its function, else of its family. */
export const judgeDevice = (
  { devices: { triage, pinouts } }: Catalogue,
  device: Pick<DeviceRow, 'id' | 'function' | 'family' | 'pinouts'>,
): Judgement => {
  const body = pinouts.find(({ id }) => id === device.pinouts[0])?.body ?? '';
  const ofFunction = triage.filter(({ functions }) => functions.includes(device.function));
  return judgedBy([
    triage.filter(({ devices }) => devices.includes(device.id)),
    ofFunction.filter(({ bodies }) => bodies.includes(body)),
    ofFunction.filter(({ bodies }) => bodies.length === 0),
    triage.filter(({ families }) => families.includes(device.family)),
  ]);
};
