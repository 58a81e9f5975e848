export { coloursOf } from './colours-of.ts';
export { partInWords, sidesOf } from './describe.ts';
export { forms, type FormId } from './forms/index.ts';
export {
  partDrawing,
  partsDrawing,
  USUAL_SCALE,
  type DrawingOptions,
  type NamedPart,
} from './part-drawing.ts';
export {
  FINISHES,
  POLARITY_MARKS,
  type Colour,
  type ColourId,
  type Colours,
  type Finish,
  type PartSpec,
  type PolarityMark,
} from './spec.ts';
