import { BEYOND_TELLING } from '../../equations/beyond-telling.ts';
import { formatQuantity, formatValue, type Unit } from '../../quantities/index.ts';
import { mapFalling } from '../../quantities/range.ts';
import { byFigures, factAt, type DeviceModel } from '../model.ts';

/** A number of the circuit as a share of what the part is rated for, or needs at the least. */
export const shareOf = (
  property: string,
  condition: string,
  unit: Unit,
  at?: string,
): DeviceModel =>
  byFigures({
    properties: [property],
    ...(at === undefined ? {} : { at }),
    value: (numbers) =>
      mapFalling(factAt(numbers, 0), (rating) =>
        rating > 0 ? Math.min(BEYOND_TELLING, numbers.of(condition) / rating) : BEYOND_TELLING,
      ),
    working: (numbers) => {
      const asked = factAt(numbers, 0);
      const share = asked.max > 0 ? `of ${formatQuantity(asked, unit)}` : 'where none is needed';
      return `${formatValue(numbers.of(condition), unit)} ${share}`;
    },
  });

/** A figure of the part itself. */
export const figureOf = (property: string, unit: Unit, at?: string): DeviceModel =>
  byFigures({
    properties: [property],
    ...(at === undefined ? {} : { at }),
    value: (numbers) => factAt(numbers, 0),
    working: (numbers) =>
      formatQuantity(factAt(numbers, 0), unit) +
      (at === undefined ? '' : ` at ${formatValue(numbers.of(at), 'A')}`),
  });
