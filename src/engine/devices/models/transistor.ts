import { figureOf, shareOf } from './rating.ts';

export const stands = shareOf('breakdown', 'top-voltage', 'V');
export const carries = shareOf('current-max', 'top-current', 'A');
export const amplifies = figureOf('gain', 'ratio');
export const fastEnough = figureOf('transition', 'Hz');
