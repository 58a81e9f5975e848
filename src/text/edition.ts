import manifest from '../../package.json' with { type: 'json' };

/** What a page says about the edition it belongs to. No dates: two builds of one edition are alike. */
export const edition = {
  name: 'Understudy',
  version: manifest.version,
  codeLicence: manifest.license,
  dataLicence: 'CC BY 4.0',
  dataLicenceUrl: 'https://creativecommons.org/licenses/by/4.0/',
} as const;
