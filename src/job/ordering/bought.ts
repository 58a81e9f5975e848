import {
  formatValue,
  isChip,
  type Assessment,
  type Catalogue,
  type Part,
} from '../../engine/index.ts';
import { pitchPhrase } from '../../substitution/phrases.ts';
import { printTolerance } from '../../substitution/typed-numbers.ts';
import { plain } from '../../search/printed-forms.ts';
import { typeNumberIn } from '../../search/type-number.ts';
import { midSentence } from '../../text/mid-sentence.ts';
import type { Line } from '../model/job.ts';
import { lostDuties } from '../planning/lost-duties.ts';
import { lowerPowerOfLine } from '../planning/lower-power.ts';
import { lowerRatingOfLine } from '../planning/lower-rating.ts';
import type { PlannedLine } from '../planning/planned.ts';
import { printCapacitance, printVolts } from '../planning/print.ts';
import {
  isCapacitor,
  isDevice,
  chainWords,
  type DeviceStandIn,
  type KindStandIn,
  type StandIn,
} from '../planning/stand-in.ts';
import { typeNameIn } from '../planning/type-name.ts';
import { wordsBeside } from '../understanding/ask-capacitor.ts';
import { kindTitle } from '../understanding/kinds.ts';
import { unreadOf } from '../understanding/part-of-line.ts';
import { deviceThing, kindThing } from './bought-other.ts';
import { formingNote } from './lead-forming.ts';
import { nothingBought, type Bought, type ThingFor } from './thing.ts';

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
    ...nothingBought,
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
  ...nothingBought,
  kind: 'resistor',
  what: 'Resistor',
  value: formatValue(ohm, 'ohm'),
  power: watt === undefined ? '' : `${formatValue(watt, 'W')} or more`,
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
const asTyped = ({ line, part }: PlannedLine, common: Catalogue): ThingFor => ({
  thing: {
    ...nothingBought,
    kind: part.kind === '' ? 'other' : part.kind,
    what:
      line.type === ''
        ? kindTitle(part.kind === '' ? 'part' : part.kind)
        : typeNameIn(common, line.type),
    // What is printed on it is often all that tells one from another: two valves are no pair.
    value: line.value.trim() === '' ? line.marking.trim() : line.value,
    tolerance: line.tolerance,
    volts: line.volts,
    details: line.value.trim() === '' ? '' : line.marking.trim(),
  },
  each: 1,
  notes: [
    'as typed, not assessed',
    ...(part.known === undefined || part.known.lookOut === ''
      ? []
      : [midSentence(part.known.lookOut.replace(/\.$/u, ''))]),
  ],
});

/** What a part without leads needs on a board made for leads, as the boards of this work are. */
const fittingNote = ({ style }: Bought, catalogue: Catalogue): string =>
  isChip(catalogue, style) ? 'a chip without leads: it needs pads or short wires' : '';

/** That the old part was made for more volts, which an order must not hide. */
const ratingNote = (planned: PlannedLine, catalogue: Catalogue): string => {
  const lower = lowerRatingOfLine(catalogue, planned);
  return lower?.isHigh === true
    ? `the old part was for ${lower.old}: measure the voltage across it before buying`
    : '';
};

/** That a class of mains duty has to be kept: what is sold of a type has several. */
const classNote = ({ part: { safetyClass } }: PlannedLine): string =>
  safetyClass === undefined ? '' : `the old one is class ${safetyClass}: take no lower class`;

/** That the old part took more watts, likewise. */
const powerNotes = (planned: PlannedLine): string[] => {
  const lower = lowerPowerOfLine(planned);
  return lower === undefined
    ? []
    : [
        `the old part was for ${formatValue(lower.old, 'W')}: measure the voltage across it before buying`,
      ];
};

/** Letters right behind a number tell a gain group, a grade or a body, which an order has to say too. */
const lettersNote = (
  catalogue: Catalogue,
  { marking, value }: Line,
  { candidate }: DeviceStandIn,
): string => {
  for (const text of [marking.trim(), value.trim()]) {
    const number = text === '' ? undefined : typeNumberIn(catalogue, text, []);
    const [device, ...others] = number?.devices ?? [];
    if (device === undefined || others.length > 0) continue;
    const behind = number?.letters.filter(({ place }) => place === 'after') ?? [];
    if (behind.length > 0)
      return `the old one says ${text} (${behind.map((row) => `${row.text}: ${row.meaning}`).join('; ')})`;
    const isLettered = device.also.some(
      (name) => name.startsWith(device.name) && plain(name) === plain(text),
    );
    if (!isLettered) continue;
    const act = candidate.type === device.id ? ': order it with these letters' : '';
    return `the old one says ${text}${act}`;
  }
  return '';
};

