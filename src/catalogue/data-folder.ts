import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const isProject = (folder: string): boolean =>
  existsSync(join(folder, 'package.json')) && existsSync(join(folder, 'data', 'sources.csv'));

/**
 * The data folder of this project. Found by walking up from this module, which works wherever a
 * bundler puts it inside the project: a built site has a `data` folder too, but no `package.json`.
 * Falls back to `data` in the working directory.
 */
export const dataFolder = (module = import.meta.url): string => {
  let folder = module.startsWith('file:') ? dirname(fileURLToPath(module)) : process.cwd();
  for (;;) {
    if (isProject(folder)) return join(folder, 'data');
    const parent = dirname(folder);
    if (parent === folder) return join(process.cwd(), 'data');
    folder = parent;
  }
};
