import type { Element } from '../../markup/node.ts';
import type { CircuitSymbol, CircuitSymbolRow } from '../../schemas/circuits.ts';
import { amplifier, follower, opAmp, tetrode, transistor, triode } from './amplifiers.ts';
import { circle, type Point } from './geometry.ts';
import { theRheostat, theResistor, theTrimmer } from './here.ts';
import {
  box,
  chassis,
  ground,
  input,
  joints,
  label,
  linked,
  output,
  stroke,
  supply,
  tap,
  wire,
} from './marks.ts';
import {
  capacitor,
  coil,
  core,
  crystal,
  currentSource,
  diode,
  fuse,
  lamp,
  loudspeaker,
  meter,
  openSwitch,
  otherCapacitor,
  potentiometer,
  resistor,
  variableResistor,
} from './parts.ts';

type Draw = (places: readonly Point[], row: CircuitSymbolRow) => Element[];

/** What stands beside a part, and on which side. */
const named = ({ name, how }: CircuitSymbolRow) => ({
  ...(name === '' ? {} : { name }),
  other: how.includes('other-side'),
});

/** The place of a symbol that has one, or of several; the check of the data holds rows to their number. */
const nth = (places: readonly Point[], index: number): Point => {
  const place = places[index];
  if (place === undefined) throw new RangeError(`a symbol with ${String(places.length)} places`);
  return place;
};

const at =
  (draw: (place: Point, row: CircuitSymbolRow) => Element[]): Draw =>
  (places, row) =>
    draw(nth(places, 0), row);

const between =
  (draw: (a: Point, b: Point, row: CircuitSymbolRow) => Element[]): Draw =>
  (places, row) =>
    draw(nth(places, 0), nth(places, 1), row);

const control =
  (draw: typeof potentiometer): Draw =>
  (places, row) =>
    draw(nth(places, 0), nth(places, 1), nth(places, 2), named(row));

/** A part between two places with a name beside it. */
const part = (draw: typeof resistor): Draw => between((a, b, row) => draw(a, b, named(row)));

const polar = (draw: typeof capacitor): Draw =>
  between((a, b, row) => draw(a, b, { ...named(row), polar: row.how.includes('polar') }));

const boxBetween = ([x, y]: Point, [right, lower]: Point, { name }: CircuitSymbolRow): Element[] =>
  box(name, [x, y], right - x, lower - y);

/** A motor, two steps to each side of a place. */
const motor = ([x, y]: Point): Element[] => [stroke(circle([x, y], 2)), label('M', [x, y + 0.4])];

const drawn: Readonly<Record<CircuitSymbol, Draw>> = {
  wire: (places) => wire(...places),
  linked: (places) => linked(...places),
  joints: (places) => joints(...places),
  ground: (places) => ground(...places),
  chassis: at((place) => chassis(place)),
  input: between((a, b, { name }) => input(name, a, b)),
  output: between((a, b, { name }) => output(name, a, b)),
  supply: at((place, { name }) => supply(name, place)),
  tap: at((place, { name, how }) => tap(name, place, how.includes('other-side') ? 'end' : 'start')),
  box: between(boxBetween),
  words: at((place, { name }) => [label(name, place)]),
  resistor: part(resistor),
  'variable-resistor': part(variableResistor),
  potentiometer: control(potentiometer),
  capacitor: polar(otherCapacitor),
  coil: part(coil),
  core: between((a, b) => core(a, b)),
  diode: between((a, b, row) =>
    diode(a, b, { ...named(row), ...(row.how.includes('zener') ? { zener: true } : {}) }),
  ),
  'open-switch': part(openSwitch),
  fuse: between((a, b) => fuse(a, b)),
  crystal: between((a, b) => crystal(a, b)),
  'current-source': part(currentSource),
  lamp: part(lamp),
  meter: part(meter),
  motor: at(motor),
  loudspeaker: at((place, { name }) => loudspeaker(place, name === '' ? undefined : name)),
  'op-amp': at((place, { name, how }) =>
    opAmp(place, how.includes('minus-above') ? '-' : '+', name === '' ? undefined : name),
  ),
  follower: at((place) => follower(place)),
  amplifier: at((place, { how }) => amplifier(place, how.includes('inverts'))),
  transistor: at((place, { how }) => transistor(place, how.includes('pnp') ? 'pnp' : 'npn')),
  triode: at((place) => triode(place)),
  tetrode: at((place) => tetrode(place)),
  'the-capacitor': polar(capacitor),
  'the-resistor': part(theResistor),
  'the-trimmer': control(theTrimmer),
  'the-rheostat': part(theRheostat),
};

/** A symbol of a circuit as SVG. */
export const symbolMarks = (row: CircuitSymbolRow): Element[] => drawn[row.symbol](row.places, row);
