import type { Catalogue } from '../catalogue.ts';
import type { SignRow } from '../../schemas/look.ts';
import type { LookAnswers } from './model.ts';

/** What the loss at two frequencies says of the state of a part. */
export interface LossSign {
  /** Loss at 120 Hz over that at 1 kHz. */
  ratio: number;
  /** What the data say of this ratio; nothing where it lies between what is known. */
  sign?: SignRow;
}

/**
 * What rules the loss of a part, from both readings of it: a resistance in series lets it rise with
 * frequency, a leak lets it fall, and a dielectric leaves it about as it is.
 *
 * @returns nothing where one of the two is missing or zero
 */
export const lossSign = ({ look }: Catalogue, answers: LookAnswers): LossSign | undefined => {
  const [low, high] = [answers.numbers?.['d-120hz']?.typ, answers.numbers?.['d-1khz']?.typ];
  if (low === undefined || high === undefined || low <= 0 || high <= 0) return undefined;
  const ratio = low / high;
  const sign = look.signs.find((row) => ratio >= row.low && ratio <= row.high);
  return sign === undefined ? { ratio } : { ratio, sign };
};
