import type { Taper } from '../markings/meanings/reading.ts';

/** Tapers that positions ask for, among other duties, and that types are sold with. */
const TAPERS: readonly string[] = ['linear', 'logarithmic'] satisfies Taper[];

/** Whether a duty is a taper: a type has several of them, and each part is ordered with one. */
export const isTaper = (duty: string): boolean => TAPERS.includes(duty);
