import { crc32, deflateSync } from 'node:zlib';
import { FULL, type Picture } from './picture.ts';

/** Writes pictures as PNG (ISO/IEC 15948), for the build alone. */

const SIGNATURE = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
const BITS = 2;
const PALETTE = 3;
const SHADES = 2 ** BITS;
const PIXELS_A_BYTE = 8 / BITS;
/** Red, green and blue of the site's paper and ink in light. */
const PAPER = [0xfa, 0xf7, 0xef] as const;
const INK = [0x1c, 0x1a, 0x16] as const;

const chunk = (type: string, data: Buffer): Buffer => {
  const named = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const length = Buffer.alloc(4);
  length.writeUInt32BE(data.length);
  const sum = Buffer.alloc(4);
  sum.writeUInt32BE(crc32(named));
  return Buffer.concat([length, named, sum]);
};

const shades = Buffer.from(
  Array.from({ length: SHADES }, (_, shade) =>
    [0, 1, 2].map((channel) => {
      const [paper = 0, ink = 0] = [PAPER[channel], INK[channel]];
      return Math.round(paper + ((ink - paper) * shade) / (SHADES - 1));
    }),
  ).flat(),
);

/** The shade that stands for each amount of ink. */
const shadeOf = Uint8Array.from({ length: FULL + 1 }, (_, ink) =>
  Math.round((ink * (SHADES - 1)) / FULL),
);

/** Several pixels a byte, the leftmost highest, each row begun with the number of its filter: none. */
const packed = ({ width, height, ink }: Picture): Buffer => {
  const wide = 1 + Math.ceil(width / PIXELS_A_BYTE);
  const rows = Buffer.alloc(wide * height);
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) {
      const shade = shadeOf[ink[y * width + x] ?? 0] ?? 0;
      if (shade === 0) continue;
      const at = y * wide + 1 + Math.floor(x / PIXELS_A_BYTE);
      const place = BITS * (PIXELS_A_BYTE - 1 - (x % PIXELS_A_BYTE));
      rows[at] = (rows[at] ?? 0) | (shade << place);
    }
  }
  return rows;
};

/** A picture as a PNG file in a few shades from paper to ink. */
export const encodePng = (picture: Picture): Buffer<ArrayBuffer> => {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(picture.width, 0);
  header.writeUInt32BE(picture.height, 4);
  header.set([BITS, PALETTE, 0, 0, 0], 8);
  return Buffer.concat([
    SIGNATURE,
    chunk('IHDR', header),
    chunk('PLTE', shades),
    chunk('IDAT', deflateSync(packed(picture))),
    chunk('IEND', Buffer.alloc(0)),
  ]);
};
