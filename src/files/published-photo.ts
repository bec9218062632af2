import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { basename } from 'node:path';
import sharp from 'sharp';
import { buildKeeper } from './kept/build-keeper.ts';

const WIDTHS = [640, 1280] as const;
const FORMATS = ['avif', 'webp'] as const;

export type PhotoFormat = (typeof FORMATS)[number];

export interface PublishedFilePhoto {
  /** Name under `/trials/<id>/photos/`. */
  readonly name: string;
  readonly format: PhotoFormat;
  readonly width: number;
  readonly height: number;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

/**
 * A picture as it is published: encoded anew in two formats and at most two widths, without the place, time and camera
 * that phones write into it, turned upright, at most 1280 pixels wide. Kept between builds.
 *
 * @param path  of the picture as taken
 * @param ratio width over height to which it is cut, from its middle; null: whole
 * @returns from narrow to wide, format by format
 * @throws {Error} where the file is no picture that can be read
 */
export async function publishedPhoto(
  path: string,
  ratio: number | null = null,
): Promise<readonly PublishedFilePhoto[]> {
  const original = await readFile(path);
  const digest = createHash('sha256').update(original).digest('hex');
  const { sizes, cut } = await sizesOf(original, ratio);
  return Promise.all(
    FORMATS.flatMap((format) => sizes.map((size) => ({ format, ...size }))).map(async ({ format, width, height }) => {
      const made = await buildKeeper().bytes('photo', `${digest} ${width} ${height} ${format}`, () =>
        encoded(original, width, height, format),
      );
      return { name: nameOf(path, cut, width, format), format, width, height, bytes: new Uint8Array(made) };
    }),
  );
}

/**
 * The largest of the files of a whole picture, in the format that every browser shows.
 *
 * @throws {Error} where the file is no picture that can be read
 */
export async function largestPhoto(path: string): Promise<Pick<PublishedFilePhoto, 'name' | 'width' | 'height'>> {
  const { sizes, cut } = await sizesOf(await readFile(path), null);
  const { width, height } = sizes.at(-1) ?? { width: 1, height: 1 };
  return { name: nameOf(path, cut, width, 'webp'), width, height };
}

/** From narrow to wide. */
async function sizesOf(original: Buffer, ratio: number | null) {
  const { autoOrient } = await sharp(original).metadata();
  const shape = ratio ?? autoOrient.width / autoOrient.height;
  const widest = Math.min(autoOrient.width, Math.round(autoOrient.height * shape));
  const widths = new Set([...WIDTHS.filter((width) => width < widest), Math.min(widest, WIDTHS[1])]);
  const sizes = [...widths].map((width) => ({ width, height: Math.max(1, Math.round(width / shape)) }));
  return { sizes, cut: ratio === null ? '' : '.alike' };
}

const nameOf = (path: string, cut: string, width: number, format: PhotoFormat): string =>
  `${basename(path)}${cut}.${width}.${format}`;

/** sharp writes no metadata unless asked to, and colours as sRGB. Of a picture with a fault what can be seen is shown. */
async function encoded(original: Buffer, width: number, height: number, format: PhotoFormat): Promise<Uint8Array> {
  const picture = sharp(original, { failOn: 'none' }).autoOrient().resize({ width, height, fit: 'cover' });
  return (format === 'avif' ? picture.avif({ quality: 50, effort: 3 }) : picture.webp({ quality: 76 })).toBuffer();
}
