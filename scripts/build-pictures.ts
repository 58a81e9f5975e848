import { globSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { drawCard } from '../src/pictures/card.ts';
import { encodePng } from '../src/pictures/png.ts';
import { descriptionOf, pictureOf, sharedTitleOf } from './page-text.ts';
import { SITE } from './site-folder.ts';

/** Draws the pictures that stand beside shared links, from what the built pages say of themselves. */

const OWN = /\/(pictures\/.+\.png)$/;

const drawFor = (file: string): boolean => {
  const html = readFileSync(join(SITE, file), 'utf8');
  const path = OWN.exec(pictureOf(html))?.[1];
  if (path === undefined) return false;
  const place = join(SITE, path);
  mkdirSync(dirname(place), { recursive: true });
  writeFileSync(place, encodePng(drawCard(sharedTitleOf(html), descriptionOf(html))));
  return true;
};

const drawn = globSync('**/index.html', { cwd: SITE }).filter(drawFor);
console.log(`${drawn.length} pictures for shared links`);
