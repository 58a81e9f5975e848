import type { Catalogue, PositionId } from '../engine/catalogue.ts';
import { FINDINGS_OF_RESISTANCE } from '../engine/findings/series-resistance.ts';

/** The tables of sizes in a catalogue. */
export type Sizes = Pick<Catalogue, 'bodies' | 'seriesResistance' | 'pulseRatings'>;

/** Values this many times beyond those usual in a position are not met there. */
const BEYOND_USUAL = 100;

/** A row without the words that only its table shows. */
const bare = <Row extends { locator: string; note: string }>(row: Row): Row => ({
  ...row,
  locator: '',
  note: '',
});

/**
 * The sizes that assessments in one position need: bodies and edges of values up to a hundred times
 * beyond those usual there, and series resistance only where a finding asks for it.
 */
export const sliceSizes = (
  catalogue: Catalogue,
  position: PositionId,
  findings: ReadonlySet<string>,
): Sizes => {
  const row = catalogue.positions[position];
  const least = (row?.usual_c_min ?? 0) / BEYOND_USUAL;
  const most = (row?.usual_c_max ?? Infinity) * BEYOND_USUAL;
  const met = (one: { c_min: number; c_max: number }): boolean =>
    one.c_max >= least && one.c_min <= most;
  const resists = FINDINGS_OF_RESISTANCE.some((finding) => findings.has(finding));
  return {
    bodies: catalogue.bodies.filter(met).map(bare),
    seriesResistance: resists ? catalogue.seriesResistance.map(bare) : [],
    pulseRatings: findings.has('pulse') ? catalogue.pulseRatings.filter(met).map(bare) : [],
  };
};
