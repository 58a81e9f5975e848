import { cellFault, type Check } from './check.ts';
import { goodRows } from './lookups.ts';

const rule = 'note-figure';

export const noteFigures: Check = {
  id: rule,
  about: 'A note on a position has a unit with its figures, and an equation if it is one.',
  needs: ['position-notes.csv'],
  check: (tables) =>
    goodRows(tables, 'position-notes.csv').flatMap((row) => {
      const { kind, equation, min, typ, max, unit } = row.value;
      const hasFigure = [min, typ, max].some((figure) => figure !== undefined);
      return [
        ...((unit !== '') === hasFigure
          ? []
          : [
              cellFault(rule, 'position-notes.csv', row, 'unit', {
                wrong: hasFigure ? 'a figure without a unit' : 'a unit without a figure',
                expected: hasFigure ? 'a unit in units.csv' : 'nothing',
              }),
            ]),
        ...((equation !== '') === (kind === 'equation')
          ? []
          : [
              cellFault(rule, 'position-notes.csv', row, 'equation', {
                wrong: equation === '' ? 'no equation' : `an equation in a note of kind ${kind}`,
                expected: equation === '' ? 'an equation in plain text' : 'nothing',
              }),
            ]),
      ];
    }),
};
