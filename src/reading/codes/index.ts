import type { Catalogue } from '../../engine/index.ts';
import { letterPage } from './letter-page.ts';
import type { CodeKind, ListedCode } from './listed.ts';
import type { CodePage } from './page.ts';
import { taperPage } from './taper-page.ts';
import { temperaturePage } from './temperature-page.ts';
import { valuePage } from './value-page.ts';
import { voltagePage } from './voltage-page.ts';

type Maker = (catalogue: Catalogue, own: ListedCode, codes: readonly ListedCode[]) => CodePage;

const makers: Record<CodeKind, Maker> = {
  value: valuePage,
  voltage: voltagePage,
  temperature: temperaturePage,
  letter: letterPage,
  taper: taperPage,
};

/** What the page of a code says, with what stands near it in the list. */
export const codePage = (
  catalogue: Catalogue,
  own: ListedCode,
  codes: readonly ListedCode[],
): CodePage => makers[own.kind](catalogue, own, codes);

export { codePath, listedCodes } from './listed.ts';
