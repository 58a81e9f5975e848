import { exactly } from '../quantities/range.ts';
import type { SumPlot } from './picture.ts';
import { spanOf, typicalOf, type GivenValues } from './span.ts';
import type { PlotSpec, Sum } from './sum.ts';

/** Points of a curve: smooth at the width of a page, and few enough to work out while one types. */
const POINTS = 60;
/** How far a logarithmic axis goes to either side of the visitor's point. */
const TO_EITHER_SIDE = 30;

const clamp = (value: number, low: number, high: number): number =>
  Math.min(Math.max(value, low), high);

/** Ends of the horizontal axis. */
const spanAround = (
  sum: Sum,
  spec: PlotSpec,
  given: GivenValues,
  facts: unknown,
): readonly [number, number] => {
  const values = typicalOf(given);
  const at = Number(values[spec.x]);
  const own = spec.span?.(values, facts);
  // A point beyond what is usual takes the axis with it.
  if (own !== undefined) {
    const isOnAxis = spec.scale === 'linear' || at > 0;
    return isOnAxis ? [Math.min(own[0], at), Math.max(own[1], at)] : own;
  }
  const input = sum.inputs[spec.x];
  if (input?.kind !== 'quantity') return [0, 1];
  const { lowest, highest } = input;
  return spec.scale === 'log'
    ? [clamp(at / TO_EITHER_SIDE, lowest, highest), clamp(at * TO_EITHER_SIDE, lowest, highest)]
    : [clamp(0, lowest, highest), clamp(at === 0 ? 1 : 2 * at, lowest, highest)];
};

const placesBetween = ([from, to]: readonly [number, number], scale: 'log' | 'linear'): number[] =>
  Array.from({ length: POINTS + 1 }, (_, index) => {
    const share = index / POINTS;
    return scale === 'log' ? from * (to / from) ** share : from + (to - from) * share;
  });

/** What the curve is drawn for: what was asked, save what the plot takes otherwise. */
const takenBy = ({ taken }: PlotSpec, asked: GivenValues): GivenValues =>
  taken === undefined
    ? asked
    : {
        ...asked,
        ...Object.fromEntries(
          Object.entries(taken(typicalOf(asked))).map(([key, value]) => [
            key,
            typeof value === 'number' ? exactly(value) : value,
          ]),
        ),
      };

/** Works out one plot of a sum; nothing where nothing is defined along its axis. */
export const plotOf = (
  sum: Sum,
  spec: PlotSpec,
  asked: GivenValues,
  facts: unknown,
): SumPlot | undefined => {
  const given = takenBy(spec, asked);
  const input = sum.inputs[spec.x];
  const first = sum.outputs[spec.y[0] ?? ''];
  if (input?.kind !== 'quantity' || first === undefined) return undefined;
  const at = (x: number) => spanOf(sum, { ...given, [spec.x]: { min: x, typ: x, max: x } }, facts);
  const places = placesBetween(spanAround(sum, spec, given, facts), spec.scale).map((x) => ({
    x,
    outputs: at(x),
  }));
  const drawable = (y: number): boolean =>
    Number.isFinite(y) && (spec.yScale === 'linear' || y > 0);
  const curves = spec.y
    .map((key) => ({
      label: sum.outputs[key]?.label ?? key,
      points: places.flatMap(({ x, outputs }) => {
        const range = outputs[key];
        if (range === undefined || ![range.min, range.typ, range.max].every(drawable)) return [];
        return [{ x, y: range.typ, low: range.min, high: range.max }];
      }),
    }))
    .filter(({ points }) => points.length > 0);
  if (curves.every(({ points }) => points.length < 2)) return undefined;
  const values = typicalOf(given);
  const x = Number(values[spec.x]);
  const own = at(x);
  return {
    title: spec.title,
    x: { label: input.label, unit: input.unit, scale: spec.scale },
    y: { label: first.label, unit: first.unit, scale: spec.yScale },
    curves,
    points: spec.y.flatMap((key) => {
      const range = own[key];
      const isOnAxis = spec.scale === 'linear' || x > 0;
      return range !== undefined && isOnAxis && drawable(range.typ) ? [{ x, y: range.typ }] : [];
    }),
    limits: (spec.limits?.(values, facts) ?? []).filter(({ value }) => drawable(value)),
  };
};
