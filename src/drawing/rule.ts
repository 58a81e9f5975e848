import { h, type Element } from '../markup/node.ts';
import { written } from './path-text.ts';
import { line } from './path.ts';
import { toTenth } from './to-tenth.ts';

/** A millimetre rule from a place to the right: px. */
export interface Rule {
  x: number;
  y: number;
  /** Long, mm. */
  length: number;
  scale: number;
}

/** How high the rule and its numbers are, px. */
export const RULE_HEIGHT = 24;

/** Strokes closer than this run together, px. */
const CLOSEST = 3.5;

/** Width of a digit of the numbers, and room that a number needs, px. */
const DIGIT = 6;
const ROOM_OF_NUMBER = 26;

const tick = (millimetre: number): number => {
  if (millimetre % 10 === 0) return 8;
  return millimetre % 5 === 0 ? 6 : 3.5;
};

/** A rule with a stroke a millimetre where there is room, and a number every ten. */
export const ruleMarkup = ({ x, y, length, scale }: Rule): Element => {
  const step = [1, 5, 10].find((size) => size * scale >= CLOSEST) ?? 10;
  const at = (millimetre: number): number => toTenth(x + millimetre * scale);
  const marks = Array.from({ length: Math.floor(length / step) + 1 }, (_, i) => i * step);
  const every = [10, 20, 50].find((size) => size * scale >= ROOM_OF_NUMBER) ?? 50;
  const numbered = marks.filter((mark) => mark % every === 0);
  const last = numbered.at(-1) ?? 0;
  return h(
    'g',
    { class: 'pd-rule' },
    h('path', {
      d: written(
        [
          ...line([at(0), y], [at(length), y]),
          ...marks.flatMap((mark) => line([at(mark), y], [at(mark), y + tick(mark)])),
        ],
        1,
        [0, 0],
      ),
    }),
    numbered.map((mark) =>
      mark === last
        ? h(
            'text',
            { x: at(mark) - (String(mark).length * DIGIT) / 2, y: y + 19 },
            `${mark}\u00A0mm`,
          )
        : h('text', { x: at(mark), y: y + 19, 'text-anchor': 'middle' }, String(mark)),
    ),
  );
};
