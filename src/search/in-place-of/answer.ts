import { basisMark } from '../../components/basis-mark.ts';
import { link } from '../../components/link.ts';
import { href } from '../../components/links.ts';
import {
  exactly,
  kindPairing,
  usesOf,
  writeQuantity,
  type Catalogue,
  type Habit,
} from '../../engine/index.ts';
import { h, type Markup } from '../../markup/node.ts';
import { chips } from '../../reading/chips.ts';
import { kindOnward, kindQuery } from '../../reading/kind-onward.ts';
import { judgedAt, likeliestType, typeChoice } from '../../reading/onward.ts';
import type { DeviceRow } from '../../schemas/devices.ts';
import type { KindTypeRow } from '../../schemas/kinds.ts';
import type { TypeRow } from '../../schemas/types.ts';
import { havingId, havingKeys, havingTypeKey } from '../../substitution/keys.ts';
import { kindPath } from '../../substitution/kind-path.ts';
import { midSentence } from '../../text/mid-sentence.ts';
import { capital } from '../../text/words.ts';
import { comparedIn, isOfLowerClass, type Compared } from './compared.ts';
import { eitherOf, inPlaceOf, saysVersus } from './question.ts';
import { sideOf, type Side } from './side.ts';

/** Answers whether one part may stand in for another, as far as one can without its place. */

interface Both {
  fitted: Side;
  old: Side;
}

/** What both say, each with what that means wherever the part sits. */
const comparedList = ({ inPlaceOf: rows }: Catalogue, compared: readonly Compared[]): Markup[] => {
  const items = compared.map(({ quantity, thanOld, words }) => {
    const row = rows.find((one) => one.quantity === quantity && one.than_old === thanOld);
    return h(
      'li',
      {},
      words,
      ...(row === undefined
        ? []
        : [` ${row.says} `, basisMark(row), ' ', link(row.page, row.title), '.']),
    );
  });
  return items.length === 0 ? [] : [h('ul', { class: 'plain-list' }, ...items)];
};

/** A type that one can buy, of those that a part may be. */
const bought = ({ types: all }: Catalogue, types: readonly TypeRow[]): TypeRow | undefined =>
  types
    .flatMap((type) => [type, ...type.union_of.flatMap((id) => all[id] ?? [])])
    .find(({ market, union_of: union }) => market !== 'none' && union.length === 0);

/** What an address says of the capacitor that would be fitted. */
const havingOf = (type: string | undefined, { numbers, joined }: Side): URLSearchParams => {
  const query = new URLSearchParams();
  const { capacitance, 'rated-voltage': volts } = numbers;
  // Pages judge one part; of several that are joined they have their own.
  if (joined !== undefined) return query;
  if (type !== undefined) query.set(havingKeys.type, type);
  if (capacitance !== undefined)
    query.set(havingKeys.capacitance, writeQuantity(exactly(capacitance), 'F'));
  if (volts !== undefined) query.set(havingKeys.ratedVoltage, String(volts));
  return query;
};

const judged = (fitted: string, old: string, places: Markup): Markup =>
  h(
    'div',
    { class: 'onward' },
    h(
      'p',
      {},
      `What ${midSentence(fitted)} comes to in place of ${midSentence(old)} depends on where it sits:`,
    ),
    places,
  );

/** Where the old capacitor may sit, with the other judged there; or what the old one may be. */
const capacitorPlaces = (catalogue: Catalogue, { fitted, old }: Both): Markup[] => {
  const id = likeliestType(
    catalogue,
    old.types.map((row) => row.id),
  );
  const row = id === undefined ? undefined : catalogue.types[id];
  // What is not said is taken to be of the old type, where that is one.
  const typeBeside = (type: TypeRow) =>
    bought(
      catalogue,
      fitted.types.length > 0 ? fitted.types : type.union_of.length > 0 ? [] : [type],
    );
  if (row === undefined)
    return old.reading?.capacitance === undefined
      ? []
      : [typeChoice(catalogue, old.reading, (type) => havingOf(typeBeside(type)?.id, fitted))];
  const type = typeBeside(row);
  const areAlike = type?.id === row.id;
  return [
    judged(
      areAlike ? fitted.text : (type?.short_name ?? fitted.text),
      areAlike ? old.text : row.short_name,
      judgedAt(catalogue, row.id, old.reading, havingOf(type?.id, fitted)),
    ),
  ];
};

