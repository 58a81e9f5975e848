/** A place in millimetres: x to the right, y down; the board is at y = 0. */
export type Point = readonly [x: number, y: number];

/** One stroke of a pen: go to, straight to, curve to (two guides, then the end), back to the start. */
export type Stroke =
  readonly ['M' | 'L', Point] | readonly ['C', Point, Point, Point] | readonly ['Z'];

/** An outline in millimetres, of straight lines and cubic curves only, so that its extent is plain. */
export type Path = readonly Stroke[];

/** A rectangle that something fills, mm. */
export interface Extent {
  left: number;
  top: number;
  right: number;
  bottom: number;
}

/** Where the guides of a quarter circle lie, as a share of its radius. */
const QUARTER = 0.5523;

/** Straight strokes from place to place. */
export const line = (...points: Point[]): Path =>
  points.map((point, i) => [i === 0 ? 'M' : 'L', point]);

/** Straight strokes that come back to where they began. */
export const polygon = (...points: Point[]): Path => [...line(...points), ['Z']];

/** An ellipse about a place. */
export const ellipse = ([x, y]: Point, rx: number, ry = rx): Path => {
  const [gx, gy] = [rx * QUARTER, ry * QUARTER];
  return [
    ['M', [x + rx, y]],
    ['C', [x + rx, y + gy], [x + gx, y + ry], [x, y + ry]],
    ['C', [x - gx, y + ry], [x - rx, y + gy], [x - rx, y]],
    ['C', [x - rx, y - gy], [x - gx, y - ry], [x, y - ry]],
    ['C', [x + gx, y - ry], [x + rx, y - gy], [x + rx, y]],
    ['Z'],
  ];
};

/** Part of an ellipse, from one angle to another in radians, clockwise from the right; goes on. */
const arcStrokes = ([x, y]: Point, rx: number, ry: number, from: number, to: number): Stroke[] => {
  const pieces = Math.max(1, Math.ceil(Math.abs(to - from) / (Math.PI / 2)));
  const step = (to - from) / pieces;
  const reach = (4 / 3) * Math.tan(step / 4);
  const at = (angle: number, along = 0): Point => [
    x + rx * (Math.cos(angle) - along * Math.sin(angle)),
    y + ry * (Math.sin(angle) + along * Math.cos(angle)),
  ];
  return Array.from({ length: pieces }, (_, i): Stroke => {
    const [a, b] = [from + i * step, from + (i + 1) * step];
    return ['C', at(a, reach), at(b, -reach), at(b)];
  });
};

/** An open part of an ellipse, from one angle to another in radians, clockwise from the right. */
export const arc = (centre: Point, rx: number, ry: number, from: number, to: number): Path => [
  ['M', [centre[0] + rx * Math.cos(from), centre[1] + ry * Math.sin(from)]],
  ...arcStrokes(centre, rx, ry, from, to),
];

/** What a chord cuts off an ellipse. */
export const segment = (...where: Parameters<typeof arc>): Path => [...arc(...where), ['Z']];

/** Radii of the corners: one for all, or from the upper left one clockwise. */
export type Corners = number | readonly [number, number, number, number];

/** A rectangle from its upper left corner, with corners as round as they may be. */
export const rectangle = (
  [x, y]: Point,
  width: number,
  height: number,
  corners: Corners = 0,
): Path => {
  const most = Math.min(width, height) / 2;
  const [a, b, c, d] = (
    typeof corners === 'number' ? [corners, corners, corners, corners] : corners
  ).map((radius) => Math.min(radius, most)) as [number, number, number, number];
  const [right, bottom] = [x + width, y + height];
  const guide = (radius: number): number => radius * (1 - QUARTER);
  if (a + b + c + d === 0) return polygon([x, y], [right, y], [right, bottom], [x, bottom]);
  return [
    ['M', [x + a, y]],
    ['L', [right - b, y]],
    ['C', [right - guide(b), y], [right, y + guide(b)], [right, y + b]],
    ['L', [right, bottom - c]],
    ['C', [right, bottom - guide(c)], [right - guide(c), bottom], [right - c, bottom]],
    ['L', [x + d, bottom]],
    ['C', [x + guide(d), bottom], [x, bottom - guide(d)], [x, bottom - d]],
    ['L', [x, y + a]],
    ['C', [x, y + guide(a)], [x + guide(a), y], [x + a, y]],
    ['Z'],
  ];
};

/** The places that a stroke names, its end last. */
export const pointsOf = (stroke: Stroke): readonly Point[] => stroke.slice(1) as Point[];

/** The same outline with every place put through a function. */
export const mapped = (path: Path, place: (point: Point) => Point): Path =>
  path.map((stroke): Stroke => {
    switch (stroke[0]) {
      case 'Z':
        return stroke;
      case 'C':
        return ['C', place(stroke[1]), place(stroke[2]), place(stroke[3])];
      default:
        return [stroke[0], place(stroke[1])];
    }
  });

/** An open chain of strokes run the other way. */
const reversed = (path: Path): Path => {
  const ends = path.map((stroke) => pointsOf(stroke).at(-1)).filter((end) => end !== undefined);
  const last = ends.at(-1);
  if (last === undefined) return [];
  const back = path.slice(1).map((stroke, i): Stroke => {
    const to = ends[i] ?? last;
    return stroke[0] === 'C' ? ['C', stroke[2], stroke[1], to] : ['L', to];
  });
  return [['M', last], ...back.toReversed()];
};

/** The outline of a turned body, from its profile on one side of its axis and what mirrors that. */
export const turned = (profile: Path, mirror: (point: Point) => Point): Path => [
  ...profile,
  ...reversed(mapped(profile, mirror)).map((stroke): Stroke =>
    stroke[0] === 'M' ? ['L', stroke[1]] : stroke,
  ),
  ['Z'],
];

/** What outlines fill; guides count, which for what is drawn here lie on the extent. */
export const extentOf = (...paths: Path[]): Extent => {
  const points = paths.flat().flatMap(pointsOf);
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return {
    left: Math.min(...xs),
    top: Math.min(...ys),
    right: Math.max(...xs),
    bottom: Math.max(...ys),
  };
};
