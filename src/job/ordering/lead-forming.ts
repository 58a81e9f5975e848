import { formatValue, parseQuantity, type Assessment, type Catalogue } from '../../engine/index.ts';
import { MILLIMETRE } from '../../engine/quantities/si.ts';
import type { Line } from '../model/job.ts';

/** Pitches (mm) as near as this are the same. */
const SAME = 0.3;

const diameters = (times: number): string =>
  `${String(times)} lead ${times === 1 ? 'diameter' : 'diameters'}`;

/** How leads are bent; those of thin ones where the thickness (mm) is not known. */
const bending = (lead: number | undefined, { leadForming }: Catalogue['job']): string => {
  const rules = leadForming.toSorted((a, b) => a.lead_from - b.lead_from);
  const rule = rules.findLast(({ lead_from: from }) => from <= (lead ?? 0)) ?? rules[0];
  if (rule === undefined) return '';
  const leads =
    lead === undefined
      ? `leads under ${String(rule.lead_to ?? 0)}\u00A0mm`
      : `leads of ${String(lead)}\u00A0mm`;
  return (
    `: straight for ${String(rule.straight_mm)}\u00A0mm or ${diameters(rule.straight_leads)}, ` +
    `whichever is more, then bent no tighter than ${diameters(rule.radius_leads)} inside, for ${leads}`
  );
};

/**
 * How the leads of a stand-in are bent where the place is known to have another pitch; nothing where
 * they fit or where the pitch of the place was not given.
 */
export const formingNote = (line: Line, { buy }: Assessment, { job }: Catalogue): string => {
  const room = line.conditions['room'] ?? '';
  const asked = room.trim() === '' ? undefined : parseQuantity(room, 'm', 'mm');
  const pitches = buy?.body?.pitch.length ? buy.body.pitch : (buy?.pitch ?? []);
  if (asked === undefined || !asked.ok || pitches.length === 0) return '';
  const place = asked.value.typ / MILLIMETRE;
  if (pitches.some((pitch) => Math.abs(pitch - place) <= SAME)) return '';
  const pitch = `form the leads for a pitch of ${formatValue(asked.value.typ, 'm')}`;
  return pitch + bending(buy?.body?.lead, job);
};
