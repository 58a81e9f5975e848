import type { MarkingTables } from '../../schemas/markings.ts';
import { say } from '../markings/meanings/say.ts';
import type { Use } from '../markings/meanings/token.ts';
import { rarer } from '../markings/meanings/use.ts';
import { letterForms, type LetterForm } from './letter-forms.ts';
import { inUnit, within } from './numbers.ts';
import type { ValuePiece } from './way.ts';

type PointLetter = MarkingTables['pointLetters'][number];

/** Whether a letter behind figures would be taken for a tolerance; units of today are not. */
const looksLikeTolerance = (tables: MarkingTables, { letter, origins }: PointLetter): boolean =>
  tables.toleranceLetters.some(
    (row) =>
      row.letter === letter ||
      (row.letter.toLowerCase() === letter && !origins.includes('international')),
  );

/** The same for a resistance: four figures are a code, so that a letter behind is no unit. */
const resistanceAtEnd = (tables: MarkingTables, row: PointLetter, text: string): Use | undefined =>
  /^\d{4}/.test(text) && tables.resistorTolerances.some((one) => one.letter === row.letter)
    ? undefined
    : 'usual';

/**
 * How usual it is to set a letter behind the figures, where it may be taken for a tolerance;
 * nothing where it would surely be, as behind three figures. A decimal without a letter counts in a unit of its own, and
 * with a letter of the same unit nothing is lost: .1M is 0.1 µF either way.
 */
const useAtEnd = (tables: MarkingTables, row: PointLetter, text: string): Use | undefined => {
  if (row.quantity === 'resistance') return resistanceAtEnd(tables, row, text);
  if (!looksLikeTolerance(tables, row)) return 'usual';
  if (/^\d{3,}/.test(text)) return undefined;
  if (/[.,]/.test(text)) {
    const plainIn = tables.valueForms.filter((form) => form.shape === 'decimal');
    return plainIn.some((form) => form.unit_f === row.factor) ? 'other' : undefined;
  }
  return row.use === 'usual' ? 'other' : undefined;
};

const valuePiece = (tables: MarkingTables, row: PointLetter, form: LetterForm): ValuePiece[] => {
  const atEnd = form.atEnd ? useAtEnd(tables, row, form.text) : 'usual';
  if (atEnd === undefined) return [];
  const unit = say(row.factor, row.quantity === 'capacitance' ? 'F' : 'Ω').replace('1 ', '');
  return [
    {
      text: form.text,
      writing: 'letter',
      means: form.atEnd ? `${row.letter} for ${unit}` : `${row.letter} for ${unit} and the point`,
      use: [form.use, atEnd].reduce(rarer, row.use),
      bodies: row.bodies,
      origins: row.origins,
      source: row.source,
      note: row.quantity === 'capacitance' ? row.settle || row.note : '',
    },
  ];
};

/**
 * Values with a letter for the decimal point: `47n`, `4n7`, `n470`.
 *
 * @param common whether the value is of the usual series; some letters stand only beside those
 */
export const withLetter = (
  tables: MarkingTables,
  quantity: PointLetter['quantity'],
  value: number,
  common: boolean,
): ValuePiece[] => {
  const looks = new Set<string>();
  return tables.pointLetters
    .filter((row) => row.quantity === quantity)
    .filter((row) => common || row.precise)
    .filter(({ letter, factor, bodies, places }) => {
      // The micro sign and the Greek letter look the same on a part.
      const look = [letter.normalize('NFKC'), factor, bodies.join(), places.join()].join(' ');
      return !looks.has(look) && looks.add(look);
    })
    .map((row) => ({ row, number: inUnit(value, row.factor) }))
    .filter(({ row, number }) => within(number, row.number_min, row.number_max))
    .flatMap(({ row, number }) =>
      letterForms(row, number).flatMap((form) => valuePiece(tables, row, form)),
    );
};
