/** Takes a job of one version to the next; what it gets is not checked yet. */
export type Step = (job: Readonly<Record<string, unknown>>) => Record<string, unknown>;

/** How a job of an older version, by its number, becomes one of the next. */
export const steps: ReadonlyMap<number, Step> = new Map();

/** The version that this edition writes. */
export const NEWEST_VERSION = 1;

/**
 * A job brought up to the newest version, or one sentence about why not. What a newer edition wrote
 * is refused, since it may hold what this one would lose.
 */
export const migrated = (
  job: Readonly<Record<string, unknown>>,
  table: ReadonlyMap<number, Step> = steps,
  newest = NEWEST_VERSION,
): { job: Record<string, unknown> } | { message: string } => {
  let now = { ...job };
  const { version } = now;
  if (typeof version !== 'number' || !Number.isSafeInteger(version))
    return { message: 'This file does not say of which version it is, so it is left as it is.' };
  if (version > newest)
    return {
      message: `A newer edition wrote this job (version ${String(version)}; this one reads up to ${String(newest)}). It is left as it is; open it with the newer edition.`,
    };
  for (let at = version; at < newest; at++) {
    const step = table.get(at);
    if (step === undefined)
      return {
        message: `Jobs of version ${String(version)} were never written; nothing is opened.`,
      };
    now = { ...step(now), version: at + 1 };
  }
  return { job: now };
};
