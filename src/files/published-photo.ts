import { basename } from 'node:path';
import sharp from 'sharp';

const WIDEST = 1280;

export interface PublishedPhoto {
  /** Name under `/trials/<id>/photos/`. */
  readonly name: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly width: number;
  readonly height: number;
}

/**
 * A picture as it is published: encoded anew without the place, time and camera that phones write into
 * it, turned upright, at most 1280 pixels wide.
 *
 * @param path of the picture as taken
 * @throws {Error} where the file is no picture that can be read
 */
export async function publishedPhoto(path: string): Promise<PublishedPhoto> {
  const { data, info } = await sharp(path)
    .autoOrient()
    .resize({ width: WIDEST, withoutEnlargement: true })
    .webp({ quality: 76 })
    .toBuffer({ resolveWithObject: true });
  return { name: `${basename(path)}.webp`, bytes: new Uint8Array(data), width: info.width, height: info.height };
}
