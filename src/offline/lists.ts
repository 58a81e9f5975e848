/** What the build lists for the worker that keeps pages, as `offline/lists.json`. */
export interface Lists {
  /** How many files the site has, and their bytes. */
  files: number;
  bytes: number;
  /** Each with the hash of its own list, `offline/NAME.json`. */
  sections: Section[];
}

export interface Section {
  name: string;
  hash: string;
}

/** Files of a section by their paths below the base, with their hashes. */
export type FileHashes = Readonly<Record<string, string>>;

/** Where the lists are, below the base. */
export const LISTS = 'offline/lists.json';

/** Where the list of a section's files is, below the base. */
export const listOf = (section: string): string => `offline/${section}.json`;

/** Hexadecimal digits of a hash that are listed: enough to tell files apart, and short. */
export const HASH_DIGITS = 16;
