import { expect } from 'vitest';
import type { Reading } from '../../../src/engine/markings/index.ts';

/** What the best reading of a marking is to say; nothing where it is not to say it. */
export interface Told {
  /** F, ohm, V, W. */
  c?: number;
  r?: number;
  volts?: number;
  watts?: number;
  /** Each way, as a fraction; in F where it is named so. */
  within?: number;
  withinF?: number;
  minus?: number;
  taper?: Reading['taper'];
  kind?: 'dc' | 'ac';
  /** Values of the sections, F, and the voltage of each. */
  sections?: number[];
  sectionVolts?: number[];
  type?: string;
  date?: string;
  /** Words of what it says that the part is, where it is none with a value that is read. */
  other?: RegExp;
  sure?: Reading['sure'];
  lost?: string[];
}

const near = (value: number): unknown => expect.closeTo(value, 15);

/** How each is found in a reading. */
const SAYS: Record<keyof Told, (reading: Reading) => unknown> = {
  c: ({ capacitance }) => capacitance?.typ,
  r: ({ resistance }) => resistance?.typ,
  volts: ({ ratedVoltage }) => ratedVoltage?.typ,
  watts: ({ power }) => power?.typ,
  within: ({ tolerance }) => (tolerance?.unit === 'fraction' ? tolerance.plus : undefined),
  withinF: ({ tolerance }) => (tolerance?.unit === 'F' ? tolerance.plus : undefined),
  minus: ({ tolerance }) => tolerance?.minus,
  taper: ({ taper }) => taper,
  kind: ({ voltageKind }) => voltageKind,
  sections: ({ sections }) => sections?.map(({ capacitance }) => capacitance.typ),
  sectionVolts: ({ sections }) => sections?.map(({ ratedVoltage }) => ratedVoltage?.typ),
  type: ({ types }) => types[0],
  date: ({ date }) => date,
  other: ({ notRead }) => notRead,
  sure: ({ sure }) => sure,
  lost: ({ notUnderstood }) => notUnderstood,
};

/** What a case tells of by not naming it: that it is not said. */
const ALWAYS = ['c', 'r', 'volts', 'watts', 'within', 'taper', 'date', 'lost'] as const;

/** What a reading says of what a case asks. */
export const told = (best: Reading, asked: Told) =>
  Object.fromEntries(
    [...new Set([...ALWAYS, ...(Object.keys(asked) as (keyof Told)[])])].map((key) => [
      key,
      SAYS[key](best),
    ]),
  );

/** A case in the shape of what is told; fractions of binary numbers do not count. */
export const wanted = ({ other, lost = [], ...asked }: Told) => ({
  c: undefined,
  r: undefined,
  volts: undefined,
  watts: undefined,
  within: undefined,
  taper: undefined,
  date: undefined,
  ...Object.fromEntries(
    Object.entries(asked).map(([key, value]) => [
      key,
      typeof value === 'number' ? near(value) : value,
    ]),
  ),
  ...(asked.sections === undefined ? {} : { sections: asked.sections.map(near) }),
  ...(other === undefined ? {} : { other: expect.stringMatching(other) as unknown }),
  lost,
});