/** A device, with what the old one is where it was judged as if it were another. */
const deviceFor = (
  { line, part: { kind, judgedFor } }: PlannedLine,
  standIn: DeviceStandIn,
  catalogue: Catalogue,
): ThingFor => {
  const bought = deviceThing(standIn, kind);
  const note =
    judgedFor === undefined
      ? lettersNote(catalogue, line, standIn)
      : `the old one is ${judgedFor}: compare ratings, pins and body before buying`;
  return { ...bought, notes: [note, ...bought.notes].filter((text) => text !== '') };
};

/** A part of another kind that goes by its value, with how several are joined where one does not do. */
const kindFor = (planned: PlannedLine, standIn: KindStandIn, catalogue: Catalogue): ThingFor => {
  const { kind, designators } = planned.part;
  const bought = kindThing(standIn, kind, typeNameIn(catalogue, standIn.candidate.type));
  const series = chainWords(standIn);
  const between = standIn.bears === undefined ? ' in' : ', in';
  const joined = series === '' ? [] : [`${series}${between} ${designators.join(' ')}`];
  const lost = lostDuties(catalogue, planned).map(
    (duty) =>
      `the old one is ${duty}, this one is not: take one that is, unless nothing there can overheat it`,
  );
  return { ...bought, notes: [...joined, ...powerNotes(planned), ...lost] };
};

/** A capacitor, with what to mind when it is bought for a line. */
const capacitorFor = (
  planned: PlannedLine,
  standIn: Assessment,
  catalogue: Catalogue,
): ThingFor => {
  const { line, worked } = planned;
  const thing = capacitor(standIn.candidate, standIn, catalogue);
  const words = `${wordsBeside(line)}, ${line.type}, ${line.note}`;
  const notes = [
    ratingNote(planned, catalogue),
    classNote(planned),
    fittingNote(thing, catalogue),
    worked?.soldAsOld?.(standIn, words) ?? '',
    formingNote(line, standIn, catalogue),
  ];
  return { thing, each: 1, notes: notes.filter((note) => note !== '') };
};

/** Why nothing can be bought for a line that is not planned to its end; nothing where what it says can be. */
const reasonWhileOpen = ({ state, missing, line, part }: PlannedLine): string | undefined => {
  const unread = unreadOf(part);
  if (state === 'open' && unread !== undefined) return `its ${unread} is not understood`;
  if (state === 'open' && (part.family === undefined || part.family === 'capacitor'))
    return `its ${missing[0] ?? 'part'} is not known`;
  const said = line.value + line.marking + line.type;
  return said.trim() === '' ? 'nothing says what it is' : undefined;
};

/** What a stand-in is bought as, by what it is. */
const thingsFor = (planned: PlannedLine, standIn: StandIn, catalogue: Catalogue): ThingFor[] => {
  if (isDevice(standIn)) return [deviceFor(planned, standIn, catalogue)];
  if (!isCapacitor(standIn)) return [kindFor(planned, standIn, catalogue)];
  return standIn.candidate.made === undefined
    ? [capacitorFor(planned, standIn, catalogue)]
    : madeThings(standIn, catalogue, planned.part.designators.join(' '));
};

/** What one place of a line takes; the designators are not counted here. */
export const boughtFor = (planned: PlannedLine, catalogue: Catalogue): BoughtFor => {
  const { state, standIn, missing } = planned;
  if (state === 'waiting') return { things: [], reason: 'its position is still being fetched' };
  if (state === 'other' || state === 'open') {
    const reason = reasonWhileOpen(planned);
    return reason === undefined
      ? { things: [asTyped(planned, catalogue)] }
      : { things: [], reason };
  }
  if (standIn !== undefined) return { things: thingsFor(planned, standIn, catalogue) };
  const isSized = !missing.includes('value');
  return {
    things: [],
    reason: isSized ? 'no stand-in serves in its place' : 'its value is not known',
  };
};
