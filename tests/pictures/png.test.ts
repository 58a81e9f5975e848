import { inflateSync, crc32 } from 'node:zlib';
import { expect, test } from 'vitest';
import { drawMark } from '../../src/pictures/mark.ts';
import { blank, FULL } from '../../src/pictures/picture.ts';
import { encodePng } from '../../src/pictures/png.ts';

/** The chunks of a PNG, with their sums checked. */
const chunksOf = (png: Buffer): Map<string, Buffer> => {
  const chunks = new Map<string, Buffer>();
  for (let at = 8; at < png.length;) {
    const length = png.readUInt32BE(at);
    const named = png.subarray(at + 4, at + 8 + length);
    expect(png.readUInt32BE(at + 8 + length)).toBe(crc32(named));
    chunks.set(named.subarray(0, 4).toString('latin1'), named.subarray(4));
    at += 12 + length;
  }
  return chunks;
};

/** Red, green and blue of every pixel, read by the rules of the format (2 bits a pixel, a palette). */
const pixelsOf = (png: Buffer): number[][] => {
  const chunks = chunksOf(png);
  expect([...chunks.keys()]).toEqual(['IHDR', 'PLTE', 'IDAT', 'IEND']);
  const header = chunks.get('IHDR') ?? Buffer.alloc(0);
  const [width, height] = [header.readUInt32BE(0), header.readUInt32BE(4)];
  expect([...header.subarray(8)]).toEqual([2, 3, 0, 0, 0]);
  const palette = chunks.get('PLTE') ?? Buffer.alloc(0);
  const raw = inflateSync(chunks.get('IDAT') ?? Buffer.alloc(0));
  const wide = 1 + Math.ceil(width / 4);
  expect(raw.length).toBe(wide * height);
  return Array.from({ length: width * height }, (_, at) => {
    const [x, y] = [at % width, Math.floor(at / width)];
    const byte = raw[y * wide + 1 + Math.floor(x / 4)] ?? 0;
    const shade = (byte >> (6 - 2 * (x % 4))) & 3;
    return [...palette.subarray(shade * 3, shade * 3 + 3)];
  });
};

test('a picture is written so that its pixels come back, in the nearest of four shades', () => {
  const picture = blank(5, 2);
  picture.ink.set([0, 42, 43, 127, FULL, FULL, 128, 213, 212, 0]);
  const [paper, light, dark, ink] = [
    [0xfa, 0xf7, 0xef],
    [0xb0, 0xad, 0xa7],
    [0x66, 0x64, 0x5e],
    [0x1c, 0x1a, 0x16],
  ];
  expect(pixelsOf(encodePng(picture))).toEqual([
    paper,
    paper,
    light,
    light,
    ink,
    ink,
    dark,
    ink,
    dark,
    paper,
  ]);
});

test('the mark is drawn where its square says', () => {
  const { ink } = drawMark(32, 32, 1);
  const at = (x: number, y: number): number | undefined => ink[y * 32 + x];
  expect([at(0, 0), at(13, 10), at(19, 10), at(19, 6), at(4, 16)]).toEqual([
    0,
    FULL,
    0,
    FULL,
    FULL,
  ]);
});
