import { sidesInWords, type Shape } from '../engine/index.ts';
import type { Form } from './forms/form.ts';
import { forms } from './forms/index.ts';
import type { PartSpec } from './spec.ts';

const SHAPE_OF_ROUND = { upright: 'can', lying: 'tube', facing: 'disc' } as const;

/** The shape that a form has among those of tabulated bodies, as far as its sides go. */
export const shapeOf = ({ form }: Pick<PartSpec, 'form'>): Shape => {
  const { round }: Form = forms[form];
  return round === undefined ? 'box' : SHAPE_OF_ROUND[round];
};

/** Shapes of tabulated bodies that a form may have. */
const SHAPES_OF_ROUND = {
  upright: ['can', 'drop', 'chip'],
  lying: ['tube'],
  facing: ['disc'],
} as const satisfies Record<string, readonly Shape[]>;

/** Whether a form may have the sides of a tabulated body. */
export const mayHaveShape = ({ form }: Pick<PartSpec, 'form'>, shape: Shape): boolean => {
  const { round }: Form = forms[form];
  const shapes: readonly Shape[] =
    round === undefined ? ['box', 'drop', 'chip'] : SHAPES_OF_ROUND[round];
  return shapes.includes(shape);
};

/** Sides as the trade writes them, in millimetres: a diameter first where a part is round. */
export const sidesInShort = (spec: PartSpec): string => sidesInWords(shapeOf(spec), spec);
