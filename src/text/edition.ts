import manifest from '../../package.json' with { type: 'json' };

/** What a page says about the edition it belongs to. No dates: two builds of one edition are alike. */
export const edition = {
  name: 'Understudy',
  purpose: 'Which part made today may stand in for an aged one, where it sits, with the working',
  version: manifest.version,
  codeLicence: manifest.license,
  dataLicence: 'CC BY 4.0',
  dataLicenceUrl: 'https://creativecommons.org/licenses/by/4.0/',
} as const;
