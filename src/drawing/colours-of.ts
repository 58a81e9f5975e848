import type { Catalogue } from '../engine/index.ts';
import type { Colours } from './spec.ts';

/** The paints of a catalogue, by id. */
export const coloursOf = ({ markings: { colours } }: Catalogue): Colours => {
  const byId = new Map(colours.map((colour) => [colour.id, colour]));
  return (id) => byId.get(id);
};
