export { coloursOf } from './colours-of.ts';
export { partInWords } from './describe.ts';
export { sidesInShort } from './side-words.ts';
export { drawingOfOldPart, drawingOfPart, type DrawnPart, type PartToDraw } from './of-part.ts';
export { drawingOfReading, type DrawnReading } from './of-reading.ts';
export { looksOfType, sizesOfLook, type DrawnLook, type DrawnSize } from './of-type.ts';
export { specOfRow } from './of-row.ts';
export { forms, isForm, type FormId } from './forms/index.ts';
export {
  partDrawing,
  partsDrawing,
  scaleFor,
  type DrawingOptions,
  type NamedPart,
} from './part-drawing.ts';
export { commonScale, USUAL_SCALE } from './scale.ts';
export type { Colour, ColourId, Colours, Finish, PartSpec, PolarityMark } from './spec.ts';
