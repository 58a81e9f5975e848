import { LARGEST_FILE } from '../model/job.ts';

/** Text of a file, with a sentence for each thing that was assumed or left out. */
export type TextOfBytes =
  { ok: true; text: string; said: string[] } | { ok: false; message: string };

/** How many bytes tell UTF-16 without a mark by its zero bytes. */
const LOOKED_AT = 2000;

const zerosAt = (bytes: Uint8Array, from: number): number => {
  let count = 0;
  for (let at = from; at < Math.min(bytes.length, LOOKED_AT); at += 2) if (bytes[at] === 0) count++;
  return count;
};

/** UTF-16 by its mark, or by zero bytes at every other place, as Latin text has them. */
const wideLabel = (bytes: Uint8Array): 'utf-16le' | 'utf-16be' | undefined => {
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return 'utf-16le';
  if (first === 0xfe && second === 0xff) return 'utf-16be';
  const most = Math.min(bytes.length, LOOKED_AT) / 2;
  const [even, odd] = [zerosAt(bytes, 0), zerosAt(bytes, 1)];
  if (odd > most * 0.7 && even < most * 0.1) return 'utf-16le';
  if (even > most * 0.7 && odd < most * 0.1) return 'utf-16be';
  return undefined;
};

const decoded = (bytes: Uint8Array): { text: string; said: string[] } => {
  const wide = wideLabel(bytes);
  if (wide !== undefined)
    return { text: new TextDecoder(wide).decode(bytes), said: ['Read as UTF-16.'] };
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes), said: [] };
  } catch {
    const text = new TextDecoder('windows-1252').decode(bytes);
    return { text, said: ['Read as Windows-1252, since it is not UTF-8; look at µ, Ω and °.'] };
  }
};

/** Text of a file in UTF-8, UTF-16 or Windows-1252; a file over 50 MB is refused. Never throws. */
export const textOfBytes = (bytes: Uint8Array): TextOfBytes => {
  if (bytes.length > LARGEST_FILE)
    return { ok: false, message: 'This file is larger than 50 MB; no table of parts is.' };
  const { text, said } = decoded(bytes);
  return { ok: true, text, said };
};
