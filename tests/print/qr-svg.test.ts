import { expect, test } from 'vitest';
import { qrSvg } from '../../src/print/pictures/qr-svg.ts';

/** The dark modules of the drawing, as rows of booleans. */
function modules(svg: string): boolean[][] {
  const size = Number(/viewBox="0 0 (\d+)/.exec(svg)?.[1]);
  const rows = Array.from({ length: size }, () => Array<boolean>(size).fill(false));
  for (const [, x, y] of svg.matchAll(/M(\d+) (\d+)h1v1h-1z/g)) rows[Number(y)]![Number(x)] = true;
  return rows;
}

const FINDER = ['1111111', '1000001', '1011101', '1011101', '1011101', '1000001', '1111111'];

test('a QR code has a light edge of four modules and finder patterns in three corners', () => {
  const rows = modules(qrSvg('https://wennoby.example/trials/parsley-soaked-a-day/'));
  const size = rows.length;
  expect((size - 8 - 17) % 4).toBe(0); // ISO/IEC 18004: 17 + 4 × version
  const at = (top: number, left: number) =>
    FINDER.map((_, y) => FINDER.map((__, x) => (rows[top + y]?.[left + x] ? '1' : '0')).join(''));
  expect(at(4, 4)).toEqual(FINDER);
  expect(at(4, size - 11)).toEqual(FINDER);
  expect(at(size - 11, 4)).toEqual(FINDER);
  for (let edge = 0; edge < 4; edge++) {
    expect(rows[edge]).not.toContain(true);
    expect(rows.map((row) => row[edge])).not.toContain(true);
    expect(rows.map((row) => row[size - 1 - edge])).not.toContain(true);
  }
});

test('the same address gives the same drawing, another one another', () => {
  expect(qrSvg('https://example.org/a/')).toBe(qrSvg('https://example.org/a/'));
  expect(qrSvg('https://example.org/a/')).not.toBe(qrSvg('https://example.org/b/'));
});
