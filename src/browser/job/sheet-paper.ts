import { drawingFrame, drawingKey, sheetTable, stretchesOf } from '../../job-view/sheet-table.ts';
import type { SheetStep } from '../../job/index.ts';
import { toDom } from '../../markup/to-dom.ts';
import { drawSketch } from './sketches.ts';

/** The first step of each look that is drawn, and its number. */
const drawingsOf = (
  steps: readonly SheetStep[],
): { numbers: ReadonlyMap<string, number>; frames: HTMLElement[] } => {
  const numbers = new Map<string, number>();
  const frames: HTMLElement[] = [];
  const seen = new Set<string>();
  for (const step of steps) {
    const key = drawingKey(step);
    if (key === undefined || seen.has(key)) continue;
    seen.add(key);
    const number = frames.length + 1;
    const frame = toDom(drawingFrame(step, number));
    if (!(frame instanceof HTMLElement)) throw new TypeError('a frame is an element');
    drawSketch(frame, step);
    // Of what nothing says how it looks there is no drawing to lead to.
    if (frame.querySelector('svg') === null) continue;
    numbers.set(key, number);
    frames.push(frame);
  }
  return { numbers, frames };
};

/**
 * The parts of a large board for paper: drawings of each look, then a row for each part, and whole
 * what has more to it than a row holds.
 */
export const stepsOnPaper = (
  steps: readonly SheetStep[],
  whole: (step: SheetStep) => Node,
): Node[] => {
  const { numbers, frames } = drawingsOf(steps);
  const drawn = document.createElement('div');
  drawn.className = 'bench-numbers';
  drawn.append(...frames);
  return [
    drawn,
    ...stretchesOf(steps).map((stretch) =>
      'rows' in stretch ? toDom(sheetTable(stretch.rows, numbers)) : whole(stretch.whole),
    ),
  ];
};
