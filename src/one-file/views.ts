import { devicePage } from '../device-view/page.ts';
import {
  deviceStandIns,
  findKindStandIns,
  findStandIns,
  isMetIn,
  kindPairing,
  pairing,
  type Catalogue,
} from '../engine/index.ts';
import { h, type Markup } from '../markup/node.ts';
import type { SourceRow } from '../schemas/sources.ts';
import { kindPage } from '../substitution/kind-page.ts';
import { substitutionPage } from '../substitution/page.ts';
import { answeredFirst } from '../substitution/strangeness.ts';
import { midSentence } from '../text/mid-sentence.ts';
import { capital, seenWords, sentence, sourceKindWords } from '../text/words.ts';

/** Pages of the file that are drawn when they are opened, because there are too many to hold. */
export interface View {
  title: string;
  main: readonly Markup[];
}

/** The page of a type in a position; why they are not met, where they are not. */
const pairView = (
  catalogue: Catalogue,
  [typeId = '', positionId = '']: readonly string[],
): View | undefined => {
  const type = catalogue.types[typeId];
  const position = catalogue.positions[positionId];
  if (type === undefined || position === undefined) return undefined;
  const pair = pairing(catalogue, type, position);
  if (pair.met) {
    const request = { original: { type: typeId }, position: positionId };
    const standIns = answeredFirst(catalogue, request, findStandIns(catalogue, request));
    return substitutionPage(catalogue, typeId, positionId, standIns);
  }
  const title = `${capital(type.name)}: not met in ${midSentence(position.name)}`;
  return {
    title,
    main: [h('h1', {}, title), h('p', { class: 'lead' }, sentence(capital(pair.why)))],
  };
};

/** The page of a type of some kind in a position, where the two are met together. */
const kindView = (
  catalogue: Catalogue,
  [plural = '', typeId = '', positionId = '']: readonly string[],
): View | undefined => {
  const type = catalogue.kindTypes[typeId];
  const position = catalogue.kindPositions[positionId];
  if (type === undefined || position === undefined) return undefined;
  const isMet =
    catalogue.kinds[type.kind]?.plural === plural && kindPairing(catalogue, type, position).met;
  if (!isMet) return undefined;
  const request = { original: { type: typeId }, position: positionId };
  const standIns = answeredFirst(catalogue, request, findKindStandIns(catalogue, request));
  return kindPage(catalogue, typeId, positionId, standIns);
};

/** The page of a device in a use that it is met in. */
const deviceView = (
  catalogue: Catalogue,
  [deviceId = '', useId = '']: readonly string[],
): View | undefined => {
  const device = catalogue.devices.devices.find(({ id }) => id === deviceId);
  const use = catalogue.devices.uses.find(({ id }) => id === useId);
  return device !== undefined && use !== undefined && isMetIn(device, use)
    ? devicePage(catalogue, device, use, deviceStandIns(catalogue, { original: device, use }))
    : undefined;
};

const rows = ({ publisher, year, kind, seen, url }: SourceRow): readonly [string, Markup][] => [
  ['By', [publisher, year].filter((word) => word !== undefined && word !== '').join(', ')],
  ['Kind', sourceKindWords[kind] ?? kind],
  ['Seen', seenWords[seen] ?? seen],
  ['Where', url === '' ? '' : h('a', { href: url, rel: 'external noreferrer' }, url)],
];

/** A source, without the list of what rests on it, which the site has. */
const sourceView = (catalogue: Catalogue, [id = '']: readonly string[]): View | undefined => {
  const source = catalogue.sources[id];
  if (source === undefined) return undefined;
  const said = rows(source).filter(([, what]) => what !== '');
  return {
    title: source.title,
    main: [
      h('h1', {}, source.title),
      h(
        'dl',
        { class: 'facts' },
        said.flatMap(([word, what]) => [h('dt', {}, word), h('dd', {}, what)]),
      ),
    ],
  };
};

const kinds = [
  [/^\/replace\/([\w-]+)\/in\/([\w-]+)\/$/, pairView],
  [/^\/devices\/([\w-]+)\/in\/([\w-]+)\/$/, deviceView],
  [/^\/([\w-]+)\/([\w-]+)\/in\/([\w-]+)\/$/, kindView],
  [/^\/sources\/([\w-]+)\/$/, sourceView],
] as const;

/** The page of a path that is drawn when it is opened; nothing where no such page is known. */
export const viewOf = (catalogue: Catalogue, path: string): View | undefined => {
  for (const [pattern, draw] of kinds) {
    const names = pattern.exec(path)?.slice(1);
    if (names !== undefined) return draw(catalogue, names);
  }
  return undefined;
};
