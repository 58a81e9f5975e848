/** Lists of type numbers without figures that have a page of their own; the others stand on one above. */
export const NUMBER_LISTS = {
  logic: {
    title: 'Chips of the 4000 and 74 series',
    of: 'logic without a page: what each is, and what to compare it with',
    lead: 'What a number is, without figures. A 54 in the place of 74 is for a wider range of temperatures.',
    caption: 'Chips without a page',
    danger: undefined,
  },
  chips: {
    title: 'Linear chips by their numbers',
    of: 'amplifiers, regulators, switches and other chips without a page: what each is, and what to compare it with',
    lead: 'What a number is, without figures. Pins, supply and what stands outside must suit before one chip stands in for another.',
    caption: 'Linear chips without a page',
    danger: undefined,
  },
  transistors: {
    title: 'Transistors by their numbers',
    of: 'transistors and field-effect transistors without a page: what each is, and what to compare it with',
    lead: 'What a number is, without figures. Ratings, gain and the order of the leads must suit before one transistor stands in for another.',
    caption: 'Transistors without a page',
    danger: undefined,
  },
  valves: {
    title: 'Valves by their numbers',
    of: 'valves without a page: what each is, which other numbers it goes by, and what to compare',
    lead: 'What a number is, and what others it goes by, without figures. Sockets, heaters and supply must suit before one number stands in for another.',
    caption: 'Valves without a page',
    danger: {
      caution: 'valve-supply',
      words: 'Their supplies hold a deadly charge long after the set was switched off',
    },
  },
} as const;
