/** The parts of the site that every page leads to, in the order of a repair: read, choose, check. */
export const navigation: { path: `/${string}`; word: string }[] = [
  { path: '/read/', word: 'Read' },
  { path: '/look/', word: 'Look' },
  { path: '/replace/', word: 'Replace' },
  { path: '/job/', word: 'Job' },
  { path: '/sums/', word: 'Sums' },
  { path: '/types/', word: 'Types' },
  { path: '/positions/', word: 'Positions' },
  { path: '/devices/', word: 'Devices' },
  { path: '/cautions/', word: 'Cautions' },
  { path: '/data/', word: 'Data' },
  { path: '/sources/', word: 'Sources' },
];
