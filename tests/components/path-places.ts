type Place = readonly [x: number, y: number];

/** A stroke of an outline as SVG has it, with the places that it names as they are on the page. */
export interface ReadStroke {
  command: string;
  places: Place[];
}

const NUMBERS: Readonly<Record<string, number>> = { m: 2, l: 2, h: 1, v: 1, c: 6, s: 4, z: 0 };

/**
 * Reads an outline as a browser does: small letters count from where the pen is, and a curve that
 * names one guide has the other from the curve before.
 */
export const readPath = (d: string): ReadStroke[] => {
  let [pen, start]: [Place, Place] = [
    [0, 0],
    [0, 0],
  ];
  let guide: Place = [0, 0];
  return [...d.matchAll(/([a-z])([^a-z]*)/gi)].map(([, letter = '', rest = '']) => {
    const command = letter.toLowerCase();
    const numbers = [...rest.matchAll(/-?(?:\d+(?:\.\d+)?|\.\d+)/g)].map(Number);
    if (numbers.length !== NUMBERS[command]) throw new Error(`${letter}${rest} in ${d}`);
    const [x0, y0] = letter === command ? pen : [0, 0];
    const pairs =
      command === 'h'
        ? [[numbers[0], letter === command ? 0 : pen[1]]]
        : command === 'v'
          ? [[letter === command ? 0 : pen[0], numbers[0]]]
          : Array.from({ length: numbers.length / 2 }, (_, at) =>
              numbers.slice(2 * at, 2 * at + 2),
            );
    const named = pairs.map(([x = 0, y = 0]): Place => [x + x0, y + y0]);
    const places = command === 's' ? [guide, ...named] : named;
    const [[gx, gy], [x, y]] = [places.at(-2) ?? [0, 0], places.at(-1) ?? [0, 0]];
    guide = [2 * x - gx, 2 * y - gy];
    pen = command === 'z' ? start : (places.at(-1) ?? pen);
    if (command === 'm') start = pen;
    return { command: command === 's' ? 'c' : command, places };
  });
};

/** The places that an outline names. */
export const placesIn = (d: string): Place[] => readPath(d).flatMap(({ places }) => places);
