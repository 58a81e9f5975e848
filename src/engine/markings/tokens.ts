import { mantissaValuesAt } from './chip-values.ts';
import { climateAt } from './climate.ts';
import { datesAt } from './dates.ts';
import { figureValuesAt } from './figure-values.ts';
import { letterValuesAt } from './letter-values.ts';
import { mainsFiltersAt } from './mains-filters.ts';
import { otherShapesAt, otherUnitsAt } from './other-marks.ts';
import { powersAt } from './powers.ts';
import { spansAt } from './ranges.ts';
import { ratedSectionsAt } from './rated-sections.ts';
import { chipResistorsAt, resistorFiguresAt } from './resistor-values.ts';
import { wordsFoundAt, type Scan } from './scan.ts';
import { sectionsAt } from './sections.ts';
import { singleCharactersAt } from './single-characters.ts';
import { temperaturesAt } from './temperature-tokens.ts';
import { isFigure } from './text.ts';
import type { Token } from './token.ts';
import { unitValuesAt } from './unit-values.ts';
import { writtenVoltagesAt } from './voltages.ts';
import { writtenTolerancesAt } from './written-tolerances.ts';

/** Words of the tables that are taken by themselves. */
const wordsAt = (scan: Scan, at: number): Token[] =>
  wordsFoundAt(scan, at).flatMap((found): Token[] => {
    const token = found.item.take(scan, at, found);
    return token === undefined ? [] : [token];
  });

/** Whether a mark says by itself what its figures are, as `50 Hz` and `105°C` do. */
const saysItsFigures = (scan: Scan, { at, meaning }: Token): boolean =>
  meaning.content.says === 'remark' && isFigure(scan.marking.text.charAt(at));

/** Every way to take the marking from an index on. */
export const tokensAt = (scan: Scan, at: number): Token[] => {
  const words = wordsAt(scan, at);
  const said = words.some((token) => saysItsFigures(scan, token));
  const withUnit = unitValuesAt(scan, at).concat(
    writtenVoltagesAt(scan, at),
    said ? [] : otherUnitsAt(scan, at),
  );
  const powers = powersAt(scan, at);
  const figuresTaken = said || withUnit.concat(powers).some((token) => token.withUsualUnit);
  const withoutUnit = figuresTaken
    ? []
    : figureValuesAt(scan, at).concat(resistorFiguresAt(scan, at), letterValuesAt(scan, at));
  return withUnit.concat(
    withoutUnit,
    words,
    sectionsAt(scan, at),
    spansAt(scan, at),
    ratedSectionsAt(scan, at),
    mainsFiltersAt(scan, at),
    powers,
    otherShapesAt(scan, at),
    mantissaValuesAt(scan, at),
    singleCharactersAt(scan, at),
    chipResistorsAt(scan, at),
    writtenTolerancesAt(scan, at),
    temperaturesAt(scan, at),
    climateAt(scan, at),
    datesAt(scan, at),
  );
};
