import type { LookAnswers } from '../engine/index.ts';

/** Whether anything was answered that counts. */
export const isAnswered = ({ chosen = {}, numbers = {} }: LookAnswers): boolean =>
  Object.keys(chosen).length > 0 || Object.keys(numbers).length > 0;
