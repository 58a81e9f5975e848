import { h } from '../markup/node.ts';
import { keepText } from './kept/kept-text.ts';
import { atTheFoot } from './page/at-the-foot.ts';

/** Draws the choice of colours, which needs script, and keeps what is chosen on this device. */

const KEY = 'theme';
const CHOICES = [
  { value: '', word: 'as the system' },
  { value: 'light', word: 'light' },
  { value: 'dark', word: 'dark' },
];

const choose = (choice: string): void => {
  if (choice) document.documentElement.dataset['theme'] = choice;
  else delete document.documentElement.dataset['theme'];
  keepText(KEY, choice);
};

const chosen = document.documentElement.dataset['theme'] ?? '';
const group = atTheFoot(
  h(
    'fieldset',
    { class: 'theme', id: 'theme' },
    h('legend', {}, 'Colours'),
    CHOICES.map(({ value, word }) =>
      h(
        'label',
        {},
        h('input', { type: 'radio', name: 'theme', value, checked: value === chosen }),
        ` ${word}`,
      ),
    ),
  ),
);
for (const input of group.querySelectorAll('input')) {
  input.addEventListener('change', () => {
    choose(input.value);
  });
}
