import { peakOfSine } from '../../equations/sine.ts';
import {
  DEFAULT_GUIDELINE,
  MAKERS,
  shareByRule,
  type DeratingRules,
  type Rated,
} from '../../equations/derating.ts';
import type { Part } from '../../assessment/parts.ts';
import { voltageKindOf } from '../../candidates/voltage-kind.ts';
import type { Basis } from '../../catalogue.ts';
import { basisName } from '../../basis-name.ts';
import { choice, noteIf, quantity, withFacts } from '../sum.ts';

interface Facts extends DeratingRules {
  types: { id: string; name: string; kind: Part['voltageKind'] }[];
  guidelines: { id: string; name: string; kind: string }[];
}

/** A rule at work: a share below the makers’ ceiling stands by itself, above it the ceiling holds. */
const strictest = (
  rules: DeratingRules,
  guideline: string,
  part: Rated,
  temperature: number,
): { share: number; byCeiling: boolean; row: { basis: Basis } } | undefined => {
  const own = shareByRule(rules, guideline, part, temperature);
  if (own === undefined) return undefined;
  const ceiling = shareByRule(rules, MAKERS, part, temperature);
  return ceiling !== undefined && ceiling.share < own.share
    ? { ...ceiling, byCeiling: true }
    : { ...own, byCeiling: false };
};

/** Highest voltage (V) that a rating (V) of a type speaks of: the peak of one for AC. */
const ratedPeak = ({ types }: Pick<Facts, 'types'>, type: string, rating: number): number =>
  types.find(({ id }) => id === type)?.kind === 'ac' ? peakOfSine(rating) : rating;

