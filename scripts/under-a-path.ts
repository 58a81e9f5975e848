/** The build of the site that is not served at the top of an address. */
export const UNDER_A_PATH = { base: '/shelf/bench/', folder: 'node_modules/.under-a-path' };
