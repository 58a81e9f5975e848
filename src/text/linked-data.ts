import { edition } from './edition.ts';

/** A step of the way to a page: what it is called and its whole address. */
export interface Step {
  word: string;
  address: string;
}

/** JSON for a data block: nothing in it can end the block. */
const blockOf = (value: object): string => JSON.stringify(value).replaceAll('<', '\\u003c');

/** Tells programs the way to a page, by the words of schema.org. */
export const breadcrumbData = (steps: readonly Step[]): string =>
  blockOf({
    '@context': 'https://schema.org',
    '@type': 'BreadcrumbList',
    itemListElement: steps.map(({ word, address }, index) => ({
      '@type': 'ListItem',
      position: index + 1,
      name: word,
      item: address,
    })),
  });

/** Tells programs that the open data, or a table of them, are a data set, by the words of schema.org. */
export const datasetData = (
  name: string,
  about: string,
  page: string,
  downloads: readonly { address: string; format: string }[],
): string =>
  blockOf({
    '@context': 'https://schema.org',
    '@type': 'Dataset',
    name: `${edition.name}: ${name}`,
    description: about,
    url: page,
    version: edition.version,
    license: edition.dataLicenceUrl,
    isAccessibleForFree: true,
    creator: { '@type': 'Organization', name: `the ${edition.name} contributors` },
    distribution: downloads.map(({ address, format }) => ({
      '@type': 'DataDownload',
      contentUrl: address,
      encodingFormat: format,
    })),
  });
