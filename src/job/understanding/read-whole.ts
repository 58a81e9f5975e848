import type { Reading } from '../../engine/index.ts';

/** Whether a reading says a capacitance or a resistance. */
export const hasValue = ({ capacitance, resistance, sections }: Reading): boolean =>
  (capacitance ?? resistance ?? sections) !== undefined;

/** Whether the best of some readings has a value and leaves nothing of the text aside but by the way. */
export const isReadWhole = ([best]: readonly Reading[]): boolean =>
  best !== undefined &&
  hasValue(best) &&
  (best.notUnderstood.length === 0 || best.sure !== 'possible');
