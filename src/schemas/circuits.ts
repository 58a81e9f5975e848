import { z } from 'zod';
import { id, list, number, optionalText, positive, text } from './cells.ts';

/** How a symbol is drawn, where that is not the usual way. */
export const HOW = ['other-side', 'polar', 'zener', 'pnp', 'inverts', 'minus-above'] as const;

/** What a symbol of a circuit takes. */
interface SymbolShape {
  /** Fewest and most places that it is drawn by. */
  places: readonly [least: number, most: number];
  /** Whether a name may stand beside it or in it. */
  named: boolean;
  how: readonly (typeof HOW)[number][];
}

const MANY = 12;
const at = (named = false, ...how: SymbolShape['how']): SymbolShape => ({
  places: [1, 1],
  named,
  how,
});
const between = (named = false, ...how: SymbolShape['how']): SymbolShape => ({
  places: [2, 2],
  named,
  how,
});
const through = (least: number): SymbolShape => ({ places: [least, MANY], named: false, how: [] });

/**
 * The symbols that circuits are drawn with. Those that begin with `the-` are the part in question.
 * A control has its slider as its third place; a box has two opposite corners.
 */
export const SYMBOLS = {
  wire: through(2),
  linked: through(2),
  joints: through(1),
  ground: through(1),
  chassis: at(),
  input: between(true),
  output: between(true),
  supply: at(true),
  tap: at(true, 'other-side'),
  box: between(true),
  words: at(true),
  resistor: between(true, 'other-side'),
  'variable-resistor': between(true, 'other-side'),
  potentiometer: { places: [3, 3], named: true, how: ['other-side'] },
  capacitor: between(true, 'other-side', 'polar'),
  coil: between(true, 'other-side'),
  core: between(),
  diode: between(true, 'other-side', 'zener'),
  'open-switch': between(true, 'other-side'),
  fuse: between(),
  crystal: between(),
  'current-source': between(true, 'other-side'),
  lamp: between(true, 'other-side'),
  meter: between(true, 'other-side'),
  motor: at(),
  loudspeaker: at(true),
  'op-amp': at(true, 'minus-above'),
  follower: at(),
  amplifier: at(false, 'inverts'),
  transistor: at(false, 'pnp'),
  triode: at(),
  tetrode: at(),
  'the-capacitor': between(true, 'other-side', 'polar'),
  'the-resistor': between(true, 'other-side'),
  'the-trimmer': { places: [3, 3], named: true, how: ['other-side'] },
  'the-rheostat': between(true, 'other-side'),
} as const satisfies Record<string, SymbolShape>;

export type CircuitSymbol = keyof typeof SYMBOLS;

const symbols = Object.keys(SYMBOLS) as [CircuitSymbol, ...CircuitSymbol[]];

/** Places on the grid joined by `;`, each as `x y` from the upper left corner. */
const places = list
  .refine(
    (items) =>
      items.length > 0 &&
      items.every((item) => item.split(' ').every((part) => number.safeParse(part).success)) &&
      items.every((item) => item.split(' ').length === 2),
    'expected places such as 3 5;9 5',
  )
  .transform((items) =>
    items.map((item): readonly [x: number, y: number] => {
      const [x, y] = item.split(' ').map(Number);
      return [x ?? NaN, y ?? NaN];
    }),
  );

/** The circuit beside the summary of a position. */
export const circuitRow = z.strictObject({
  position: id.describe('id in positions.csv or kinds/positions.csv'),
  width: positive.describe('steps of the grid across'),
  height: positive.describe('steps of the grid down'),
  words: text.describe('what the circuit shows, for those who do not see it'),
});
export type CircuitRow = z.output<typeof circuitRow>;

/** One symbol of a circuit. */
export const circuitSymbolRow = z.strictObject({
  position: id.describe('id in circuits.csv'),
  symbol: z.enum(symbols).describe('the-…: the part in question'),
  places: places.describe(
    'places on the grid, x y from the upper left corner: ends, corners of a box, the slider of a control last',
  ),
  name: optionalText.describe(
    'beside or in the symbol; what follows _ stands lower, / begins a new line in a box',
  ),
  how: list
    .transform((items) => items as (typeof HOW)[number][])
    .refine(
      (items) => items.every((item) => HOW.includes(item)),
      `expected some of ${HOW.join(', ')}`,
    )
    .describe('other-side: the name on the other side; polar: the first end is the positive one'),
});
export type CircuitSymbolRow = z.output<typeof circuitSymbolRow>;
