import type { Catalogue } from '../../engine/catalogue.ts';
import { FINDINGS_OF_RESISTANCE } from '../../engine/findings/series-resistance.ts';
import { NOTED, without } from './slice-pieces.ts';

/** The tables of sizes in a catalogue. */
export type Sizes = Pick<
  Catalogue,
  | 'bodies'
  | 'seriesResistance'
  | 'rippleByFrequency'
  | 'rippleByTemperature'
  | 'coreRises'
  | 'pulseRatings'
>;

/** Rows without the words that only their table shows. */
const bare = <Row extends { locator: string; note: string }>(rows: readonly Row[]): Row[] =>
  rows.map((row) => without(row, NOTED));

/**
 * The sizes that assessments in one position need: bodies of every value, since a visitor may ask
 * about any part, but edges, series resistance and ripple current only where a finding asks for them.
 */
export const sliceSizes = (catalogue: Catalogue, findings: ReadonlySet<string>): Sizes => {
  const resists = FINDINGS_OF_RESISTANCE.some((finding) => findings.has(finding));
  const ripples = findings.has('ripple-current');
  const warms = ripples || findings.has('ripple-heating') || findings.has('life');
  return {
    bodies: bare(catalogue.bodies),
    seriesResistance: resists ? bare(catalogue.seriesResistance) : [],
    rippleByFrequency: ripples ? bare(catalogue.rippleByFrequency) : [],
    rippleByTemperature: ripples ? bare(catalogue.rippleByTemperature) : [],
    coreRises: warms ? bare(catalogue.coreRises) : [],
    pulseRatings: findings.has('pulse') ? bare(catalogue.pulseRatings) : [],
  };
};
