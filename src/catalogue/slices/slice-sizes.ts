import type { Catalogue } from '../../engine/catalogue.ts';
import { FINDINGS_OF_RESISTANCE } from '../../engine/findings/series-resistance.ts';

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

/** A row without the words that only its table shows. */
const bare = <Row extends { locator: string; note: string }>(row: Row): Row => ({
  ...row,
  locator: '',
  note: '',
});

/**
 * The sizes that assessments in one position need: bodies of every value, since a visitor may ask
 * about any part, but edges, series resistance and ripple current only where a finding asks for them.
 */
export const sliceSizes = (catalogue: Catalogue, findings: ReadonlySet<string>): Sizes => {
  const resists = FINDINGS_OF_RESISTANCE.some((finding) => findings.has(finding));
  const ripples = findings.has('ripple-current');
  const warms = ripples || findings.has('ripple-heating') || findings.has('life');
  return {
    bodies: catalogue.bodies.map(bare),
    seriesResistance: resists ? catalogue.seriesResistance.map(bare) : [],
    rippleByFrequency: ripples ? catalogue.rippleByFrequency.map(bare) : [],
    rippleByTemperature: ripples ? catalogue.rippleByTemperature.map(bare) : [],
    coreRises: warms ? catalogue.coreRises.map(bare) : [],
    pulseRatings: findings.has('pulse') ? catalogue.pulseRatings.map(bare) : [],
  };
};
