import type { Sum } from '../engine/sums/sum.ts';

/** What fetches each sum of a group, by the path of its file. */
type SumFiles = Readonly<Record<string, () => Promise<Record<string, Sum>>>>;

/** A list for each group: one of all sums would weigh more than most of them. */
const groups = import.meta.glob<{ files: SumFiles }>('./sum-groups/*.ts');

/** The sum of a page. @throws if there is none of that group and id */
export const loadSum = async (group: string, id: string): Promise<Sum> => {
  const files = (await groups[`./sum-groups/${group}.ts`]?.())?.files ?? {};
  const load = files[`../../engine/sums/${group}/${id}.ts`];
  const sum = Object.values((await load?.()) ?? {}).find((one) => one.id === id);
  if (sum === undefined) throw new Error(`there is no sum ${id} in ${group}`);
  return sum;
};
