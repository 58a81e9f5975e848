import { leadLength, wire } from '../lead.ts';
import { line, rectangle } from '../path.ts';
import { inner, solid, type View } from '../shape.ts';
import type { PartSpec } from '../spec.ts';
import type { Form } from './form.ts';

/** What the moulded feet keep the box off the board, mm. */
const FOOT = 0.4;

const face = (spec: PartSpec, name: 'front' | 'side', width: number, leads: number[]): View => {
  const { height } = spec;
  const left = -width / 2;
  const foot = Math.min(1.4, width * 0.2);
  const tray = -FOOT - Math.min(1.2, height * 0.1);
  return {
    name,
    from: left,
    shapes: [
      ...leads.map((x) => wire(spec, [x, -FOOT], [x, Math.min(6, leadLength(height))])),
      ...[left, -left - foot].map((x) =>
        solid(rectangle([x, -FOOT - 0.2], foot, FOOT + 0.2), 'body'),
      ),
      solid(rectangle([left, -height], width, height - FOOT, [0.35, 0.35, 0.15, 0.15]), 'body'),
      inner(line([left, tray], [-left, tray])),
    ],
    ...(name === 'front'
      ? {
          print: {
            at: [0, (tray - height) / 2] as const,
            width: width * 0.9,
            height: (height + tray) * 0.86,
          },
        }
      : {}),
  };
};

/** A sharp rectangular case filled with resin from below. */
export const box: Form = {
  name: 'box',
  views: (spec) => {
    const half = (spec.pitch ?? spec.length * 0.72) / 2;
    return [face(spec, 'front', spec.length, [-half, half]), face(spec, 'side', spec.width, [0])];
  },
};
