import { cellFault, type Check } from './check.ts';
import { byId, goodRows, unitsOf } from './lookups.ts';
import { valuesOf } from '../read-folder.ts';

const rule = 'look-unit';

/** A resistance may be given times the capacitance, which is a time. */
const TIMES_CAPACITANCE: Readonly<Record<string, string>> = { ohm: 's' };

export const lookUnits: Check = {
  id: rule,
  about: 'A range is in a unit of the kind that its question asks for, within what can be read.',
  needs: ['look/questions.csv', 'look/ranges.csv', 'units.csv'],
  check: (tables) => {
    const units = unitsOf(tables);
    const questions = byId(valuesOf(tables, 'look/questions.csv'));
    return goodRows(tables, 'look/ranges.csv').flatMap((row) => {
      const question = questions.get(row.value.question);
      const [own, asked] = [units[row.value.unit], units[question?.unit ?? '']];
      if (question === undefined || own === undefined || asked === undefined) return [];
      if (own.si !== asked.si) {
        if (own.si === TIMES_CAPACITANCE[asked.si]) return [];
        return [
          cellFault(rule, 'look/ranges.csv', row, 'unit', {
            wrong: `a unit of another kind than ${question.id} has`,
            expected: `a unit like ${question.unit}`,
          }),
        ];
      }
      const { low, high } = row.value;
      const least = (question.lowest ?? -Infinity) * asked.factor;
      const most = (question.highest ?? Infinity) * asked.factor;
      const isTooHigh = (high ?? -Infinity) * own.factor > most;
      const isTooLow = question.scale === 'linear' && (low ?? Infinity) * own.factor < least;
      return isTooHigh || isTooLow
        ? [
            cellFault(rule, 'look/ranges.csv', row, isTooHigh ? 'high' : 'low', {
              wrong: 'beyond what can be read',
              expected: `${question.lowest} to ${question.highest} ${question.unit}`,
            }),
          ]
        : [];
    });
  },
};
