import type { SourceId, TypeId } from '../../catalogue.ts';
import type { Tolerance } from '../meanings/reading.ts';
import type { Scan } from '../lexicon/scan.ts';
import { seriesWeight, type Written } from '../lexicon/series-places.ts';
import { say } from '../meanings/say.ts';
import { madeUp, type Assumed } from '../text/text.ts';
import type { Need, Token } from '../meanings/token.ts';
import { weights } from '../meanings/weights.ts';

export type Quantity = 'capacitance' | 'resistance';

/** A product without the noise of binary fractions. */
export const times = (first: number, second: number, third = 1): number =>
  Number((first * second * third).toPrecision(12));

const sayIn = (quantity: Quantity, value: number): string =>
  say(value, quantity === 'capacitance' ? 'F' : 'Ω');

/** What a value token is made from; values in F or ohm. */
export interface Value {
  at: number;
  end: number;
  quantity: Quantity;
  value: number;
  figures: string;
  /** Name of the unit, where one is written. */
  unit?: string;
  /** What is said behind the value, in brackets. */
  remark?: string;
  weight: number;
  needs?: readonly Need[];
  bodies: number;
  origins: number;
  source: SourceId;
  settle: string;
  voltsFrom?: number;
  countsZeros?: boolean | undefined;
  ofTypes?: readonly TypeId[];
  implies?: Tolerance;
  voltsBeside?: boolean;
  strokeVoltsMax?: number | undefined;
  toleranceFrom?: number;
  toleranceUpTo?: number;
  tellsKind?: boolean;
  underlinedPercent?: number;
  assumed: readonly Assumed[];
}

const NO_NEEDS: readonly Need[] = [];

/** A token that fills the place of the value. */
export const valueToken = (made: Value): Token => {
  const { quantity, value, figures, unit, remark = unit } = made;
  return {
    at: made.at,
    end: made.end,
    meaning: {
      slot: 'value',
      content: { says: quantity, value, figures, withUnit: unit !== undefined },
      bodies: made.bodies,
      origins: made.origins,
      types: [],
      means: () =>
        remark === undefined ? sayIn(quantity, value) : `${sayIn(quantity, value)} (${remark})`,
      source: made.source,
      settle: made.settle,
      voltsFrom: made.voltsFrom,
      countsZeros: made.countsZeros,
      ofTypes: made.ofTypes,
      implies: made.implies,
      voltsBeside: made.voltsBeside,
      strokeVoltsMax: made.strokeVoltsMax,
      toleranceFrom: made.toleranceFrom,
      toleranceUpTo: made.toleranceUpTo,
      tellsKind: made.tellsKind,
      underlinedPercent: made.underlinedPercent,
    },
    weight: made.weight,
    needs: made.needs ?? NO_NEEDS,
    assumed: made.assumed,
  };
};

/** Weight of a value by its figures, or nothing for made-up figures that no series has. */
export const figuresWeight = (
  { lexicon }: Scan,
  figures: string,
  written: Written,
  assumed: readonly Assumed[],
): number | undefined => {
  const weight = seriesWeight(lexicon.places, figures, written);
  if (madeUp(assumed) === 0) return weight;
  const place = lexicon.places.get(figures);
  return place === undefined || weight < weights.oldValue
    ? undefined
    : weight + weights.completedTo[place];
};
