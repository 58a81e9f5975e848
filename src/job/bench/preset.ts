import { formatQuantity, formatValue, type Catalogue, type Range } from '../../engine/index.ts';
import { trimmerPreset } from '../../engine/sums/resistor/trimmer-preset.ts';
import { runSumOf } from '../../engine/sums/run-sum.ts';
import { meterDisplay } from '../../substitution/meter-display.ts';
import { readRange, type Read } from '../../substitution/typed-numbers.ts';
import type { Preset } from '../model/job.ts';
import type { PlannedLine } from '../planning/planned.ts';
import { isKind } from '../planning/stand-in.ts';

/**
 * A setting with what is known of the part that goes in, where nothing was measured of it, and wired
 * as the position says.
 * @param catalogue of the position
 */
export const presetFor = (
  { standIn, part }: PlannedLine,
  preset: Preset,
  catalogue: Catalogue | undefined,
): Preset => {
  const wiring = catalogue?.kindPositions[part.position ?? '']?.wiring;
  const fitted = standIn !== undefined && isKind(standIn) ? standIn : undefined;
  const { value } = fitted?.candidate ?? {};
  const or = (typed: string, known: string | undefined): string =>
    typed.trim() === '' ? (known ?? '') : typed;
  return {
    ...preset,
    use: wiring === 'divider' || wiring === 'rheostat' ? wiring : preset.use,
    total: or(preset.total, value === undefined ? undefined : formatValue(value, 'ohm')),
    turns: or(preset.turns, fitted?.turns === undefined ? undefined : String(fitted.turns.typ)),
  };
};

/** A trimmer's setting carried over to the new one. */
export interface PresetSteps {
  /** What it was worked out from, what is known of the new part among it. */
  from: Preset;
  /** What the new one has to read between the same terminals, ohm; nothing out of its reach. */
  set: Range | undefined;
  /** End to end of the new one, ohm; nothing until it is known. */
  total: Range | undefined;
  /** Turns from where it stands; below zero towards less resistance. */
  turns: Range | undefined;
  /** What the sum has to say besides. */
  notes: readonly string[];
  /** What could not be understood, by field. */
  rejected: Readonly<Record<string, string>>;
}

/** Turns and which way, `4.68 turns towards less resistance`; with signs where that is not settled. */
export const turnsInWords = (turns: Range): string => {
  const { min, typ, max } = turns;
  if (max < 0) {
    const back = { min: -max, typ: -typ, max: -min };
    return `${formatQuantity(back, 'number')} turns towards less resistance`;
  }
  const signed = formatQuantity(turns, 'number');
  return min < 0 ? `${signed} turns` : `${signed} turns towards more resistance`;
};

/** How each typed reading goes into the bench sum. */
const FIELDS = {
  old: { key: 'reading', unit: 'ohm' },
  oldTotal: { key: 'oldTotal', unit: 'ohm' },
  supplied: { key: 'now', unit: 'ohm' },
  total: { key: 'total', unit: 'ohm' },
  turns: { key: 'turns', unit: 'number' },
} as const;

/** No trimmer has more resistance (ohm), or more turns. */
const MOST = { ohm: 1e9, number: 100 } as const;

const readOf = (text: string, unit: keyof typeof MOST): Read<Range> =>
  meterDisplay(text) === undefined
    ? readRange(text, { unit, lowest: 0, highest: MOST[unit] })
    : { message: `“${text}” is no number to set by; it is kept as you typed it.` };

/**
 * Works a trimmer's preset out by the bench sum for it, as a resistance between two terminals. Where
 * a number is missing, what depends on it is missing too.
 */
export const presetSteps = (catalogue: Catalogue, preset: Preset): PresetSteps => {
  const rejected: Record<string, string> = {};
  const given: Record<string, Range> = {};
  for (const [field, { key, unit }] of Object.entries(FIELDS)) {
    const text = preset[field as keyof typeof FIELDS].trim();
    if (text === '') continue;
    const read = readOf(text, unit);
    if ('value' in read) given[key] = read.value;
    else rejected[field] = read.message;
  }
  const { reading, total, now, turns } = given;
  // A divider of which only the ohms are known is set to these.
  const isDivider = preset.use === 'divider' && given['oldTotal'] !== undefined;
  if (reading === undefined)
    return { from: preset, set: undefined, total, turns: undefined, notes: [], rejected };
  if (total === undefined || total.min <= 0 || (turns !== undefined && turns.min <= 0)) {
    return { from: preset, set: reading, total, turns: undefined, notes: [], rejected };
  }
  const { outputs, notes } = runSumOf(trimmerPreset, catalogue, {
    oldTotal: total,
    ...given,
    use: isDivider ? 'divider' : 'rheostat',
  });
  return {
    from: preset,
    set: outputs['set'],
    total,
    turns: now === undefined || turns === undefined ? undefined : outputs['go'],
    notes: notes.map(({ text }) => text),
    rejected,
  };
};