/** Where an old resistor, trimmer or pot may sit, with the other judged there. */
const kindPlaces = (
  catalogue: Catalogue,
  its: KindTypeRow,
  olds: KindTypeRow,
  old: Side,
): Markup[] => {
  const kind = catalogue.kinds[olds.kind];
  if (kind === undefined) return [];
  const query = new URLSearchParams([
    ...new URLSearchParams(old.reading === undefined ? '' : kindQuery(old.reading)),
    [havingTypeKey, its.id],
  ]);
  const places = Object.values(catalogue.kindPositions)
    .filter((position) => position.kind === olds.kind && kindPairing(catalogue, olds, position).met)
    .map((position) =>
      h(
        'a',
        { href: href(`${kindPath(kind, olds.id, position.id)}?${query.toString()}#${havingId}`) },
        position.name,
      ),
    );
  return [judged(its.name, olds.name, chips(places))];
};

const resistorPlaces = (catalogue: Catalogue, { fitted, old }: Both): Markup[] => {
  const [its] = fitted.kindTypes;
  const [olds] = old.kindTypes;
  if (its !== undefined && olds?.kind === its.kind) return kindPlaces(catalogue, its, olds, old);
  const onward = old.reading && kindOnward(catalogue, old.reading);
  return onward === undefined ? [] : [onward];
};

const deviceNamed = ({ devices: { functions } }: Catalogue, device: DeviceRow): Markup[] => [
  link(`/devices/${device.id}/`, device.name),
  `, ${functions.find(({ id }) => id === device.function)?.name ?? device.function}`,
];

/** In which uses one device is judged in place of another. */
const devicePlaces = (catalogue: Catalogue, fitted: DeviceRow, old: DeviceRow): Markup[] => {
  if (fitted.function !== old.function)
    return [
      h('p', {}, 'They do different things:'),
      h(
        'ul',
        { class: 'plain-list' },
        ...[fitted, old].map((one) => h('li', {}, ...deviceNamed(catalogue, one))),
      ),
    ];
  const isListed = fitted.market !== 'old-stock';
  const end = isListed ? `#${fitted.id}` : '';
  const places = usesOf(catalogue, old).map(({ id, name }) =>
    h('a', { href: href(`/devices/${old.id}/in/${id}/${end}`) }, name),
  );
  return [
    judged(fitted.name, old.name, chips(places)),
    ...(isListed
      ? []
      : [
          h(
            'p',
            {},
            `A ${fitted.name} is no longer made, so that it is not among what is offered there.`,
          ),
        ]),
  ];
};

/** Whether all words of a part are understood: those of the `12V rail` in `100u 25V for 12V rail` are not. */
const isUnderstood = ({ reading, devices, types, kindTypes }: Side): boolean =>
  [devices, types, kindTypes].some(({ length }) => length > 0) ||
  reading?.notUnderstood.length === 0;

/** Where it is worked out what each of several bears; in a row the leakiest bears the least. */
const BORNE = {
  parallel: ['/sums/two-together/', 'Two capacitors in parallel or in series'],
  series: ['/sums/series-pair/', 'Balancing resistors for two capacitors in series'],
} as const;

/** What is taken of several that are joined, and where to work it out. */
const joinedNote = ({ fitted, old }: Both, isResistor: boolean): Markup[] => {
  const joined = fitted.joined ?? old.joined;
  if (joined === undefined) return [];
  const [path, title] = isResistor
    ? (['/sums/resistor-limits/', 'Power and voltage limits of a resistor'] as const)
    : BORNE[joined];
  return [
    h(
      'p',
      {},
      'Taken as alike, each with its even share; what each bears: ',
      link(path, title),
      '.',
    ),
  ];
};

