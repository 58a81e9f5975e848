import type { AstroIntegration } from 'astro';

/** Where a page and what goes with it stand: `a/b/` and `a/b.json` are one place. */
const placeOf = (pathname: string): string => pathname.replace(/\.json$|\/+$/, '');

/**
 * Builds a page and the figures of it that stand beside it one after the other, where Astro goes
 * through one route after the other. What both are made from is then worked out once and need not
 * be kept until the other route comes.
 */
export const pathsTogether: AstroIntegration = {
  name: 'paths-together',
  hooks: {
    'astro:build:start': ({ setPrerenderer }) => {
      setPrerenderer((usual) => ({
        ...usual,
        getStaticPaths: async () => {
          const paths = await usual.getStaticPaths();
          const places = paths.map((path) => ({ path, place: placeOf(path.pathname) }));
          return places
            .toSorted((a, b) => (a.place < b.place ? -1 : a.place > b.place ? 1 : 0))
            .map(({ path }) => path);
        },
      }));
    },
  },
};
