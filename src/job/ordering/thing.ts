/** What tells one thing to buy from another, in words. */
export interface Bought {
  kind: string;
  what: string;
  value: string;
  tolerance: string;
  volts: string;
  /** Rated power. */
  power: string;
  style: string;
  pitch: string;
  /** Height of the body, where one is listed. */
  height: string;
  /** What else one orders it by, such as its temperature coefficient or its turns. */
  details: string;
}

/** A thing of which nothing is said. */
export const nothingBought: Bought = {
  kind: '',
  what: '',
  value: '',
  tolerance: '',
  volts: '',
  power: '',
  style: '',
  pitch: '',
  height: '',
  details: '',
};

/** One thing of a stand-in, how many of it each place takes, and what to mind. */
export interface ThingFor {
  thing: Bought;
  each: number;
  notes: readonly string[];
}
