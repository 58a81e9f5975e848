import { exactly } from '../../quantities/range.ts';
import { given } from '../../given.ts';
import type { Parse } from '../ways/parse.ts';
import type { Section, Tolerance } from '../meanings/reading.ts';
import { withTolerance } from './spread.ts';
import type { Content } from '../meanings/token.ts';

const isValue = ({ says }: Content): boolean => says === 'capacitance' || says === 'sections';

/** Capacitances that a token gives, F, with the signs that stand before them. */
const valuesOf = (
  content: Content,
): { value: number; symbol?: string | undefined; volts?: number | undefined }[] => {
  if (content.says === 'sections')
    return content.values.map((value, index) => ({
      value,
      symbol: content.symbols[index],
      volts: content.volts?.[index],
    }));
  return content.says === 'capacitance' ? [{ value: content.value }] : [];
};

/** Whether a marking has several sections, or several values, which then are those of sections. */
export const hasSections = ({ value, taken }: Parse): boolean =>
  value?.meaning.content.says === 'sections' ||
  taken.some((token) => token !== value && isValue(token.meaning.content));

/**
 * The sections of a can in the order of the marking: a voltage is that of all values before it that
 * have none, and a sign that of the value behind it, or of that before it where values come first.
 */
export const sectionsOf = ({ taken }: Parse, tolerance: Tolerance | undefined): Section[] => {
  const contents = taken.map(({ meaning }) => meaning.content);
  const signFirst =
    contents.findIndex(({ says }) => says === 'symbol') < contents.findIndex(isValue);
  const sections: Section[] = [];
  let sign: string | undefined;
  for (const content of contents) {
    for (const { value, symbol, volts } of valuesOf(content)) {
      sections.push({
        capacitance: withTolerance(value, tolerance),
        ...given('symbol', symbol ?? sign),
        ...given('ratedVoltage', volts === undefined ? volts : exactly(volts)),
      });
      sign = undefined;
    }
    const last = sections.at(-1);
    if (content.says === 'symbol') {
      if (signFirst || last === undefined) sign = content.symbol;
      else last.symbol ??= content.symbol;
    }
    if (content.says === 'voltage' && content.rated)
      for (const section of sections) section.ratedVoltage ??= content.volts;
  }
  return sections;
};
