import type { DeviceRow } from '../../schemas/devices.ts';
import type { DeviceTriageRow, KindTriageRow } from '../../schemas/triage.ts';
import type { Catalogue, TypeId } from '../catalogue.ts';
import type { Judgement } from './judge-first.ts';

/** Whether an old part that is no capacitor needs replacing: what is said of its like, whatever was read. */

/** The rules that say most of a part: the first group with any. What no rule speaks of is tested. */
const judgedBy = (groups: readonly (readonly (KindTriageRow | DeviceTriageRow)[])[]): Judgement => {
  const rules = groups.find(({ length }) => length > 0) ?? [];
  return {
    advice: rules[0]?.advice ?? 'test',
    reasons: rules.map(({ advice, why, source, basis, note }) => ({
      advice,
      why,
      working: '',
      source,
      basis,
      note,
    })),
  };
};

/** Advice on an old resistor, trimmer or other part that goes by value: of its type, else of its kind. */
export const judgeOfKind = ({ kindTriage, kindTypes }: Catalogue, type: TypeId): Judgement => {
  const kind = kindTypes[type]?.kind ?? '';
  return judgedBy([
    kindTriage.filter(({ types }) => types.includes(type)),
    kindTriage.filter(({ kinds }) => kinds.includes(kind)),
  ]);
};

/** Advice on an old part that goes by type number: of itself, else of its function, else of its family. */
export const judgeDevice = (
  { devices: { triage } }: Catalogue,
  device: Pick<DeviceRow, 'id' | 'function' | 'family'>,
): Judgement =>
  judgedBy([
    triage.filter(({ devices }) => devices.includes(device.id)),
    triage.filter(({ functions }) => functions.includes(device.function)),
    triage.filter(({ families }) => families.includes(device.family)),
  ]);
