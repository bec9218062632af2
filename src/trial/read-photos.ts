import type { FolderProblems } from './folder-problems.ts';
import { WHOLE_FILE } from './file-problems.ts';
import type { Refusal } from './refusal.ts';
import { captionsFile } from './schema/captions.ts';
import type { SowingNames } from './tables/sowing-names.ts';
import { dateRefusal } from './text/date-refusal.ts';
import { daysBetween } from './text/days-between.ts';
import { didYouMean } from './text/did-you-mean.ts';
import { isPortableName } from './text/is-portable-name.ts';
import { shown } from './text/shown.ts';
import { unknownName } from './text/unknown-name.ts';
import type { Photo } from './trial.ts';
import { checkYaml } from './yaml/check-yaml.ts';
import { readYaml } from './yaml/read-yaml.ts';

/** Kinds that are published. */
export const PICTURE = /\.(jpe?g|png|webp)$/i;

/** What a phone's own picture format is answered with. */
export const HEIC: Refusal = {
  rule: 'heic',
  message: 'this is a HEIC picture, which few browsers show; it cannot be published',
  remedy:
    'Save it as JPEG. Most phones take JPEG in place of HEIC once their camera is set to the more compatible format.',
};

/**
 * Pictures of the trial: `photos/<day or date>-<sowing or anything>.jpg`, with captions where given. Only
 * their names are read here.
 */
export function readPhotos(
  files: ReadonlyMap<string, Uint8Array>,
  problems: FolderProblems,
  names: SowingNames | null,
  sown: string | null,
): Photo[] {
  const inFolder = [...files.keys()].filter((name) => name.startsWith('photos/')).toSorted();
  const pictures = inFolder.filter((name) => PICTURE.test(name));
  for (const name of inFolder) {
    const bare = name.slice('photos/'.length);
    if (PICTURE.test(name) && (!isPortableName(bare) || /[%#]/.test(bare))) {
      problems.in(name).error(WHOLE_FILE, {
        rule: 'picture-name',
        message: 'the name of this picture holds a sign that cannot stand in every address or on every computer',
        remedy:
          'Rename it with letters, digits, hyphens and points, such as 8-s01.jpg; change photos/captions.yaml as well.',
      });
    }
    if (PICTURE.test(name) || name === 'photos/captions.yaml' || name.includes('/.')) continue;
    if (/\.(heic|heif|hif)$/i.test(name)) {
      problems.in(name).error(WHOLE_FILE, HEIC);
      continue;
    }
    problems.in(name).warning(WHOLE_FILE, {
      rule: 'not-a-picture',
      message: 'this is no picture that a browser shows; it is not published',
      remedy: 'Save pictures as JPEG, PNG or WebP.',
    });
  }

  const captions = readCaptions(files.get('photos/captions.yaml'), problems, names, pictures);
  return pictures.map((file) => {
    const name = file.slice('photos/'.length);
    const given = Object.hasOwn(captions, name) ? captions[name] : undefined;
    const [, when = '', rest = ''] = /^(\d{4}-\d{2}-\d{2}|\d+(?:\.\d+)?)(?:-(.*))?\.[^.]+$/.exec(name) ?? [];
    const sowing = names?.idOf(given?.sowing ?? rest) ?? null;
    const start = (sowing === null ? null : names?.sowing(sowing)?.sown) ?? sown;
    return {
      file,
      caption: given?.caption ?? null,
      alt: given?.alt ?? null,
      sowing,
      day: given?.day ?? dayIn(when, start),
    };
  });
}

function dayIn(when: string, sown: string | null): number | null {
  if (!when.includes('-')) return when === '' ? null : Number(when);
  return sown === null || dateRefusal(when) !== null ? null : daysBetween(sown, when);
}

function readCaptions(
  bytes: Uint8Array | undefined,
  problems: FolderProblems,
  names: SowingNames | null,
  pictures: readonly string[],
) {
  const report = problems.in('photos/captions.yaml');
  const yaml = bytes && readYaml(bytes, report);
  const captions = (yaml && checkYaml(yaml, captionsFile, report)) ?? {};
  for (const [name, { sowing }] of Object.entries(captions)) {
    if (yaml && !pictures.includes(`photos/${name}`)) {
      const there = pictures.map((file) => file.slice('photos/'.length));
      report.warning(yaml.place([name]), {
        rule: 'unknown-photo',
        message: `there is no picture ${shown(name)} in photos/`,
        remedy: didYouMean(name, there, 'picture'),
      });
    }
    if (yaml && sowing !== undefined && names && names.idOf(sowing) === undefined) {
      report.error(yaml.place([name, 'sowing']), unknownName('sowing', sowing, 'sowings.csv', names.names));
    }
  }
  for (const picture of pictures) {
    const name = picture.slice('photos/'.length);
    const given = Object.hasOwn(captions, name);
    if (given && captions[name]?.alt !== undefined) continue;
    // Where there are captions, the warning stands at the picture's own, or at the file that lacks one.
    const place = yaml ? yaml.place(given ? [name] : []) : WHOLE_FILE;
    problems.in(yaml ? 'photos/captions.yaml' : picture).warning(place, {
      rule: 'alt-missing',
      message: `the picture ${shown(name)} has no text for readers who cannot see it`,
      remedy: `Say in a sentence what it shows, in photos/captions.yaml: under "${name}:", the line "alt: …".`,
    });
  }
  return captions;
}
