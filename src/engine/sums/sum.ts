import type { Catalogue, SourceId } from '../catalogue.ts';
import type { Habit, Range, Unit } from '../quantities/index.ts';
import type { PlotLimit, SumPlot } from './picture.ts';

/** A number that a sum asks for. */
export interface QuantityInput {
  kind: 'quantity';
  label: string;
  /** As the equations write it: `R`, `V_DC`. */
  symbol?: string;
  /** SI */
  unit: Unit;
  /** Unit of a number without one, as people would write it. */
  bare?: string;
  /** What stands in the field at first, as people write it; nothing for an optional one. */
  usual: string;
  /** SI */
  lowest: number;
  /** SI */
  highest: number;
  hint?: string;
  optional: boolean;
}

export interface Option {
  id: string;
  name: string;
}

/** A choice among few. */
export interface ChoiceInput<Facts = unknown> {
  kind: 'choice';
  label: string;
  usual: string;
  options: readonly Option[] | ((facts: Facts) => readonly Option[]);
  hint?: string;
}

export type Input<Facts = unknown> = QuantityInput | ChoiceInput<Facts>;

/** A number that a sum gives. */
export interface Output {
  label: string;
  symbol?: string;
  /** SI */
  unit: Unit;
  /** The answer itself; the others are steps towards it or go with it. */
  headline?: true;
  /** Significant digits, where the usual three would hide what was read. */
  digits?: number;
  /** Shown in the working alone. */
  step?: true;
}

/** What a sum says beside its numbers. */
export interface SumNote {
  /** caution: something can be hurt; limit: a rating or the validity of the equation. */
  kind: 'caution' | 'limit' | 'remark';
  text: string;
  source?: SourceId;
  /** It holds not for the typical values, but somewhere in the ranges that were given. */
  atEnds?: true;
}

/** A note that stands beside a result where something holds; none otherwise. */
export const noteIf = (
  holds: boolean,
  kind: SumNote['kind'],
  text: string,
  source?: SourceId,
): readonly SumNote[] =>
  holds ? [{ kind, text, ...(source === undefined ? {} : { source }) }] : [];

/** A cell is words, or a number with its unit. */
export type SumCell = string | { value: Range | number; unit: Unit };

/** A result that is a table rather than a number. */
export interface SumTable {
  caption: string;
  head: readonly string[];
  rows: readonly (readonly SumCell[])[];
}

/** Outputs drawn over one input, with the visitor's own point on them. */
export interface PlotSpec<Values = InputValues, Facts = unknown> {
  title: string;
  /** Key of the input along the horizontal axis. */
  x: string;
  scale: 'log' | 'linear';
  /** Ends of the horizontal axis, SI, where they are not decided by the point: three decades about it, or zero to twice it. */
  span?: (values: Values, facts: Facts) => readonly [number, number];
  /** Inputs as the curve takes them, where some stand for the one along its axis. */
  taken?: (values: Values) => InputValues;
  /** Keys of the outputs that are drawn, all of one unit. */
  y: readonly string[];
  yScale: 'log' | 'linear';
  limits?: (values: Values, facts: Facts) => readonly PlotLimit[];
}

/** A worked example with a printed answer, or one worked by hand. */
export interface SumCheck {
  what: string;
  /** As people write them; what is left out is usual. */
  inputs: Readonly<Record<string, string>>;
  /** Typical values by output, SI. */
  expected: Readonly<Record<string, number>>;
  /** Largest difference, as a fraction. */
  within: number;
  source: SourceId;
  locator?: string;
}

/** Values that a sum is worked out at: a point for each input; nothing for an optional one left out. */
export type InputValues = Readonly<Record<string, number | string | undefined>>;

/** One calculation of the bench: its inputs, its equation, how it is worked out and drawn. */
export interface Sum {
  /** Address of its page below /sums/. */
  id: string;
  title: string;
  /** One sentence: what it answers. */
  lead: string;
  /** Under which heading it is listed. */
  group: SumGroup;
  inputs: Readonly<Record<string, Input>>;
  outputs: Readonly<Record<string, Output>>;
  /** In the plain text that equations of the tables are written in. */
  equations: readonly string[];
  /** Those that hold for other choices than the usual ones, where they differ. */
  equationsFor?: (values: InputValues) => readonly string[];
  /** What it needs of the catalogue, as plain data; fetched by its page. */
  facts?: (catalogue: Catalogue) => unknown;
  /** All outputs at one point; nothing where one is not defined there. Pure. */
  at: (values: InputValues, facts: unknown) => Readonly<Record<string, number | undefined>>;
  /** The answer in words, where the headline alone says too little. */
  answer?: (values: InputValues, facts: unknown, habit?: Habit) => string;
  /** Whether that is one of a few sentences without numbers, so that those at the ends are told too. */
  judges?: true;
  tables?: (values: InputValues, facts: unknown, habit?: Habit) => readonly SumTable[];
  notes?: (
    values: InputValues,
    outputs: Readonly<Record<string, number | undefined>>,
    facts: unknown,
  ) => readonly SumNote[];
  plots: readonly PlotSpec[];
  /** What is drawn besides, where it is not an output over an input. */
  pictures?: (values: InputValues, facts: unknown) => readonly SumPlot[];
  /** Outputs whose spread is drawn by chance, where it is not that of the headline alone. */
  drawn?: readonly string[];
  /** Left undrawn by chance where it takes too long to be worked out thousands of times. */
  laborious?: true;
  /** Ids of cautions.csv that always stand on its page. */
  cautions: readonly string[];
  sources: readonly SourceId[];
  checks: readonly SumCheck[];
}

