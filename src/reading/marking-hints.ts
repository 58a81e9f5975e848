import type { Hints } from '../engine/index.ts';

/** A choice that the reader of markings offers beside the text: its key in the address and its options. */
export interface Choice {
  key: string;
  label: string;
  options: readonly (readonly [value: string, words: string])[];
}

/** Ages that a part may be of, as years. */
const eras: Readonly<Record<string, { from: number; to: number }>> = {
  'to-1945': { from: 1900, to: 1945 },
  '1945-1970': { from: 1946, to: 1969 },
  '1970-1990': { from: 1970, to: 1989 },
  'from-1990': { from: 1990, to: 2100 },
};

/** Choices that do not come from the data. */
export const choices: readonly Choice[] = [
  {
    key: 'kind',
    label: 'What it is',
    options: [
      ['', 'not said'],
      ['capacitor', 'a capacitor'],
      ['resistor', 'a resistor'],
    ],
  },
  {
    key: 'age',
    label: 'Its age',
    options: [
      ['', 'not said'],
      ['to-1945', 'before 1945'],
      ['1945-1970', '1945 to 1970'],
      ['1970-1990', '1970 to 1990'],
      ['from-1990', 'since 1990'],
    ],
  },
  {
    key: 'line',
    label: 'A line under the value',
    options: [
      ['', 'not looked for'],
      ['yes', 'there is one'],
      ['no', 'there is none'],
    ],
  },
];

/** Keys of all choices in the address, in the order of the page. */
export const choiceKeys = ['body', 'kind', 'origin', 'age', 'line'] as const;

/** What the visitor says of the part; what means nothing is passed over. */
export const hintsFrom = (chosen: (key: (typeof choiceKeys)[number]) => string): Hints => {
  const [body, kind, origin, age, line] = choiceKeys.map(chosen) as [
    string,
    string,
    string,
    string,
    string,
  ];
  const era = Object.hasOwn(eras, age) ? eras[age] : undefined;
  return {
    ...(body === '' ? {} : { body }),
    ...(kind === 'capacitor' || kind === 'resistor' ? { kind } : {}),
    ...(origin === '' ? {} : { origin }),
    ...(era === undefined ? {} : { era }),
    ...(line === 'yes' || line === 'no' ? { underlined: line === 'yes' } : {}),
  };
};
