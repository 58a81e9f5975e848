import { line, rectangle } from '../path.ts';
import { inner, solid, type View } from '../shape.ts';
import type { PartSpec } from '../spec.ts';
import type { Form } from './form.ts';
import { lyingLeads } from './tube.ts';

/** From above: glass fused over a stack of foils. */
const block = (spec: PartSpec): View => {
  const { length, width } = spec;
  const edge = length / 2;
  const inset = Math.min(1.4, width * 0.16);
  return {
    name: 'above',
    from: -edge,
    shapes: [
      ...lyingLeads(spec, inset),
      solid(
        rectangle([-edge + inset, -width + inset], length - 2 * inset, width - 2 * inset),
        'metal',
      ),
      solid(rectangle([-edge, -width], length, width, Math.min(1, width * 0.12)), 'body'),
    ],
    print: { at: [0, -width / 2], width: length * 0.76, height: width * 0.62 },
  };
};

const side = (spec: PartSpec): View => {
  const { length, height } = spec;
  const edge = length / 2;
  const layers = [0.35, 0.5, 0.65].map((share) => -height * share);
  return {
    name: 'side',
    from: -edge,
    shapes: [
      ...lyingLeads({ ...spec, width: height }),
      solid(rectangle([-edge, -height], length, height, height * 0.2), 'body'),
      ...layers.map((y) => inner(line([-edge * 0.8, y], [edge * 0.8, y]))),
    ],
  };
};

/** A flat block of fused glass with a ribbon or wire at each end. */
export const glassBlock: Form = { name: 'glass block', views: (spec) => [block(spec), side(spec)] };
