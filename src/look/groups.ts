import type { Catalogue } from '../engine/index.ts';
import type { StyleRow } from '../schemas/look.ts';
import { hyphenated } from '../text/words.ts';

/** Styles by the group that their table puts them in, in its order. */
export const groupsOfStyles = ({ look }: Catalogue): [group: string, styles: StyleRow[]][] => [
  ...Map.groupBy(look.styles, ({ group }) => group),
];

/** The page that shows all styles of a group. */
export const groupPath = (group: string): `/${string}` => `/look/groups/${hyphenated(group)}/`;