/** What is asked of two parts, where their words tell enough of both. */
const piecesOf = (catalogue: Catalogue, both: Both, habit?: Habit): Markup[] => {
  const { fitted, old } = both;
  const [device, oldDevice] = [fitted.devices[0], old.devices[0]];
  if (device !== undefined && oldDevice !== undefined)
    return devicePlaces(catalogue, device, oldDevice);
  const compared = comparedIn(fitted, old, habit);
  const areTypes = fitted.types.length > 0 && old.types.length > 0;
  const areKinds = fitted.kindTypes.length > 0 && old.kindTypes.length > 0;
  if (compared.length === 0 && !areTypes && !areKinds) return [];
  if (isOfLowerClass(compared)) return comparedList(catalogue, compared);
  const isResistor = old.numbers.resistance !== undefined || (areKinds && !areTypes);
  return [
    ...comparedList(catalogue, compared),
    ...joinedNote(both, isResistor),
    ...(isResistor ? resistorPlaces(catalogue, both) : capacitorPlaces(catalogue, both)),
  ];
};

/** Both parts; what the one surely is tells what the other is that may be either. */
const bothOf = (catalogue: Catalogue, fitted: string, old: string): Both => {
  const [one, other] = [sideOf(catalogue, fitted), sideOf(catalogue, old)];
  const [its, olds] = [one.reading, other.reading];
  if (its === undefined || olds === undefined || its.kind === olds.kind)
    return { fitted: one, old: other };
  return its.sure === 'possible'
    ? { fitted: sideOf(catalogue, fitted, { kind: olds.kind }), old: other }
    : { fitted: one, old: sideOf(catalogue, old, { kind: its.kind }) };
};

/** What a question about one part in place of another comes to. */
export interface InPlaceOfAnswer {
  title: string;
  pieces: Markup[];
}

/** Both ways in which one of two devices may come in place of the other; only of numbers both known. */
const eitherDevice = (catalogue: Catalogue, text: string): InPlaceOfAnswer | undefined => {
  const [one, other] = (eitherOf(text) ?? []).map((side) => sideOf(catalogue, side).devices[0]);
  if (one === undefined || other === undefined || one.id === other.id) return undefined;
  const isSame = one.function === other.function;
  return {
    title: `${one.name} and ${other.name}`,
    pieces: [
      ...devicePlaces(catalogue, other, one),
      ...(isSame ? devicePlaces(catalogue, one, other) : []),
    ],
  };
};

const titleOf = (fitted: string, old: string): string => capital(`${fitted} in place of ${old}`);

/** Both ways in which one of two parts that are compared may come in place of the other. */
const eitherPart = (
  catalogue: Catalogue,
  text: string,
  habit?: Habit,
): InPlaceOfAnswer | undefined => {
  const sides = saysVersus(text) ? eitherOf(text) : undefined;
  if (sides === undefined) return undefined;
  const [one, other] = sides;
  const pieces = [[other, one] as const, [one, other] as const].flatMap(([fitted, old]) => {
    const way = piecesOf(catalogue, bothOf(catalogue, fitted, old), habit);
    return way.length === 0 ? [] : [h('h3', {}, titleOf(fitted, old)), ...way];
  });
  return pieces.length === 0 ? undefined : { title: capital(`${one} and ${other}`), pieces };
};

/** The answer to such a question; nothing where a text is none, or names no two parts. Never throws. */
export const answerInPlaceOf = (
  catalogue: Catalogue,
  text: string,
  habit?: Habit,
): InPlaceOfAnswer | undefined => {
  const asked = inPlaceOf(text);
  if (asked === undefined)
    return eitherDevice(catalogue, text) ?? eitherPart(catalogue, text, habit);
  const both = bothOf(catalogue, asked.fitted, asked.old);
  if (!asked.plain && !(isUnderstood(both.fitted) && isUnderstood(both.old))) return undefined;
  const pieces = piecesOf(catalogue, both, habit);
  return pieces.length === 0 ? undefined : { title: titleOf(asked.fitted, asked.old), pieces };
};
