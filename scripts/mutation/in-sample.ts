import { createHash } from 'node:crypto';

/** A share of all that there is, drawn by chance from a seed. */
export interface Sample {
  part: number;
  whole: number;
  seed: string;
}

/** Reads `1/5/seed` as one in five; nothing for what is no such share. */
export const readSample = (text: string): Sample | undefined => {
  const [, part = '', whole = '', seed = ''] = /^([1-9]\d*)\/([1-9]\d*)\/(\w+)$/.exec(text) ?? [];
  const sample = { part: Number(part), whole: Number(whole), seed };
  return seed !== '' && sample.part <= sample.whole ? sample : undefined;
};

/** Whether something of such a name is drawn: always the same for the same seed. */
export const inSample = ({ part, whole, seed }: Sample, name: string): boolean =>
  createHash('sha256').update(`${seed} ${name}`).digest().readUInt32BE(0) <
  (part / whole) * 2 ** 32;
