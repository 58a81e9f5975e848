export { coloursOf } from './colours-of.ts';
export { partInWords, sidesOf } from './describe.ts';
export { specOfRow } from './of-row.ts';
export { forms, type FormId } from './forms/index.ts';
export {
  partDrawing,
  partsDrawing,
  USUAL_SCALE,
  type DrawingOptions,
  type NamedPart,
} from './part-drawing.ts';
export type { Colour, ColourId, Colours, Finish, PartSpec, PolarityMark } from './spec.ts';
