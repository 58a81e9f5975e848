import { emptyPreset, type Line, type Preset } from '../model/job.ts';

/** A trimmer's setting as its line, its bench sheet and the page of its stand-ins have it. */

/** What the conditions of a setting are read from at the bench, where the line does not say them. */
const OF_OLD = { 'old-setting': 'old', 'old-total': 'oldTotal' } as const;

/** Keys of the page's address for what is measured on the new one, and what they are at the bench. */
const OF_NEW = { 'new-total': 'total', 'new-now': 'supplied', 'new-turns': 'turns' } as const;

/** What was read at the bench of the only part of a line; nothing for a line of several. */
export const presetOf = ({ fitted }: Line, designators: readonly string[]): Preset | undefined =>
  (designators.length === 1 ? fitted[designators[0] ?? '']?.preset : null) ?? undefined;

/** The texts of a setting under the keys of an address or the ids of conditions; empty ones left out. */
const textsOf = (
  preset: Preset,
  keys: Readonly<Record<string, keyof Preset>>,
): Record<string, string> =>
  Object.fromEntries(
    Object.entries(keys).flatMap(([key, field]) =>
      preset[field].trim() === '' ? [] : [[key, preset[field]] as const],
    ),
  );

/**
 * A line with its setting for conditions: readings of a trimmer at the bench count for its line once it
 * has the line to itself. What the line itself says stands before them.
 */
export const withSetting = (line: Line, designators: readonly string[]): Line => {
  const preset = presetOf(line, designators);
  if (preset === undefined) return line;
  const said = Object.entries(line.conditions).filter(([, text]) => text.trim() !== '');
  return {
    ...line,
    conditions: { ...textsOf(preset, OF_OLD), ...Object.fromEntries(said) },
  };
};

/** What was measured on the new trimmer, as keys of its page's address. */
export const newTrimmerOf = (
  line: Line,
  designators: readonly string[],
): Record<string, string> => {
  const preset = presetOf(line, designators);
  return preset === undefined ? {} : textsOf(preset, OF_NEW);
};

/** The setting that the address of a trimmer's page holds; nothing where it holds none. */
export const settingInAddress = (query: URLSearchParams): Preset | undefined => {
  const said = Object.entries({ ...OF_OLD, ...OF_NEW }).flatMap(([key, field]) => {
    const text = query.get(key) ?? '';
    return text.trim() === '' ? [] : [[field, text] as const];
  });
  return said.length === 0 ? undefined : { ...emptyPreset(), ...Object.fromEntries(said) };
};

/** Whether a condition is one of a trimmer's setting. */
export const isOfSetting = (condition: string): boolean => Object.hasOwn(OF_OLD, condition);
