import { FLOAT_ERROR } from '../quantities/within.ts';
import type { MarkingTables } from '../../schemas/markings.ts';
import type { Tolerance } from '../markings/meanings/reading.ts';
import { rarer } from '../markings/meanings/use.ts';
import { common } from '../common.ts';
import { CODE_FIGURES, inUnit, plainFigures, within } from './numbers.ts';
import { noughts } from './noughts.ts';
import type { ValuePiece } from './way.ts';

type Form = MarkingTables['resistorForms'][number];

/** How a resistance is written in a form of figures alone. */
const inForm = (form: Form, value: number): Pick<ValuePiece, 'text' | 'means'>[] => {
  const plain = plainFigures(value);
  if (form.shape === 'link' || plain === undefined || plain.includes('.')) return [];
  if (form.shape === 'plain') return [{ text: plain, means: 'Ω as it stands' }];
  return [0, 1, 2, 3, 4, 5, 6, 7].flatMap((power) => {
    const before = plainFigures(inUnit(value, 10 ** power));
    return before?.length === form.figures_max - 1 && !before.includes('.')
      ? [{ text: `${before}${power}`, means: `${before}${noughts(10 ** power)}, in Ω` }]
      : [];
  });
};

/** Whether plain figures would be taken for the code of as many figures on the same bodies. */
const isTakenForCode = (tables: MarkingTables, form: Form, text: string): boolean =>
  form.shape === 'plain' &&
  tables.resistorForms.some(
    (other) =>
      other.shape === 'multiplier' &&
      other.figures_max === text.length &&
      common(other.bodies, form.bodies) !== undefined,
  );

/** Whether parts in a form come in a tolerance. */
const comesIn = (form: Form, tolerance: Tolerance | undefined): boolean =>
  (tolerance?.plus ?? 0) * 100 <= (form.percent_max ?? Infinity) * (1 + FLOAT_ERROR);

/** Resistances in figures alone: `473`, `4702`, `470`. */
const inFigures = (
  tables: MarkingTables,
  value: number,
  tolerance: Tolerance | undefined,
): ValuePiece[] =>
  tables.resistorForms
    .filter((form) => within(value, form.value_min, form.value_max))
    .flatMap((form) =>
      inForm(form, value)
        .filter(({ text }) => text.length >= form.figures_min && text.length <= form.figures_max)
        .filter(({ text }) => !isTakenForCode(tables, form, text))
        // Behind a nought, the letter of a tolerance that is not met here is taken for thousands: `360K`.
        .filter(({ text }) => comesIn(form, tolerance) || !text.endsWith('0'))
        .map((written) => ({
          ...written,
          writing:
            form.shape === 'plain'
              ? 'plain'
              : form.figures_max > CODE_FIGURES
                ? 'four-figures'
                : 'figures',
          use: comesIn(form, tolerance) ? form.use : rarer(form.use, 'rare'),
          bodies: form.bodies,
          origins: form.origins,
          source: form.source,
          note: form.note,
        })),
    );

/** Whether a letter before figures is read as the point of a resistance, as the R of R56 is. */
const isPoint = ({ pointLetters }: MarkingTables, letter: string): boolean =>
  pointLetters.some(
    (row) =>
      row.letter === letter &&
      row.quantity === 'resistance' &&
      row.use === 'usual' &&
      row.places.includes('start'),
  );

/** Codes of small chips: two figures and a letter, or a letter and two figures. */
const onChips = (tables: MarkingTables, value: number): ValuePiece[] => {
  const codes = [
    ...tables.eia96Codes.map((row) => ({ ...row, letterFirst: false })),
    ...tables.letterFirstCodes.map((row) => ({ ...row, letterFirst: true })),
  ];
  return codes.flatMap((row) => {
    const share = row.tolerance_percent / 100;
    return tables.eia96Multipliers
      .filter(({ factor }) => inUnit(value, row.significand * factor) === 1)
      .filter(({ letter }) => !(row.letterFirst && isPoint(tables, letter)))
      .map(({ letter, factor, use, bodies, source, settle }): ValuePiece => ({
        text: row.letterFirst ? letter + row.code : row.code + letter,
        writing: 'chip',
        means: `${row.code} is ${row.significand}, ${letter} is × ${factor}, in Ω`,
        implies: { minus: share, plus: share, unit: 'fraction' },
        use: row.letterFirst ? rarer(use, 'rare') : use,
        bodies,
        origins: [],
        source: use === 'usual' ? row.source : source,
        note: settle,
      }));
  });
};

const agrees = (tolerance: Tolerance | undefined, { implies }: ValuePiece): boolean =>
  tolerance === undefined ||
  implies === undefined ||
  Math.abs(tolerance.plus - implies.plus) < FLOAT_ERROR;

/** Every way of printing a resistance without its unit or the letter for it, from the tables. */
export const resistancesPrinted = (
  tables: MarkingTables,
  value: number,
  tolerance: Tolerance | undefined,
): ValuePiece[] =>
  [...inFigures(tables, value, tolerance), ...onChips(tables, value)].filter((piece) =>
    agrees(tolerance, piece),
  );
