import { join } from 'node:path';
import sharp from 'sharp';
import type { Photo, Trial } from '../trial/trial.ts';
import { toldTrial } from '../archive/told-trial.ts';
import { arrangedPhotos } from './arranged-photos.ts';
import { publishedPhoto, type PublishedFilePhoto } from './published-photo.ts';
import { trialFolder } from './trial-folder.ts';

export interface ShownPhoto extends Photo {
  readonly files: readonly PublishedFilePhoto[];
  /** The whole of a picture that is cut to be compared; those of `files` where it is not cut. */
  readonly whole: readonly PublishedFilePhoto[];
  /** Id of the treatment where it may be told. */
  readonly treatment: string | null;
}

/** The pictures of a trial by day as they are published: those that stand side by side cut to one shape. */
export async function shownPhotos(
  trial: Trial,
): Promise<readonly { readonly day: number | null; readonly groups: readonly (readonly ShownPhoto[])[] }[]> {
  const told = toldTrial(trial);
  const at = (photo: Photo) => join(trialFolder(trial.id), photo.file);
  return Promise.all(
    arrangedPhotos(told).map(async ({ day, groups }) => ({
      day,
      groups: await Promise.all(
        groups.map(async (group) => {
          const ratio = group.length > 1 && group[0] ? between(await shapeOf(at(group[0]))) : null;
          return Promise.all(
            group.map(async (photo) => {
              const whole = await publishedPhoto(at(photo));
              const fits = ratio === null || Math.abs((await shapeOf(at(photo))) - ratio) < 0.01;
              const files = fits ? whole : await publishedPhoto(at(photo), ratio);
              const treatment = told.sowings.find(({ id }) => id === photo.sowing)?.treatment ?? null;
              return { ...photo, files, whole, treatment };
            }),
          );
        }),
      ),
    })),
  );
}

/** Kept from extremes, so that what is cut off for comparing is little. */
const between = (shape: number) => Math.min(4 / 3, Math.max(3 / 4, shape));

/** Width over height of a picture. */
async function shapeOf(path: string): Promise<number> {
  const { autoOrient } = await sharp(path).metadata();
  return autoOrient.width / autoOrient.height;
}
