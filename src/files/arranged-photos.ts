import type { Photo, Trial } from '../trial/trial.ts';

/** Pictures that stand side by side: one of each treatment of a lot on one day, the control first; else one alone. */
export type PhotoGroup = readonly Photo[];

export interface PhotoDay {
  /** Null: not known. */
  readonly day: number | null;
  readonly groups: readonly PhotoGroup[];
}

/**
 * The pictures of a trial by day, those of different treatments of one lot beside each other.
 *
 * @param trial as it may be told now: in a trial still counted blind no picture names a treatment
 */
export function arrangedPhotos(trial: Trial): readonly PhotoDay[] {
  const days = [...new Set(trial.photos.map(({ day }) => day))].sort((a, b) => (a ?? Infinity) - (b ?? Infinity));
  return days.map((day) => ({ day, groups: groupsOf(trial, trial.photos.filter((photo) => photo.day === day)) })); // prettier-ignore
}

function groupsOf(trial: Trial, photos: readonly Photo[]): readonly PhotoGroup[] {
  const order = trial.treatments.toSorted((a, b) => Number(b.control) - Number(a.control)).map(({ id }) => id);
  const sowingOf = ({ sowing }: Photo) => trial.sowings.find(({ id }) => id === sowing);
  const paired = trial.lots.flatMap(({ id }) => {
    const shown = order
      .map((treatment) =>
        photos.filter((photo) => sowingOf(photo)?.lot === id && sowingOf(photo)?.treatment === treatment),
      ) // prettier-ignore
      .filter((all) => all.length > 0);
    const rows = shown.length < 2 ? 0 : Math.min(...shown.map((all) => all.length));
    return Array.from({ length: rows }, (_, row) => shown.flatMap((all) => all[row] ?? []));
  });
  const alone = photos.filter((photo) => !paired.some((group) => group.includes(photo)));
  return [...paired, ...alone.map((photo) => [photo])];
}
