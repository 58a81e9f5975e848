import { fieldsOfLine, type LineFields, type PlannedLine } from '../../job/index.ts';
import { habit } from '../kept/habits.ts';
import { catalogueAt } from './planning.ts';
import { current } from './state.ts';

/** What a planned line may say besides its row; nothing while the catalogue of its position is not there. */
export const fieldsOf = ({ line, part }: PlannedLine): LineFields | undefined => {
  const catalogue = part.slice === undefined ? undefined : catalogueAt(part.slice);
  return catalogue && fieldsOfLine(catalogue, { line, part, whole: current().whole }, habit());
};
