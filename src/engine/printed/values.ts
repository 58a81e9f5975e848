import type { MarkingTables } from '../../schemas/markings.ts';
import { say } from '../markings/meanings/say.ts';
import type { Use } from '../markings/meanings/token.ts';
import { rarer } from '../markings/meanings/use.ts';
import { common } from '../common.ts';
import { withLetter } from './letter-values.ts';
import { noughts } from './noughts.ts';
import { CODE_FIGURES, inUnit, numberStyles, plainFigures, within } from './numbers.ts';
import { resistancesPrinted } from './resistor-values.ts';
import type { PartToPrint, ValuePiece } from './way.ts';

type Quantity = 'capacitance' | 'resistance';
type Form = MarkingTables['valueForms'][number];

/** Values with a unit: `0.047 µF`, `.05 MFD`, `47 000 pF`. */
const withUnit = (tables: MarkingTables, quantity: Quantity, value: number): ValuePiece[] =>
  tables.printedUnits
    .filter((row) => row.quantity === quantity)
    .map((row) => ({ row, number: inUnit(value, row.factor) }))
    .filter(({ row, number }) => within(number, row.number_min, row.number_max))
    .flatMap(({ row, number }) =>
      numberStyles(number, row.figures).map((figures) => ({
        text: `${figures} ${row.word}`,
        writing: 'unit' as const,
        means: say(value, quantity === 'capacitance' ? 'F' : 'Ω'),
        use: row.use,
        bodies: row.bodies,
        origins: row.origins,
        source: row.source,
        note: row.note,
      })),
    );

/** A form with a figure of the table of multipliers that goes with it, and the figures before it. */
const multiplied = (tables: MarkingTables, form: Form, value: number): ValuePiece[] =>
  tables.multipliers
    .filter((row) => row.scheme === 'figures')
    .flatMap((row): ValuePiece[] => {
      const bodies = common(form.bodies, row.bodies);
      const origins = common(form.origins, row.origins);
      const before = plainFigures(inUnit(value, form.unit_f * row.factor));
      const places = form.figures_max - 1;
      if (bodies === undefined || origins === undefined || before === undefined) return [];
      if (before.includes('.') || before.length > places) return [];
      // One figure takes a nought in front, as in 010 for 1 pF, which only the smallest parts show.
      const padded = before.length < places;
      if (padded && (row.factor !== 1 || before.length < places - 1)) return [];
      return [
        {
          text: before.padStart(places, '0') + row.figure,
          writing: form.figures_max > CODE_FIGURES ? 'four-figures' : 'figures',
          means: `${before}${noughts(row.factor)}, in ${say(form.unit_f, 'F').replace('1 ', '')}`,
          use: rarer(rarer(form.use, row.use), padded ? 'other' : 'usual'),
          bodies,
          origins,
          source: row.use === 'usual' ? form.source : row.source,
          note: form.note || form.settle,
        },
      ];
    });

/** Bodies on which the figures of a form that wants a voltage beside it count in another unit without. */
const otherwiseAlone = (tables: MarkingTables, form: Form): string[] =>
  form.volts_beside
    ? tables.valueForms
        .filter(({ shape, unit_f }) => shape === form.shape && unit_f !== form.unit_f)
        .filter(
          ({ figures_min, figures_max }) =>
            figures_min <= form.figures_max && figures_max >= form.figures_min,
        )
        .flatMap(({ bodies }) => bodies)
    : [];

const asItStands = (tables: MarkingTables, form: Form, value: number): ValuePiece[] => {
  const plain = plainFigures(inUnit(value, form.unit_f));
  const decimal = form.shape === 'decimal';
  if (plain === undefined || plain.includes('.') !== decimal) return [];
  return numberStyles(Number(plain), decimal ? ['bare-point', 'plain', 'comma'] : ['plain'])
    .filter((text) => {
      const figures = text.replace(/\D/g, '').length;
      return figures >= form.figures_min && figures <= form.figures_max;
    })
    .map((text) => ({
      text,
      writing: decimal ? 'decimal' : 'plain',
      means: `${say(form.unit_f, 'F').replace('1 ', '')} as it stands`,
      // A comma is met on the continent of Europe; only there is it usual.
      use: text.includes(',') ? rarer(form.use, 'other') : form.use,
      bodies: form.bodies,
      origins: form.origins,
      source: form.source,
      note: form.settle || form.note,
      otherwiseAlone: otherwiseAlone(tables, form),
    }));
};

/** Parts that a form is not found on have a lower voltage than its row says. */
const atVoltage = (form: Form, use: Use, volts: number | undefined): Use =>
  volts !== undefined && volts < form.volts_min ? 'rare' : use;

/** Values in figures alone: `473`, `4702`, `470`, `.047`. */
const inFigures = (tables: MarkingTables, value: number, volts: number | undefined): ValuePiece[] =>
  tables.valueForms
    // What has two ends is printed of no single value, and what goes with a style of none without it.
    .filter(({ shape }) => !['behind-style', 'range', 'span', 'filter'].includes(shape))
    .filter((form) => within(value, form.value_min, form.value_max))
    .flatMap((form) =>
      (form.shape === 'multiplier' ? multiplied : asItStands)(tables, form, value).map((piece) => ({
        ...piece,
        use: atVoltage(form, piece.use, volts),
      })),
    );

/** Values of small chips, a letter for two figures and a figure for the noughts: `S4`. */
const onChips = (tables: MarkingTables, value: number): ValuePiece[] =>
  tables.mantissaLetters.flatMap((row) =>
    tables.multipliers
      .filter((digit) => digit.scheme === 'letter-figure')
      .filter((digit) => inUnit(value, row.value * digit.factor * 1e-12) === 1)
      .map((digit) => ({
        text: row.letter + digit.figure,
        writing: 'chip' as const,
        means: `${row.letter} is ${row.value}${noughts(digit.factor)}, in pF`,
        use: row.use,
        bodies: row.bodies,
        origins: row.origins,
        source: row.source,
        note: '',
      })),
  );

/**
 * Ways that are left for a value outside the usual series. Its parts are of close tolerance and
 * are marked with four figures or with a unit; in fewer figures it would be taken for another.
 */
const ofUncommon = (piece: ValuePiece): ValuePiece[] => {
  if (piece.writing === 'plain') return [];
  if (piece.writing === 'four-figures') return [piece];
  return piece.use === 'usual' ? [{ ...piece, use: 'other' }] : [];
};

/**
 * Every way of printing the value of a part, from the tables that markings are read with.
 *
 * @param usual whether the value is of the usual series
 */
export const valuesPrinted = (
  tables: MarkingTables,
  { capacitance, resistance = NaN, ratedVoltage, tolerance }: PartToPrint,
  usual: boolean,
): ValuePiece[] => {
  if (capacitance === undefined)
    return [
      ...resistancesPrinted(tables, resistance, tolerance),
      ...withLetter(tables, 'resistance', resistance, usual),
      ...withUnit(tables, 'resistance', resistance),
    ];
  const figures = inFigures(tables, capacitance, ratedVoltage);
  return [
    ...(usual ? figures : figures.flatMap(ofUncommon)),
    ...withLetter(tables, 'capacitance', capacitance, usual),
    ...withUnit(tables, 'capacitance', capacitance),
    ...onChips(tables, capacitance),
  ];
};
