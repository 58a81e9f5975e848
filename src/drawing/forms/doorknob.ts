import { line, rectangle, turned, type Path } from '../path.ts';
import { inner, solid, type Shape, type View } from '../shape.ts';
import type { PartSpec } from '../spec.ts';
import type { Form } from './form.ts';

/** A thread, in lines across. */
const stud = (from: number, to: number): Shape[] => {
  const turns = Math.max(2, Math.floor(Math.abs(to - from) / 0.9));
  return [
    solid(rectangle([-1.6, Math.min(from, to)], 3.2, Math.abs(to - from), 0.3), 'metal'),
    ...Array.from({ length: turns - 1 }, (_, i) => {
      const y = from + ((i + 1) * (to - from)) / turns;
      return { path: line([-1.6, y + 0.25], [1.6, y - 0.25]), line: 'ink' } as const;
    }),
  ];
};

const front = (spec: PartSpec): View => {
  const { length: width, height } = spec;
  const edge = width / 2;
  const screw = Math.min(7, height * 0.22);
  const [top, bottom] = [screw - height, -screw];
  const tall = bottom - top;
  const profile: Path = [
    ['M', [edge * 0.62, top]],
    ['C', [edge * 0.9, top], [edge, top + tall * 0.14], [edge, top + tall * 0.3]],
    ['L', [edge, bottom - tall * 0.3]],
    ['C', [edge, bottom - tall * 0.14], [edge * 0.9, bottom], [edge * 0.62, bottom]],
  ];
  return {
    name: 'front',
    from: -edge,
    shapes: [
      ...stud(top + 0.2, -height),
      ...stud(bottom - 0.2, 0),
      solid(
        turned(profile, ([x, y]) => [-x, y]),
        'body',
      ),
      solid(rectangle([-edge * 0.62, top - 0.6], edge * 1.24, 0.8), 'metal'),
      solid(rectangle([-edge * 0.62, bottom - 0.2], edge * 1.24, 0.8), 'metal'),
      inner(line([-edge, top + tall * 0.3], [edge, top + tall * 0.3])),
      inner(line([-edge, bottom - tall * 0.3], [edge, bottom - tall * 0.3])),
    ],
    print: { at: [0, (top + bottom) / 2], width: width * 0.86, height: tall * 0.38 },
  };
};

/** A thick ceramic body with a screw at each flat end, for kilovolts. */
export const doorknob: Form = {
  name: 'doorknob',
  round: 'upright',
  views: (spec) => [front(spec)],
};
