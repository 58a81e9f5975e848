import { given } from '../../given.ts';
import { significant, type WrittenNumber } from '../lexicon/numbers.ts';
import { writtenAt, type Scan } from '../lexicon/scan.ts';
import type { Need, Token } from '../meanings/token.ts';
import { rarer } from '../meanings/use.ts';
import type { ValueForm } from '../lexicon/value-rows.ts';
import { isInNumber } from '../text/text.ts';
import { figuresWeight, times, valueToken } from './value-token.ts';
import { weightOf, weights } from '../meanings/weights.ts';

/** What it costs that parts were marked so in other years only than the part may be from. */
const eraCost = ({ lexicon: { hints } }: Scan, form: ValueForm): number => {
  const { era } = hints;
  if (era === undefined) return 0;
  const { years_from: from = -Infinity, years_to: to = Infinity } = form;
  return era.to < from || era.from > to ? weights.eraDiffers : 0;
};

const inSpan = (form: { value_min: number; value_max: number }, value: number): boolean =>
  value >= form.value_min * (1 - 1e-9) && value <= form.value_max * (1 + 1e-9);

const hasCount = (form: ValueForm, digits: string): boolean =>
  digits.length >= form.figures_min && digits.length <= form.figures_max;

/**
 * A stroke and the last figures; `50/50 300V` and `20/20/20 450` have sections before their volts. A dash
 * does for it before three figures, as in `50-350`; with fewer it stands between the ends of a trimmer.
 */
const STROKE_AND_VOLTS =
  /^(?: ?\/ ?\d+(?!\d| ?\/ ?\d| +\d{2,3}(?!\d))|-[1-9]\d{2}(?![\d.,]|[/+-]\d| +\d{2,3}(?!\d)))/u;

/** Whether a stroke sets figures apart from others behind it, as in `10/63`; those of sections are joined. */
const isBeforeStroke = ({ marking: { text } }: Scan, at: number, end: number): boolean =>
  STROKE_AND_VOLTS.test(text.slice(end)) && !/[+/x×*-] ?$/iu.test(text.slice(0, at));

/** What figures that count noughts must have before them, where a style has its own unit for them. */
const NEEDS: Readonly<Partial<Record<ValueForm['shape'], readonly Need[]>>> = {
  'behind-style': ['touching-style'],
};

/** The meanings of figures whose last one counts the noughts. */
const multiplied = (scan: Scan, at: number, number: WrittenNumber): Token[] => {
  const { values } = scan.lexicon;
  const { multiplier, 'behind-style': behindStyle } = values.forms;
  const { digits, end, assumed, cost } = number;
  const rows = values.multipliers.get(digits.at(-1) ?? '') ?? [];
  const mantissa = digits.slice(0, -1);
  const figures = significant(mantissa);
  const added = figuresWeight(scan, figures, digits.length > 3 ? 'precise' : 'bare', assumed);
  if (added === undefined) return [];
  return (isInNumber(scan.marking, at) ? [...multiplier, ...behindStyle] : multiplier)
    .filter((form) => hasCount(form, digits))
    .flatMap((form) =>
      rows.flatMap((row): Token[] => {
        const bodies = form.bodyBits & row.bodyBits;
        const origins = form.originBits & row.originBits;
        if (bodies === 0 || origins === 0) return [];
        const value = times(Number(mantissa), row.factor, form.unit_f);
        if (!inSpan(form, value)) return [];
        return [
          valueToken({
            at,
            end,
            quantity: 'capacitance',
            value,
            figures,
            weight:
              weightOf(weights.value, rarer(form.use, row.use)) +
              added +
              cost +
              eraCost(scan, form),
            bodies,
            origins,
            source: row.use === 'usual' ? form.source : row.source,
            settle: form.settle,
            voltsFrom: form.volts_min,
            countsZeros: true,
            ofTypes: form.types,
            ...given('needs', NEEDS[form.shape]),
            assumed,
          }),
        ];
      }),
    );
};

/** The meanings of figures that are to be taken as they stand. */
const asWritten = (scan: Scan, at: number, number: WrittenNumber): Token[] => {
  if (number.padded) return [];
  const { figures, assumed } = number;
  const added = figuresWeight(scan, figures, 'bare', assumed);
  if (added === undefined) return [];
  return scan.lexicon.values.forms[number.decimal ? 'decimal' : 'plain']
    .filter((form) => hasCount(form, number.digits))
    .flatMap((form): Token[] => {
      const value = times(number.value, form.unit_f);
      if (!inSpan(form, value)) return [];
      return [
        valueToken({
          at,
          end: number.end,
          quantity: 'capacitance',
          value,
          figures,
          weight:
            weightOf(weights.value, form.use) +
            added +
            number.cost +
            eraCost(scan, form) +
            (isInNumber(scan.marking, at) ? weights.unitInNumber : 0),
          bodies: form.bodyBits,
          origins: form.originBits,
          source: form.source,
          settle: form.settle,
          voltsFrom: form.volts_min,
          voltsBeside: form.volts_beside,
          ...(form.percent_min === undefined ? {} : { toleranceFrom: form.percent_min / 100 }),
          strokeVoltsMax: isBeforeStroke(scan, at, number.end) ? form.stroke_volts_max : undefined,
          ofTypes: form.types,
          assumed,
        }),
      ];
    });
};

/** Values written in figures alone. */
export const figureValuesAt = (scan: Scan, at: number): Token[] =>
  writtenAt(scan, at)
    .filter((number) => number.figures !== '')
    .flatMap((number) => [
      ...(number.decimal || number.grouped ? [] : multiplied(scan, at, number)),
      ...asWritten(scan, at, number),
    ]);
