import { capital, listed } from '../text/words.ts';
import { forms } from './forms/index.ts';
import type { Form } from './forms/form.ts';
import type { Colours, PartSpec, PolarityMark } from './spec.ts';
import { toTenth } from './to-tenth.ts';

const print = (millimetres: number): string => String(toTenth(millimetres));

/** Sides of a part in words: `10 mm across and 4 mm thick`. */
const sidesOf = (spec: PartSpec): string => {
  const { length, width, height } = spec;
  const { round }: Form = forms[spec.form];
  switch (round) {
    case 'upright':
      return `${print(length)} mm across and ${print(height)} mm high`;
    case 'lying':
      return `${print(length)} mm long and ${print(width)} mm across`;
    case 'facing':
      return `${print(length)} mm across and ${print(width)} mm thick`;
    default:
      return `${print(length)} by ${print(width)} mm and ${print(height)} mm high`;
  }
};

const POLARITY_WORDS: Record<PolarityMark, string> = {
  'stripe-minus': 'a stripe on the minus side',
  'segment-minus': 'a dark segment on the minus side',
  'arrow-minus': 'arrows that point at the minus end',
  'plus-mark': 'a plus sign at the plus lead',
  'groove-plus': 'a groove at the plus end',
  'bar-plus': 'a bar at the plus end',
  'outer-foil-band': 'a band at the end of the outer foil',
  'cathode-band': 'a band at the cathode end',
};

/** What a drawing shows, in one sentence: form, size, colours by name, marks, what is printed. */
export const partInWords = (spec: PartSpec, colours: Colours = () => undefined): string => {
  const name = (id: string): string => colours(id)?.name ?? id;
  const all = (ids: readonly string[]): string => listed(ids.map(name));
  const { colour, marking, bands, dots, tip, polarity, pitch } = spec;
  const facts = [
    `${colour === undefined ? '' : `${name(colour)} `}${forms[spec.form].name}, ${sidesOf(spec)}`,
    pitch === undefined ? '' : `leads ${print(pitch)} mm apart`,
    bands === undefined || bands.length === 0 ? '' : `bands ${all(bands)}`,
    dots === undefined || dots.length === 0 ? '' : `dots ${all(dots)}`,
    tip === undefined ? '' : `${name(tip)} at the tip`,
    polarity === undefined ? '' : POLARITY_WORDS[polarity],
    marking === undefined || marking.length === 0 ? '' : `marked “${marking.join(' / ')}”`,
  ].filter((fact) => fact !== '');
  return capital(facts.join(', '));
};
