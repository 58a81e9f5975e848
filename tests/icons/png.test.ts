import { inflateSync, crc32 } from 'node:zlib';
import { expect, test } from 'vitest';
import { drawMark } from '../../src/icons/mark.ts';
import { encodePng } from '../../src/icons/png.ts';

/** The chunks of a PNG, with their sums checked. */
const chunksOf = (png: Buffer): { type: string; data: Buffer }[] => {
  const chunks: { type: string; data: Buffer }[] = [];
  for (let at = 8; at < png.length;) {
    const length = png.readUInt32BE(at);
    const named = png.subarray(at + 4, at + 8 + length);
    expect(png.readUInt32BE(at + 8 + length)).toBe(crc32(named));
    chunks.push({ type: named.subarray(0, 4).toString('latin1'), data: named.subarray(4) });
    at += 12 + length;
  }
  return chunks;
};

test('a picture is written so that its pixels come back', () => {
  const picture = drawMark(32, 20, 1);
  const [header, data, end] = chunksOf(encodePng(picture));
  expect([header?.type, data?.type, end?.type]).toEqual(['IHDR', 'IDAT', 'IEND']);
  expect(header?.data.readUInt32BE(0)).toBe(32);
  expect(header?.data.readUInt32BE(4)).toBe(20);
  const raw = inflateSync(data?.data ?? Buffer.alloc(0));
  const rows = Array.from({ length: 20 }, (_, y) => raw.subarray(y * 97 + 1, (y + 1) * 97));
  expect(Buffer.concat(rows)).toEqual(Buffer.from(picture.rgb));
});

test('the mark is drawn where its square says', () => {
  const { rgb } = drawMark(32, 32, 1);
  const at = (x: number, y: number): number[] => [...rgb.subarray((y * 32 + x) * 3).subarray(0, 3)];
  const paper = [0xfa, 0xf7, 0xef];
  const ink = [0x1c, 0x1a, 0x16];
  expect(at(0, 0)).toEqual(paper);
  expect(at(13, 10)).toEqual(ink);
  expect(at(19, 10)).toEqual(paper);
  expect(at(19, 6)).toEqual(ink);
  expect(at(4, 16)).toEqual(ink);
});
