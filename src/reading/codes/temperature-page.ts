import { link } from '../../components/link.ts';
import { formatQuantity, formatValue, type Catalogue, type Range } from '../../engine/index.ts';
import {
  readTemperatureCharacteristic,
  sayCharacteristic,
  type TemperatureMeaning,
} from '../../engine/markings/index.ts';
import { h, type Markup } from '../../markup/node.ts';
import { listed as joined, sentence } from '../../text/words.ts';
import { codePath, type ListedCode } from './listed.ts';
import { chips } from '../chips.ts';
import { mark, sourceLink, table, type CodePage } from './page.ts';
import { rivalsSection } from './rivals.ts';

type Characteristic = TemperatureMeaning['characteristic'];

/** What a characteristic says, without its class. */
const said = (characteristic: Characteristic): string =>
  sayCharacteristic(characteristic).replace(/^class \d, /, '');

const answerOf = (code: string, own: Characteristic): string => {
  const span = `${formatValue(own.tMin, 'degC')} to ${formatValue(own.tMax, 'degC')}`;
  if (own.coefficient === undefined)
    return `${code} is a class 2 ceramic: its capacitance may change by ${said(own)}.`;
  return own.spreadKnown
    ? `${code} is a class 1 ceramic whose capacitance changes by ${said(own)}, over ${span}.`
    : `${code} is a class 1 ceramic whose capacitance changes by ${said(own)}; how far that may be off, the mark does not say.`;
};

/** Warming by this much makes a plain example, K. */
const WARMING = 40;

const coldToHot = (value: number, { min, typ, max }: Range): Range => ({
  min: value * (1 + min * WARMING),
  typ: value * (1 + typ * WARMING),
  max: value * (1 + max * WARMING),
});

/** What it does to a part, in figures that one can measure. */
const effect = (own: Characteristic): string => {
  const { capacitanceChange: change, coefficient } = own;
  if (change !== undefined) {
    const value = 1e-8;
    const range = { min: value * (1 + change.min), typ: value, max: value * (1 + change.max) };
    return `A part of 10\u00a0nF may be ${formatQuantity(range, 'F')} somewhere in that span, its tolerance aside.`;
  }
  if (coefficient === undefined) return '';
  const range = coldToHot(1e-10, coefficient);
  const digits = { digits: 4 };
  return range.min === range.max
    ? `A part of 100\u00a0pF is ${formatValue(range.typ, 'F', digits)} when it is ${WARMING}\u00a0K warmer.`
    : `A part of 100\u00a0pF is ${formatQuantity(range, 'F', digits)} when it is ${WARMING}\u00a0K warmer.`;
};

const close = (a: number, b: number): boolean => Math.abs(a - b) < 1e-9;

/** Whether two codes say about the same: the slope, or the change and where it is reached. */
const alike = (a: Characteristic, b: Characteristic): boolean => {
  if (a.coefficient !== undefined && b.coefficient !== undefined)
    return close(a.coefficient.typ, b.coefficient.typ);
  const [one, other] = [a.capacitanceChange, b.capacitanceChange];
  return (
    one !== undefined &&
    other !== undefined &&
    close(one.min, other.min) &&
    close(one.max, other.max)
  );
};

const systemName = (catalogue: Catalogue, id: string): string =>
  catalogue.markings.temperatureSystems.find((row) => row.id === id)?.name ?? id;

/** Every page of a code is set beside all others. */
const meanings = new WeakMap<Catalogue, Map<string, TemperatureMeaning | undefined>>();

const meaningOf = (catalogue: Catalogue, code: string): TemperatureMeaning | undefined => {
  const known = meanings.get(catalogue) ?? new Map<string, TemperatureMeaning | undefined>();
  meanings.set(catalogue, known);
  if (!known.has(code)) known.set(code, readTemperatureCharacteristic(catalogue.markings, code)[0]);
  return known.get(code);
};

