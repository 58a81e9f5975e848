import type { Job } from '../model/job.ts';
import { openJob, type Opened } from './file.ts';

/** Longest fragment that is offered, characters; longer ones are cut by programs that pass them on. */
export const LONGEST_FRAGMENT = 16_000;
/** Most that a fragment may unpack to, bytes. */
const LARGEST_UNPACKED = 5_000_000;

/** A job as the fragment of an address, with its length in characters. */
export type Shared =
  { ok: true; fragment: string; length: number } | { ok: false; message: string; length: number };

const TOO_LONG = 'This address is longer than any that is made here; it is not opened.';

const tooLong = (length: number): string =>
  `A link with this job would have about ${length.toLocaleString('en')} characters, and those over ${LONGEST_FRAGMENT.toLocaleString('en')} are often cut on the way. Save the job as a file and pass that on.`;
const BROKEN = 'This address holds no whole job; it may have been cut. Ask for the file instead.';

/** Everything that comes out of a stream, or nothing as soon as it is more than `most` bytes. */
const collect = async (
  stream: ReadableStream<Uint8Array>,
  most: number,
): Promise<Uint8Array<ArrayBuffer> | undefined> => {
  const reader = stream.getReader();
  const chunks: Uint8Array[] = [];
  let length = 0;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    length += value.length;
    if (length > most) {
      await reader.cancel();
      return undefined;
    }
    chunks.push(value);
  }
  const all = new Uint8Array(length);
  let at = 0;
  for (const chunk of chunks) {
    all.set(chunk, at);
    at += chunk.length;
  }
  return all;
};

const streamOf = (bytes: Uint8Array<ArrayBuffer>): ReadableStream<Uint8Array<ArrayBuffer>> =>
  new Blob([bytes]).stream();

const toBase64Url = (bytes: Uint8Array): string => {
  let text = '';
  for (const byte of bytes) text += String.fromCharCode(byte);
  return btoa(text).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/u, '');
};

/** Bytes of base64url text; throws where it is none. */
const fromBase64Url = (text: string): Uint8Array<ArrayBuffer> =>
  Uint8Array.from(atob(text.replaceAll('-', '+').replaceAll('_', '/')), (sign) =>
    sign.charCodeAt(0),
  );

/** Packs a job into a fragment, without its `#`; one that is too long is refused. */
export const shareJob = async (job: Job): Promise<Shared> => {
  const bytes = new TextEncoder().encode(JSON.stringify(job));
  if (bytes.length > LARGEST_UNPACKED)
    return { ok: false, message: tooLong(bytes.length), length: bytes.length };
  const packed = streamOf(bytes).pipeThrough(new CompressionStream('deflate-raw'));
  const fragment = toBase64Url((await collect(packed, Infinity)) ?? new Uint8Array());
  const { length } = fragment;
  return length > LONGEST_FRAGMENT
    ? { ok: false, message: tooLong(length), length }
    : { ok: true, fragment, length };
};

/** The job that a fragment holds. One that unpacks to more than any shared job is given up. */
export const openShared = async (fragment: string): Promise<Opened> => {
  if (fragment.length > LONGEST_FRAGMENT) return { ok: false, message: TOO_LONG };
  try {
    const packed = streamOf(fromBase64Url(fragment));
    const bytes = await collect(
      packed.pipeThrough(new DecompressionStream('deflate-raw')),
      LARGEST_UNPACKED,
    );
    if (bytes === undefined)
      return { ok: false, message: 'This address unpacks to more than any job; it is not opened.' };
    return openJob(new TextDecoder().decode(bytes));
  } catch {
    return { ok: false, message: BROKEN };
  }
};
