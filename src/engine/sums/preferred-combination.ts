import { formatValue, type Unit } from '../quantities/index.ts';
import { combinePreferred, type Combined } from '../values/combine.ts';
import { isSeriesName, SERIES_NAMES, type SeriesName } from '../values/series.ts';
import { dot, type SumPlot } from './picture.ts';
import { choice, defineSum, noteIf, quantity, type Sum } from './sum.ts';

/** What differs between capacitors and resistors that are put together to a value. */
interface Kind {
  id: string;
  title: string;
  lead: string;
  unit: Unit;
  usual: string;
  lowest: number;
  highest: number;
  /** How parts are joined whose values add up, and whose reciprocals do. */
  words: Record<Combined['join'], string>;
  /** What each of several parts has to stand, in a sentence. */
  sharing: string;
  check: { what: string; inputs: Record<string, string>; expected: Record<string, number> };
}

const seriesOf = (name: string): SeriesName => (isSeriesName(name) ? name : 'E24');

interface Asked {
  value: number;
  series: string;
  most: string;
  within: number;
}

/** The way with the fewest parts that is close enough, or else the closest. */
const choose = ({ value, series, most, within }: Asked) => {
  const ways = combinePreferred(value, seriesOf(series), Number(most), 1);
  const enough = ways.find(({ error }) => Math.abs(error) <= within);
  const closest = ways.toSorted((a, b) => Math.abs(a.error) - Math.abs(b.error))[0];
  return { way: enough ?? closest, enough: enough !== undefined };
};

/** Longest list that can be shown at once without losing the best ones. */
const KEPT = 4;

/** Ways of each number of parts that are drawn. */
const DRAWN = 12;

/** How far each way is off, by the largest part that it takes. */
const candidates = ({ unit }: Kind, ways: readonly Combined[], within: number): SumPlot => {
  const counts = [...new Set(ways.map(({ values }) => values.length))];
  const [best] = ways.toSorted((a, b) => Math.abs(a.error) - Math.abs(b.error));
  const place = ({ values, error }: Combined) => dot(values[0] ?? 0, error);
  return {
    title: 'How far the ways are off, by their largest part',
    x: { label: 'Largest part', unit, scale: 'log' },
    y: { label: 'Off by', unit: 'fraction', scale: 'linear' },
    curves: counts.map((count) => ({
      label: count === 1 ? 'one part' : `${count} parts`,
      as: 'dots',
      points: ways.filter(({ values }) => values.length === count).map(place),
    })),
    points: best === undefined ? [] : [place(best)],
    limits: [
      { label: 'close enough', value: within },
      { label: 'close enough', value: -within },
    ],
  };
};

/** A sum that makes a value of preferred ones. */
export const combinationSum = (kind: Kind): Sum =>
  defineSum({
    id: kind.id,
    title: kind.title,
    lead: kind.lead,
    group: 'parts',
    inputs: {
      value: quantity({
        label: 'Value wanted',
        symbol: 'X',
        unit: kind.unit,
        usual: kind.usual,
        lowest: kind.lowest,
        highest: kind.highest,
      }),
      series: choice({
        label: 'Series at hand',
        usual: 'E12',
        options: SERIES_NAMES.slice(0, 5).map((id) => ({ id, name: id })),
      }),
      most: choice({
        label: 'Parts at most',
        usual: '2',
        options: ['1', '2', '3'].map((id) => ({ id, name: id })),
      }),
      within: quantity({
        label: 'Close enough',
        unit: 'fraction',
        bare: '%',
        usual: '1 %',
        lowest: 0,
        highest: 1,
      }),
    },
    outputs: {
      whole: { label: 'Closest', symbol: 'X_1', unit: kind.unit, headline: true },
      error: { label: 'Off by', symbol: 'e', unit: 'fraction' },
      parts: { label: 'Fewest parts that are close enough', unit: 'number' },
    },
    equations: ['e = X_1/X - 1'],
    at: (asked) => {
      const { way, enough } = choose(asked);
      return {
        whole: way?.whole,
        error: way?.error,
        parts: enough ? way?.values.length : undefined,
      };
    },
    answer: (asked, _facts, habit) => {
      const { way } = choose(asked);
      if (way === undefined) return 'There is no way to make it.';
      const { values, join, whole, error } = way;
      const parts = values.map((one) => formatValue(one, kind.unit, habit)).join(' and ');
      return `${parts} ${kind.words[join]}: ${formatValue(whole, kind.unit, habit)}, off by ${formatValue(error, 'fraction', habit)}.`;
    },
    tables: ({ value, series, most }, _facts, habit) => [
      {
        caption: `Ways to make ${formatValue(value, kind.unit, habit)}`,
        head: ['Parts', 'Joined', 'Comes to', 'Off by'],
        rows: combinePreferred(value, seriesOf(series), Number(most), KEPT).map(
          ({ values, join, whole, error }) => [
            values.map((one) => formatValue(one, kind.unit, habit)).join(' and '),
            kind.words[join],
            { value: whole, unit: kind.unit },
            { value: error, unit: 'fraction' },
          ],
        ),
      },
    ],
    pictures: ({ value, series, most, within }) => [
      candidates(kind, combinePreferred(value, seriesOf(series), Number(most), DRAWN), within),
    ],
    notes: ({ within }, { parts }) => [
      ...noteIf(
        parts === undefined,
        'limit',
        'Nothing of this series and number of parts is close enough.',
      ),
      ...noteIf(
        within < 0.01,
        'remark',
        'Closer than the tolerance of the parts there is only measuring and picking.',
      ),
      { kind: 'limit', text: kind.sharing },
    ],
    laborious: true,
    cautions: [],
    sources: ['identity'],
    checks: [{ ...kind.check, within: 0.0001, source: 'identity' }],
  });
