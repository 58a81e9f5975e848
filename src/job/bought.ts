import { formatValue, type Assessment, type Catalogue, type Part } from '../engine/index.ts';
import { pitchPhrase } from '../substitution/phrases.ts';
import { printTolerance } from '../substitution/typed-numbers.ts';
import { capital } from '../text/words.ts';
import { formingNote } from './lead-forming.ts';
import type { PlannedLine } from './planned.ts';
import { printCapacitance, printVolts } from './print.ts';

/** What tells one thing to buy from another, in words. */
export interface Bought {
  kind: string;
  what: string;
  value: string;
  tolerance: string;
  volts: string;
  style: string;
  pitch: string;
  /** Height of the body, where one is listed. */
  height: string;
}

/** One thing of a stand-in, how many of it each place takes, and what to mind. */
export interface ThingFor {
  thing: Bought;
  each: number;
  notes: readonly string[];
}

/** What to buy for a line, or the reason why nothing can be ordered. */
export interface BoughtFor {
  things: readonly ThingFor[];
  reason?: string;
}

const capacitor = (part: Part, assessment: Assessment, catalogue: Catalogue): Bought => {
  const height = assessment.buy?.body?.height;
  const single = part.made === undefined;
  const offered = single ? assessment.buy : undefined;
  return {
    kind: 'capacitor',
    what: catalogue.types[part.type]?.name ?? part.type,
    value: printCapacitance(part),
    tolerance: printTolerance(part.tolerance),
    volts: printVolts(part) + (part.voltageKind === 'ac' ? ' AC' : ''),
    style: offered?.style ?? '',
    pitch: offered === undefined ? '' : pitchPhrase(assessment),
    height: offered === undefined || height === undefined ? '' : `${String(height)}\u00A0mm`,
  };
};

const resistor = (ohm: number, watt: number | undefined): Bought => ({
  kind: 'resistor',
  what: watt === undefined ? 'Resistor' : `Resistor, ${formatValue(watt, 'W')} or more`,
  value: formatValue(ohm, 'ohm'),
  tolerance: '',
  volts: '',
  style: '',
  pitch: '',
  height: '',
});

/** A stand-in that is made of several things: each is bought. */
const madeThings = (assessment: Assessment, catalogue: Catalogue, where: string): ThingFor[] => {
  const { made } = assessment.candidate;
  if (made === undefined) return [];
  const notes = [`goes with another part in ${where}`];
  const parts = made.parts.map((part) => ({
    thing: {
      ...capacitor(part, assessment, catalogue),
      style: part.style,
      pitch: part.pitch.length === 0 ? '' : `${part.pitch.join(' or ')}\u00A0mm`,
      height: '',
    },
    each: 1,
    notes,
  }));
  const extra = [
    ...(made.resistor === undefined ? [] : [{ ohm: made.resistor, watt: made.power, each: 1 }]),
    ...(made.bleeder === undefined
      ? []
      : [{ ohm: made.bleeder, watt: undefined, each: made.parts.length }]),
  ];
  return [
    ...parts,
    ...extra.map(({ ohm, watt, each }) => ({ thing: resistor(ohm, watt), each, notes })),
  ];
};

/** A part that is bought as it is typed, like for like. */
const asTyped = ({ line, part }: PlannedLine): ThingFor => ({
  thing: {
    kind: part.kind === '' ? 'other' : part.kind,
    what: line.type === '' ? capital(part.kind === '' ? 'part' : part.kind) : line.type,
    value: line.value,
    tolerance: line.tolerance,
    volts: line.volts,
    style: '',
    pitch: '',
    height: '',
  },
  each: 1,
  notes: [
    'as typed, not assessed here yet',
    ...(line.marking.trim() === '' ? [] : [`the old one is marked ${line.marking}`]),
  ],
});

/** What one place of a line takes; the designators are not counted here. */
export const boughtFor = (planned: PlannedLine, catalogue: Catalogue): BoughtFor => {
  const { state, standIn, line, part } = planned;
  if (state === 'waiting') return { things: [], reason: 'its position is still being fetched' };
  if (state === 'open')
    return { things: [], reason: `its ${planned.missing[0] ?? 'part'} is not known` };
  if (state === 'other') {
    const said = line.value + line.marking + line.type;
    return said.trim() === ''
      ? { things: [], reason: 'nothing says what it is' }
      : { things: [asTyped(planned)] };
  }
  if (standIn === undefined) return { things: [], reason: 'no stand-in serves in its place' };
  const where = part.designators.join(' ');
  if (standIn.candidate.made !== undefined) {
    return { things: madeThings(standIn, catalogue, where) };
  }
  const thing = capacitor(standIn.candidate, standIn, catalogue);
  const form = formingNote(line, standIn, catalogue);
  return { things: [{ thing, each: 1, notes: form === '' ? [] : [form] }] };
};
