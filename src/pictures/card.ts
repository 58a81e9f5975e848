import { edition } from '../text/edition.ts';
import { widthOf, write, type Weight } from './lettering.ts';
import { drawMark } from './mark.ts';
import { card } from './marks.ts';
import { blank, lay, type Picture } from './picture.ts';
import { wrapped } from './wrap.ts';

/** How a part of a card is set, px. */
interface Setting {
  size: number;
  weight: Weight;
  lines: number;
  /** From the top of one line to that of the next. */
  step: number;
}

const TITLE: Setting = { size: 66, weight: 600, lines: 3, step: 76 };
const WORDS: Setting = { size: 38, weight: 400, lines: 5, step: 50 };
const NAME = { size: 36, weight: 600 } as const;
const MARGIN = 72;
const TOP = 60;
const GAP = 22;
const MARK = 64;

const mark = drawMark(MARK, MARK, 1);

/** Sets a text and says where the next thing may stand. */
const set = (text: string, onto: Picture, top: number, setting: Setting): number => {
  const { size, weight, lines: most, step } = setting;
  const lines = wrapped(text, (part) => widthOf(part, size, weight), card.width - 2 * MARGIN, most);
  for (const [at, line] of lines.entries())
    write(line, onto, { left: MARGIN, top: top + at * step, size, weight });
  return top + lines.length * step;
};

/** The picture beside a link to a page: its heading, and what it answers or tells. */
export const drawCard = (title: string, words: string): Picture => {
  const picture = blank(card.width, card.height);
  const below = set(title, picture, TOP, TITLE);
  const foot = card.height - MARGIN - MARK;
  const room = Math.floor((foot - below - GAP) / WORDS.step);
  set(words, picture, below + GAP, { ...WORDS, lines: Math.min(WORDS.lines, room) });
  lay(mark, picture, MARGIN, foot);
  write(edition.name, picture, { ...NAME, left: MARGIN + MARK + GAP, top: foot + 7 });
  return picture;
};
