import manifest from '../../package.json' with { type: 'json' };

/** What a page says about the edition it belongs to. No dates: two builds of one edition are alike. */
export const edition = {
  name: 'Understudy',
  version: manifest.version,
  codeLicence: manifest.license,
  dataLicence: 'CC0 1.0',
  dataLicenceUrl: 'https://creativecommons.org/publicdomain/zero/1.0/',
} as const;
