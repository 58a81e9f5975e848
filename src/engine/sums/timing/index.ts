import type { Sum } from '../sum.ts';
import { lcResonance } from './lc-resonance.ts';
import { rcTiming } from './rc-timing.ts';
import { secondOrderFilter } from './second-order-filter.ts';
import { timerChip } from './timer-chip.ts';

/** Sums of timers, tuned circuits and filters. */
export const timingSums: readonly Sum[] = [rcTiming, timerChip, lcResonance, secondOrderFilter];
