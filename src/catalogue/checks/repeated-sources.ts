import { cellFault, type Check } from './check.ts';

const rule = 'repeated-source';

/** The first page of a public repository: works of many hands, and no one document. */
const WHOLE_REPOSITORY = /^https?:\/\/github\.com\/[^/]+\/[^/]+\/?$/;

/** How a firm is registered, which its own sheets write or leave out. */
const LEGAL_ENDING =
  /[\s,]+(?:co|corp|corporation|enterprise|gmbh|inc|incorporated|integrated|limited|llc|ltd)\.?$/;

const addressOf = (url: string): string =>
  WHOLE_REPOSITORY.test(url) ? '' : url.replace(/^https?:\/\//, '').replace(/\/$/, '');

const nameOf = (publisher: string): string => publisher.toLowerCase().replace(LEGAL_ENDING, '');

export const repeatedSources: Check = {
  id: rule,
  about: 'One page is one source, and one publisher has one name: two hold each other up.',
  needs: ['sources.csv'],
  check: (tables) => {
    const firstAt = new Map<string, string>();
    const spelling = new Map<string, string>();
    return tables['sources.csv'].rows.flatMap((row) => {
      const { id = '', url = '', publisher = '' } = row.cells;
      const address = addressOf(url);
      const name = nameOf(publisher);
      const first = address === '' ? undefined : firstAt.get(address);
      const spelt = name === '' ? undefined : spelling.get(name);
      if (first === undefined) firstAt.set(address, id);
      if (spelt === undefined) spelling.set(name, publisher);
      return [
        ...(first === undefined
          ? []
          : [
              cellFault(rule, 'sources.csv', row, 'url', {
                wrong: `is the page of ${first} too`,
                expected: 'each page once',
                how: `cite ${first} instead`,
              }),
            ]),
        ...(spelt === undefined || spelt === publisher
          ? []
          : [
              cellFault(rule, 'sources.csv', row, 'publisher', {
                wrong: `is written ${spelt} elsewhere`,
                expected: 'one spelling of each publisher',
              }),
            ]),
      ];
    });
  },
};
