import { formatValue, parseQuantity, type Assessment, type Catalogue } from '../engine/index.ts';
import type { Line } from './model.ts';

/** Pitches (mm) as near as this are the same. */
const SAME = 0.3;
const METRES_PER_MM = 1e-3;

/**
 * How the leads of a stand-in are bent where the place is known to have another pitch; nothing where
 * they fit or where the pitch of the place was not given.
 */
export const formingNote = (line: Line, { buy }: Assessment, { job }: Catalogue): string => {
  const room = line.conditions['room'] ?? '';
  const asked = room.trim() === '' ? undefined : parseQuantity(room, 'm', 'mm');
  const pitches = buy?.body?.pitch.length ? buy.body.pitch : (buy?.pitch ?? []);
  if (asked === undefined || !asked.ok || pitches.length === 0) return '';
  const place = asked.value.typ / METRES_PER_MM;
  if (pitches.some((pitch) => Math.abs(pitch - place) <= SAME)) return '';
  const rule = job.leadForming.toSorted((a, b) => a.lead_from - b.lead_from)[0];
  if (rule === undefined) return '';
  return (
    `form the leads for a pitch of ${formatValue(asked.value.typ, 'm')}: straight for ` +
    `${String(rule.straight_mm)}\u00A0mm and ${String(rule.straight_leads)} lead diameter at least, ` +
    `then bent no tighter than ${String(rule.radius_leads)} lead diameter inside, for leads under ${String(rule.lead_to ?? 0)}\u00A0mm`
  );
};