/** How much of a rated voltage may be across a part, by several guidelines side by side. */
export const workingVoltage = withFacts(
  ({ types, guidelines, derating, categoryVoltages }): Facts => {
    const covered = new Set(derating.flatMap((row) => row.types));
    return {
      types: Object.values(types)
        .filter(({ id }) => covered.has(id))
        .map((row) => ({ id: row.id, name: row.name, kind: voltageKindOf(row) })),
      guidelines: Object.values(guidelines).map(({ id, name, kind }) => ({ id, name, kind })),
      rows: derating.map((row) => ({ ...row, locator: '', note: '' })),
      categories: categoryVoltages.map((row) => ({ ...row, locator: '', note: '' })),
    };
  },
)({
  id: 'working-voltage',
  title: 'Allowed working voltage',
  lead: 'How much of its rated voltage may be across a part at its temperature: makers’ ceilings, a cautious workshop rule, handbooks, the military and space agencies side by side.',
  group: 'rating',
  inputs: {
    type: choice<Facts>({
      label: 'Type',
      usual: 'ta-mno2-solid',
      options: ({ types }) => types,
    }),
    rating: quantity({
      label: 'Rated voltage',
      symbol: 'U_R',
      unit: 'V',
      usual: '25 V',
      lowest: 0.5,
      highest: 100_000,
      hint: 'of a part approved for the mains that for AC',
    }),
    temp: quantity({
      label: 'Temperature of the part',
      symbol: 'T',
      unit: 'degC',
      usual: '45 °C',
      lowest: -55,
      highest: 250,
    }),
    dc: quantity({
      label: 'Steady voltage across it',
      symbol: 'V_DC',
      unit: 'V',
      usual: '10 V',
      lowest: 0,
      highest: 100_000,
    }),
    ac: quantity({
      label: 'AC voltage on top, RMS',
      symbol: 'V_AC',
      unit: 'V',
      usual: '0.1 V',
      lowest: 0,
      highest: 100_000,
    }),
  },
  outputs: {
    allowed: { label: 'Allowed by workshop practice', symbol: 'V_a', unit: 'V', headline: true },
    ceiling: { label: 'Makers’ ceiling', unit: 'V' },
    peak: { label: 'Highest voltage across it', symbol: 'V', unit: 'V' },
    share: { label: 'Of what workshop practice allows', symbol: 's', unit: 'fraction' },
  },
  equations: ['V = V_DC + sqrt(2)*V_AC', 's = V/V_a'],
  at: ({ type, rating, temp, dc, ac }, rules) => {
    const by = (guideline: string): number | undefined => {
      const found = strictest(rules, guideline, { type, rated: rating }, temp);
      return found === undefined ? undefined : found.share * ratedPeak(rules, type, rating);
    };
    const ceiling = by(MAKERS);
    const allowed = by(DEFAULT_GUIDELINE) ?? ceiling;
    const peak = peakOfSine(ac, dc);
    return {
      allowed,
      ceiling,
      peak,
      share: allowed === undefined || allowed === 0 ? undefined : peak / allowed,
    };
  },
  tables: ({ type, rating, temp, dc, ac }, { guidelines, types, ...rules }) => [
    {
      caption: 'Guideline by guideline',
      head: [
        'Guideline',
        'Rule of',
        'Share of the rating',
        'Allowed',
        'Your voltage',
        'Known from',
      ],
      rows: guidelines.map(({ id, name, kind }) => {
        const found = strictest(rules, id, { type, rated: rating }, temp);
        if (found === undefined) return [name, kind, 'does not speak of it', '', '', ''];
        const peak = peakOfSine(ac, dc);
        const volts = found.share * ratedPeak({ types }, type, rating);
        return [
          found.byCeiling ? `${name} (above the makers’ ceiling, which holds)` : name,
          kind,
          { value: found.share, unit: 'fraction' as const },
          { value: volts, unit: 'V' as const },
          peak <= volts ? 'within' : 'above',
          basisName(found.row.basis),
        ];
      }),
    },
  ],
  notes: (_, { peak = 0, ceiling = Infinity }) => [
    ...noteIf(
      peak > (ceiling ?? Infinity),
      'caution',
      'Above the ceiling of its makers: it may fail at any time.',
    ),
    {
      kind: 'remark',
      text: 'Rules for equipment that must not fail ask for more than a bench needs; the ceiling asks for less than one would choose. For film on AC voltage see its own sum: the peak is not all that counts there.',
    },
  ],
  plots: [
    {
      title: 'Allowed voltage against temperature',
      x: 'temp',
      scale: 'linear',
      span: ({ type }, { rows }) => [
        0,
        Math.max(...rows.filter(({ types }) => types.includes(type)).map(({ to_c: top }) => top)),
      ],
      y: ['allowed', 'ceiling'],
      yScale: 'linear',
    },
  ],
  cautions: [],
  sources: ['trade'],
  checks: [
    {
      what: 'From the printed rule of half the rating: solid tantalum of 50 V at 85 °C takes 25 V',
      inputs: { type: 'ta-mno2-solid', rating: '50', temp: '85' },
      expected: { allowed: 25 },
      within: 0.005,
      source: 'digikey-forum-t491',
    },
    {
      what: 'From a printed rule of nine tenths up to 10 V: tantalum polymer of 6.3 V at 85 °C takes 5.67 V',
      inputs: { type: 'ta-polymer', rating: '6.3', temp: '85' },
      expected: { allowed: 5.67 },
      within: 0.001,
      source: 'kemet-t520',
    },
    {
      what: 'From the same rule, four fifths above 10 V: tantalum polymer of 16 V takes 12.8 V',
      inputs: { type: 'ta-polymer', rating: '16', temp: '85' },
      expected: { allowed: 12.8 },
      within: 0.001,
      source: 'kemet-t520',
    },
    {
      what: 'Printed for polypropylene of 400 V at 95 °C by a falling line: 350 V',
      inputs: { type: 'pp-metallized', rating: '400', temp: '95' },
      expected: { ceiling: 350 },
      within: 0.02,
      source: 'ppb-pp-data',
    },
    {
      what: 'Printed at the head of a table: solid tantalum of 10 V is for 7 V at 125 °C',
      inputs: { type: 'ta-mno2-solid', rating: '10', temp: '125' },
      expected: { ceiling: 7 },
      within: 0.0001,
      source: 'kemet-t495-low',
    },
  ],
});
