import { build, type Plugin } from 'esbuild';
import { readFile } from 'node:fs/promises';
import { dirname, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { Script } from 'node:vm';

/** Runs a test file from its beginning, all it imports anew, with what it takes from packages. */
export type Loaded = (require: (name: string) => unknown) => void;

/** Where a module stands, said in each by itself: in one file they would all stand at one place. */
const places: Plugin = {
  name: 'places',
  setup: ({ onLoad }) => {
    onLoad({ filter: /\/(tests|src)\/.*\.ts$/ }, async ({ path }) => {
      const text = await readFile(path, 'utf8');
      return {
        loader: 'ts',
        contents: text
          .replaceAll('import.meta.url', JSON.stringify(pathToFileURL(path).href))
          .replaceAll('import.meta.dirname', JSON.stringify(dirname(path))),
      };
    });
  },
};

/** Has the catalogue that was read beforehand stand in for the reading of it. */
const kept: Plugin = {
  name: 'kept catalogue',
  setup: ({ onResolve }) => {
    const reading = resolve('src/catalogue/index.ts');
    onResolve({ filter: /\/catalogue\/index\.ts$/ }, ({ path, resolveDir }) =>
      resolve(resolveDir, path) === reading
        ? { path: resolve('scripts/mutation/kept-catalogue.ts') }
        : undefined,
    );
  },
};

/** A test file with all that it imports of the project, as one script. */
export const bundled = async (file: string, keeps: boolean): Promise<Loaded> => {
  const { outputFiles } = await build({
    // Stryker moves into its copy of the project after esbuild has looked where it is.
    absWorkingDir: process.cwd(),
    entryPoints: [file],
    bundle: true,
    write: false,
    platform: 'node',
    format: 'cjs',
    packages: 'external',
    target: 'esnext',
    // As Vitest has it: a site at the root of its host.
    define: { 'import.meta.env.BASE_URL': '"/"' },
    plugins: [...(keeps ? [kept] : []), places],
    logLevel: 'error',
  });
  const code = outputFiles[0]?.text ?? '';
  const wrapped = `(function (require, module, exports) {'use strict';${code}\n})`;
  const run = new Script(wrapped, { filename: file }).runInThisContext() as (
    require: (name: string) => unknown,
    module: { exports: unknown },
    exports: unknown,
  ) => void;
  return (require) => {
    const module = { exports: {} };
    run(require, module, module.exports);
  };
};
