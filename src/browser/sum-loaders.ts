import type { Sum } from '../engine/sums/sum.ts';

/** Each sum is a file of its own, so that a page fetches no more than the one that it shows. */
const files = import.meta.glob<Record<string, Sum>>([
  '../engine/sums/*/*.ts',
  '!../engine/sums/*/index.ts',
]);

/** The sum of a page. @throws if there is none of that id */
export const loadSum = async (id: string): Promise<Sum> => {
  const load = files[Object.keys(files).find((path) => path.endsWith(`/${id}.ts`)) ?? ''];
  const sum = Object.values((await load?.()) ?? {}).find((one) => one.id === id);
  if (sum === undefined) throw new Error(`there is no sum ${id}`);
  return sum;
};