/** Codes of other systems for the same slope or change. */
const sameElsewhere = (
  catalogue: Catalogue,
  own: ListedCode,
  codes: readonly ListedCode[],
): Markup[][] => {
  const mine = meaningOf(catalogue, own.code);
  return codes
    .filter((one) => one.kind === 'temperature' && one !== own)
    .flatMap((one) => {
      const meaning = meaningOf(catalogue, one.code);
      if (mine === undefined || meaning === undefined) return [];
      if (!alike(mine.characteristic, meaning.characteristic)) return [];
      return [
        [
          link(codePath(one), mark(one.code)),
          said(meaning.characteristic),
          systemName(catalogue, meaning.system),
        ],
      ];
    });
};

/** The codes before and behind it by slope or by change, within its class. */
const neighbours = (
  catalogue: Catalogue,
  own: ListedCode,
  codes: readonly ListedCode[],
): Markup[] => {
  const size = ({
    characteristic: { coefficient, capacitanceChange: change },
  }: TemperatureMeaning) => (coefficient === undefined ? (change?.min ?? 0) : coefficient.typ);
  const system = meaningOf(catalogue, own.code)?.system;
  const ordered = codes
    .filter(({ kind }) => kind === 'temperature')
    .flatMap((one) => {
      const meaning = meaningOf(catalogue, one.code);
      return meaning?.system === system && meaning !== undefined ? [{ one, meaning }] : [];
    })
    .toSorted((a, b) => size(a.meaning) - size(b.meaning));
  const at = ordered.findIndex(({ one }) => one === own);
  return [ordered[at - 1], ordered[at + 1]]
    .filter((near) => near !== undefined)
    .map(({ one, meaning }) => link(codePath(one), `${one.code}: ${said(meaning.characteristic)}`));
};

/** The page of a temperature code such as X7R or N750. */
export const temperaturePage = (
  catalogue: Catalogue,
  own: ListedCode,
  codes: readonly ListedCode[],
): CodePage => {
  const { code, also } = own;
  const [first, ...rest] = readTemperatureCharacteristic(catalogue.markings, code);
  if (first === undefined) throw new Error(`${code} is in no table of temperature codes`);
  const others = sameElsewhere(catalogue, own, codes);
  const near = neighbours(catalogue, own, codes);
  const sameWhat = first.characteristic.class === 1 ? 'The same slope' : 'The same change';
  return {
    title: `${code} on a capacitor: ${said(first.characteristic)}`,
    answer: answerOf(code, first.characteristic),
    more: [
      effect(first.characteristic),
      ...(also.length === 0 ? [] : [`Also written ${joined(also)}.`]),
      ...rest.map(({ characteristic, system }) =>
        sentence(`in ${systemName(catalogue, system)}: ${said(characteristic)}`),
      ),
    ].filter((text) => text !== ''),
    sections: [
      ...rivalsSection(catalogue, code),
      {
        id: 'stand-ins',
        title: 'What it is made of, and what replaces it',
        content: [
          chips(first.types.map((id) => link(`/replace/${id}/`, catalogue.types[id]?.name ?? id))),
        ],
      },
      ...(others.length === 0
        ? []
        : [
            {
              id: 'others',
              title: `${sameWhat} in other codes`,
              content: [table(`${sameWhat} in other codes`, ['Code', 'Says', 'System'], others)],
            },
          ]),
      {
        id: 'near',
        title: 'Where it comes from',
        content: [
          h(
            'p',
            {},
            sentence(`${systemName(catalogue, first.system)}`),
            ' ',
            sourceLink(first.source),
            '; ',
            link(
              first.characteristic.class === 1 ? '/read/class1-codes/' : '/read/class2-codes/',
              `all class ${first.characteristic.class} codes`,
            ),
            '.',
          ),
          ...(near.length === 0 ? [] : [h('p', {}, 'Next to it in the same system:'), chips(near)]),
        ],
      },
    ],
  };
};
