import { link } from '../components/link.ts';
import { usesOf, type Catalogue } from '../engine/index.ts';
import { h, type Markup } from '../markup/node.ts';
import type { DeviceRow } from '../schemas/devices.ts';
import { midSentence } from '../text/mid-sentence.ts';
import { findDevices } from './find-devices.ts';
import type { KnownNumber } from './known-numbers.ts';
import type { TypeNumber } from './type-number.ts';

/** The heading over devices that a text names. */
export const TYPE_NUMBER = 'By type number';

/** Devices that one answer may list. */
const MOST = 8;

const deviceLink = (catalogue: Catalogue, device: DeviceRow): Markup => {
  const does = catalogue.devices.functions.find(({ id }) => id === device.function)?.name ?? '';
  return h('li', {}, link(`/devices/${device.id}/`, device.name), does === '' ? '' : `, ${does}`);
};

/** Where the only device that is meant may be replaced. */
const useLinks = (catalogue: Catalogue, found: readonly DeviceRow[]): Markup[] => {
  const [only] = found.length === 1 ? found : [];
  if (only === undefined) return [];
  return usesOf(catalogue, only).map(({ id, name }) =>
    h('li', {}, link(`/devices/${only.id}/in/${id}/`, `${only.name} as ${midSentence(name)}`)),
  );
};

/** A device whose number is left of a mark, with the body that tells it from others. */
const shortenedLine = ({ devices }: Catalogue, device: DeviceRow): Markup => {
  const does = devices.functions.find(({ id }) => id === device.function)?.name ?? '';
  const body = devices.pinouts.find(({ id }) => id === device.pinouts[0]);
  const on = body === undefined ? '' : ` (body: ${body.body})`;
  return h(
    'li',
    {},
    link(`/devices/${device.id}/`, device.name),
    `, ${does}${on}, if the start of its number was left off or is on a line of its own`,
  );
};

/** What a number is that has no page, and what to compare it with. */
const knownLine = (catalogue: Catalogue, { number, what, near, look_out }: KnownNumber): Markup => {
  const others = near.flatMap((id) => catalogue.devices.devices.find((one) => one.id === id) ?? []);
  const links = others.flatMap((device, at) => [
    at === 0 ? '' : at === others.length - 1 ? ' and ' : ', ',
    link(`/devices/${device.id}/`, device.name),
  ]);
  return h(
    'li',
    {},
    `${number} is ${what}. `,
    look_out === '' ? '' : `${look_out} `,
    ...(links.length > 0
      ? ['It has no page here; compare it with the ', ...links, '.']
      : ['It has no page here.']),
  );
};

/** What a mark may be besides a device that is called so: what is left of a longer number, or known. */
const besides = (catalogue: Catalogue, number: TypeNumber | undefined): Markup[] => [
  ...(number?.shortened ?? []).map((device) => shortenedLine(catalogue, device)),
  ...(number?.known ?? []).map((known) => knownLine(catalogue, known)),
];

/** What is printed round a number, in its order, and what each of it means. */
const roundLine = (number: TypeNumber | undefined): Markup[] => {
  const { letters = [], beside = [] } = number ?? {};
  const at = (place: string) => letters.filter((row) => row.place === place);
  // Letters behind a number were taken off from its end.
  const parts = [...at('before'), ...at('after').toReversed(), ...beside];
  return parts.length === 0
    ? []
    : [
        h(
          'p',
          {},
          'Round the number: ',
          parts.map(({ text, meaning }) => `${text}, ${meaning}`).join('; '),
          '.',
        ),
      ];
};

/**
 * Devices that a text names or begins to name, and where each may be replaced; or, of one that is not
 * in the tables, what the form of its number says.
 */
export const devicePieces = (
  catalogue: Catalogue,
  text: string,
  number: TypeNumber | undefined,
): Markup[] => {
  const named = number?.devices ?? [];
  const more = besides(catalogue, number);
  const found =
    named.length > 0 || more.length > 0 ? named : findDevices(catalogue, text).slice(0, MOST);
  if (found.length + more.length > 0)
    return [
      h(
        'ul',
        { class: 'plain-list' },
        ...found.map((device) => deviceLink(catalogue, device)),
        ...useLinks(catalogue, found),
        ...more,
      ),
      ...roundLine(number),
    ];
  return number?.system === undefined
    ? []
    : [
        h(
          'p',
          {},
          `“${text}” may be the type number of ${number.system.names}; it is not among the devices here.`,
        ),
      ];
};

/** The same under its heading, where the whole text is a type number. */
export const numberMarkup = (
  catalogue: Catalogue,
  text: string,
  number: TypeNumber | undefined,
): Markup[] =>
  number === undefined ? [] : [h('h2', {}, TYPE_NUMBER), ...devicePieces(catalogue, text, number)];
