import { globSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { join } from 'node:path';
import type { AstroIntegration } from 'astro';

/** Where the tables are, from the folder of the project. */
const DATA = 'data';

/**
 * Has the server of `npm run dev` begin anew where a table is edited: a catalogue is read once a
 * process, so pages would go on showing the tables as they were.
 */
export const tablesWatched: AstroIntegration = {
  name: 'tables-watched',
  hooks: {
    'astro:config:setup': ({ command, addWatchFile }) => {
      if (command !== 'dev') return;
      for (const file of globSync(`${DATA}/**/*.csv`))
        addWatchFile(pathToFileURL(join(process.cwd(), file)));
    },
  },
};
