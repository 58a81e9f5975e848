import type { Body } from '../engine/index.ts';
import { MILLIMETRE } from '../engine/quantities/si.ts';
import type { PartSpec } from './spec.ts';
import { toTenth } from './to-tenth.ts';

const inMillimetres = (metres: number): number => toTenth(metres / MILLIMETRE);

/** Of several pitches the widest that the leads need not be spread for. */
const pitchOf = (pitches: readonly number[], length: number): number | undefined =>
  pitches.filter((pitch) => pitch <= length).at(-1) ?? pitches[0];

/** A part with the sides of a body that is tabulated, or read between two that are. */
export const withSides = (spec: PartSpec, body: Body): PartSpec => {
  const length = inMillimetres(body.length.typ);
  return {
    ...spec,
    length,
    width: inMillimetres(body.width.typ),
    height: inMillimetres(body.height.typ),
    pitch: pitchOf(body.pitch.map(inMillimetres), length) ?? spec.pitch,
    leadWire: body.lead === undefined ? spec.leadWire : inMillimetres(body.lead),
  };
};

/** A part with its sides shrunk or grown alike, from one volume to another. */
export const withVolume = (spec: PartSpec, from: number, to: number): PartSpec => {
  const times = Math.cbrt(to / from);
  const side = (millimetres: number): number => toTenth(millimetres * times);
  return {
    ...spec,
    length: side(spec.length),
    width: side(spec.width),
    height: side(spec.height),
    pitch: spec.pitch === undefined ? undefined : side(spec.pitch),
  };
};
