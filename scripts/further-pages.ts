/**
 * Which of the two indexes of words a page is in. Those that are listed here are in the further one,
 * which is fetched where the first finds little or somebody asks for it: they are thousands, the box on
 * the first page leads to most of them by other lists, and what they say stands on a page of the first
 * as well, or says where a figure is from. All others are in the first.
 */
const FURTHER: readonly { pages: RegExp; what: string }[] = [
  { pages: /^[^/]+\/[^/]+\/in\/[^/]+\/$/, what: 'a part in one position or use' },
  { pages: /^read\/codes\/[^/]+\/$/, what: 'one code with what it means' },
  { pages: /^types\/[^/]+\/figures\/$/, what: 'where the figures of a type come from' },
  { pages: /^(sources|data|changes)\//, what: 'where figures come from' },
];

/**
 * Whether a page is in the further index.
 * @param path below the base, without the first slash
 */
export const isFurther = (path: string): boolean => FURTHER.some(({ pages }) => pages.test(path));