/** Headings of the list of sums, in their order. */
export const sumGroups = {
  rating: 'Ratings and life',
  dielectric: 'What the dielectric does',
  hold: 'Holding a voltage',
  timing: 'Timing and filters',
  audio: 'Signal path',
  supply: 'Supplies',
  mains: 'Mains and stored charge',
  parts: 'Putting values together',
  resistor: 'Resistors and trimmers',
} as const;
export type SumGroup = keyof typeof sumGroups;

type ValueOf<I> = I extends { kind: 'choice' }
  ? string
  : I extends { optional: true }
    ? number | undefined
    : number;

type ValuesOf<Inputs> = { readonly [Key in keyof Inputs]: ValueOf<Inputs[Key]> };

interface Declaration<Inputs, Outputs, Facts> extends Omit<
  Sum,
  | 'inputs'
  | 'outputs'
  | 'facts'
  | 'at'
  | 'equationsFor'
  | 'answer'
  | 'tables'
  | 'notes'
  | 'plots'
  | 'pictures'
> {
  inputs: Inputs;
  outputs: Outputs;
  at: (
    values: ValuesOf<Inputs>,
    facts: Facts,
  ) => { readonly [Key in keyof Outputs]: number | undefined };
  equationsFor?: (values: ValuesOf<Inputs>) => readonly string[];
  answer?: (values: ValuesOf<Inputs>, facts: Facts, habit?: Habit) => string;
  tables?: (values: ValuesOf<Inputs>, facts: Facts, habit?: Habit) => readonly SumTable[];
  notes?: (
    values: ValuesOf<Inputs>,
    outputs: { readonly [Key in keyof Outputs]: number | undefined },
    facts: Facts,
  ) => readonly SumNote[];
  pictures?: (values: ValuesOf<Inputs>, facts: Facts) => readonly SumPlot[];
  plots?: readonly (Omit<PlotSpec<ValuesOf<Inputs>, Facts>, 'x' | 'y'> & {
    x: keyof Inputs & string;
    y: readonly (keyof Outputs & string)[];
  })[];
}

/** A quantity to ask for. */
export const quantity = (
  input: Omit<QuantityInput, 'kind' | 'optional'>,
): QuantityInput & { optional: false } => ({ ...input, kind: 'quantity', optional: false });

/** A quantity that may be left out. */
export const optionalQuantity = (
  input: Omit<QuantityInput, 'kind' | 'optional' | 'usual'>,
): QuantityInput & { optional: true } => ({
  ...input,
  kind: 'quantity',
  usual: '',
  optional: true,
});

/** A choice to ask for. */
export const choice = <Facts = unknown>(
  input: Omit<ChoiceInput<Facts>, 'kind'>,
): ChoiceInput<Facts> => ({ kind: 'choice', ...input });

/**
 * Declares a sum, with its inputs and outputs known by name to its own functions. What reads the
 * inputs fills in every one that is not optional, so that those functions may rely on them.
 */
export const defineSum = <
  const Inputs extends Readonly<Record<string, Input<undefined>>>,
  const Outputs extends Readonly<Record<string, Output>>,
>(
  declaration: Declaration<Inputs, Outputs, undefined>,
): Sum => ({ plots: [], ...declaration }) as unknown as Sum;

/** The same for a sum that needs something of the catalogue. */
export const withFacts =
  <Facts>(facts: (catalogue: Catalogue) => Facts) =>
  <
    const Inputs extends Readonly<Record<string, Input<Facts>>>,
    const Outputs extends Readonly<Record<string, Output>>,
  >(
    declaration: Declaration<Inputs, Outputs, Facts>,
  ): Sum =>
    ({ plots: [], ...declaration, facts }) as unknown as Sum;
