import { formatQuantity } from '../engine/index.ts';
import {
  emptyPreset,
  turnsInWords,
  type Preset,
  type PresetSteps,
  type SheetStep,
} from '../job/index.ts';
import { h, type Element } from '../markup/node.ts';
import { capital, sentence } from '../text/words.ts';
import { benchInput } from './bench-input.ts';

const FIELDS = [
  ['from', 'From terminal'],
  ['to', 'To terminal'],
  ['old', 'Old reading between them'],
  ['oldTotal', 'Old, end to end'],
  ['total', 'New, end to end'],
  ['turns', 'Turns from end to end'],
  ['supplied', 'New as supplied, same terminals'],
] as const;

/** What is known of the part that goes in, where nothing was measured of it. */
const KNOWN = [
  ['total', 'Total of the new one'],
  ['turns', 'Turns of the new one'],
] as const;

const USES = [
  ['rheostat', 'two terminals, by ohms'],
  ['divider', 'three terminals, by ratio'],
] as const;

/** As many digits as a meter gives, or the setting would be lost. */
const READING = { digits: 4 };

const NAMES: Readonly<Record<string, string>> = Object.fromEntries(FIELDS);

/** What to do with the new trimmer before it goes in; changes while one types. */
const stepsMarkup = ({ set, turns, notes, rejected, from }: PresetSteps, said: Preset): Element =>
  h(
    'ul',
    { class: 'bench-preset', 'data-live': 'preset' },
    KNOWN.filter(([field]) => said[field].trim() === '' && from[field] !== '').map(
      ([field, word]) =>
        h('li', { class: 'small quiet' }, `${word} until yours is measured: ${from[field]}.`),
    ),
    set !== undefined &&
      h('li', {}, h('strong', {}, `Set it to ${formatQuantity(set, 'ohm', READING)}.`)),
    turns !== undefined &&
      h('li', {}, h('strong', {}, `From where it stands: ${turnsInWords(turns)}.`)),
    notes.map((text) => h('li', {}, sentence(text))),
    Object.entries(rejected).map(([field, text]) =>
      h('li', { class: 'fault' }, `${capital(NAMES[field] ?? field)}: ${sentence(text)}`),
    ),
  );

/** A trimmer's setting: the old readings, the new one as supplied, and what that comes to. */
export const presetMarkup = ({ preset, fitted }: SheetStep): Element[] => {
  if (preset === undefined) return [];
  const said = fitted.preset ?? emptyPreset();
  return [
    h(
      'fieldset',
      { class: 'bench-fields' },
      h('legend', {}, 'Setting to carry over'),
      FIELDS.map(([name, label]) => benchInput(label, said[name], { 'data-preset': name })),
      h(
        'label',
        { class: 'bench-field' },
        'Used with',
        h(
          'select',
          { 'data-preset': 'use' },
          USES.map(([id, word]) =>
            h('option', { value: id, selected: preset.from.use === id }, word),
          ),
        ),
      ),
    ),
    stepsMarkup(preset, said),
  ];
};
