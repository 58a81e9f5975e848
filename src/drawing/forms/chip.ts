import { rectangle } from '../path.ts';
import { paint, solid, type View } from '../shape.ts';
import type { PartSpec } from '../spec.ts';
import type { Form } from './form.ts';

const above = (spec: PartSpec): View => {
  const { length, width } = spec;
  const cap = Math.max(0.2, length * 0.2);
  const left = -length / 2;
  const barred = spec.polarity === 'bar-plus';
  return {
    name: 'above',
    from: left,
    shapes: [
      solid(rectangle([left, -width], length, width, width * 0.05), 'metal'),
      solid(
        rectangle([left + (barred ? 0 : cap), -width], length - (barred ? 0 : 2 * cap), width, 0),
        'body',
      ),
      ...(barred
        ? [paint(rectangle([left + length * 0.06, -width], length * 0.14, width), 'dark')]
        : []),
      ...(barred ? [{ path: rectangle([left, -width], length, width), line: 'ink' } as const] : []),
    ],
    print: {
      at: [barred ? length * 0.1 : 0, -width / 2],
      width: barred ? length * 0.7 : (length - 2 * cap) * 0.94,
      height: width * 0.84,
    },
    ...(barred ? { notes: [{ text: '+', at: [left, -width / 2], side: 'left' } as const] } : {}),
  };
};

const side = (spec: PartSpec): View => {
  const { length, height } = spec;
  const cap = Math.max(0.2, length * 0.2);
  const left = -length / 2;
  return {
    name: 'side',
    from: left,
    shapes: [
      solid(rectangle([left, -height], length, height, height * 0.05), 'body'),
      ...[left, -left - cap].map((x) => solid(rectangle([x, -height], cap, height), 'metal')),
    ],
  };
};

/** A block without leads, soldered by its ends. */
export const chip: Form = { name: 'chip', views: (spec) => [above(spec), side(spec)] };
