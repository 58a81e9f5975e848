import { mantissaValuesAt } from '../values/chip-values.ts';
import { militaryChipsAt } from '../values/military-chips.ts';
import { climateAt } from '../ratings/climate.ts';
import { datesAt } from '../beside/dates.ts';
import { figureValuesAt } from '../values/figure-values.ts';
import { letterValuesAt } from '../values/letter-values.ts';
import { mainsFiltersAt } from '../sections/mains-filters.ts';
import { otherShapesAt, otherUnitsAt } from '../beside/other-marks.ts';
import { powersAt } from '../ratings/powers.ts';
import { spansAt } from '../sections/ranges.ts';
import { ratedSectionsAt } from '../sections/rated-sections.ts';
import { chipResistorsAt, resistorFiguresAt } from '../values/resistor-values.ts';
import { wordsFoundAt, type Scan } from '../lexicon/scan.ts';
import { seriesResistorAt } from '../beside/series-resistor.ts';
import { sectionsAt } from '../sections/sections.ts';
import { singleCharactersAt } from '../values/single-characters.ts';
import { temperaturesAt } from '../ratings/temperature-tokens.ts';
import { isFigure } from '../text/text.ts';
import type { Token } from '../meanings/token.ts';
import { unitValuesAt } from '../values/unit-values.ts';
import { writtenVoltagesAt } from '../ratings/voltages.ts';
import { writtenTolerancesAt } from '../ratings/written-tolerances.ts';

/** Words of the tables that are taken by themselves. */
const wordsAt = (scan: Scan, at: number): Token[] =>
  wordsFoundAt(scan, at).flatMap((found): Token[] => {
    const token = found.item.take(scan, at, found);
    return token === undefined ? [] : [token];
  });

/** Whether a mark says by itself what its figures are, as `50 Hz` and `105°C` do. */
const saysItsFigures = (scan: Scan, { at, meaning, needs }: Token): boolean =>
  meaning.content.says === 'remark' && needs.length === 0 && isFigure(scan.marking.text.charAt(at));

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
    militaryChipsAt(scan, at),
    singleCharactersAt(scan, at),
    chipResistorsAt(scan, at),
    writtenTolerancesAt(scan, at),
    temperaturesAt(scan, at),
    climateAt(scan, at),
    seriesResistorAt(scan, at),
    datesAt(scan, at),
  );
};
