import { answered, likelihoods } from './likelihood.ts';
import type { LookAnswers, LookModel } from './model.ts';

/** Shares that sum to one, of weights given as logarithms. */
const normalised = (logs: readonly number[]): number[] => {
  const most = Math.max(...logs);
  const weights = logs.map((log) => Math.exp(log - most));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return weights.map((weight) => weight / total);
};

/** How likely each hypothesis is by all that was answered; they sum to one. */
export const posterior = (model: LookModel, answers: LookAnswers): number[] => {
  const logs = model.hypotheses.map(({ prior }) => Math.log(prior));
  for (const { question, given } of answered(model, answers)) {
    likelihoods(model, question, given, answers).forEach((likelihood, i) => {
      logs[i] = (logs[i] ?? 0) + question.counts * Math.log(likelihood);
    });
  }
  return normalised(logs);
};
