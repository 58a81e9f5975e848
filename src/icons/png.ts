import { crc32, deflateSync } from 'node:zlib';
import type { Picture } from './mark.ts';

/** Writes pictures as PNG (ISO/IEC 15948), for the build alone. */

const SIGNATURE = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
const BITS = 8;
const TRUE_COLOUR = 2;

const chunk = (type: string, data: Buffer): Buffer => {
  const named = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const length = Buffer.alloc(4);
  length.writeUInt32BE(data.length);
  const sum = Buffer.alloc(4);
  sum.writeUInt32BE(crc32(named));
  return Buffer.concat([length, named, sum]);
};

/** A picture as a PNG file. */
export const encodePng = ({ width, height, rgb }: Picture): Buffer<ArrayBuffer> => {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header.set([BITS, TRUE_COLOUR, 0, 0, 0], 8);
  // Each row begins with the number of its filter: none.
  const rows = Array.from({ length: height }, (_, y) =>
    Buffer.concat([Buffer.from([0]), rgb.subarray(y * width * 3, (y + 1) * width * 3)]),
  );
  return Buffer.concat([
    SIGNATURE,
    chunk('IHDR', header),
    chunk('IDAT', deflateSync(Buffer.concat(rows), { level: 9 })),
    chunk('IEND', Buffer.alloc(0)),
  ]);
};
