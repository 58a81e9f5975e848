import type { Catalogue } from '../catalogue.ts';

/** What a catalogue says of how parts are wired up; a slice leaves out styles with leads. */
export type WithMountings = Pick<Catalogue, 'mountings'>;

/** Whether parts of a style have no leads but pads, which a board made for leads has no place for. */
export const isChip = ({ mountings }: WithMountings, style: string): boolean =>
  mountings[style] === 'pads';

/** Whether parts of a style are wired up by screws, which no board has a place for. */
export const isScrewed = ({ mountings }: WithMountings, style: string): boolean =>
  mountings[style] === 'screws';
