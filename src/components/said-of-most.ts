/**
 * The remark that more than half of some rows have, so that it can be said once, where every row has one:
 * of a row without any it would say what nobody said. Nothing where there is none such.
 */
export const saidOfMost = (remarks: readonly string[]): string | undefined =>
  remarks.includes('')
    ? undefined
    : [...Map.groupBy(remarks, (remark) => remark)].find(
        ([, all]) => all.length * 2 > remarks.length,
      )?.[0];
