import { seededRandom } from '../statistics/random.ts';
import { shuffle } from '../statistics/shuffle.ts';
import type { Sowing } from '../trial/trial.ts';

/**
 * The sowings of a trial, to be sown again in places drawn at random: the same lots, treatments and numbers of
 * seeds, new ids in the order of the places. A tray that several sowings share is drawn as one; places are drawn
 * within each block and each time in storage, where there are such.
 *
 * @param seed text from which anyone can draw the same layout again (seededRandom)
 */
export function repeatSowings(sowings: readonly Sowing[], seed: string): readonly Sowing[] {
  const random = seededRandom(seed);
  const groups = Map.groupBy(sowings, ({ block, stored }) => JSON.stringify([block, stored]));
  const containers = [...groups.values()].flatMap((group) => {
    const trays = Map.groupBy(group, ({ id, tray }) => JSON.stringify([tray, tray === null ? id : null]));
    return shuffle([...trays.values()], random).map((within) => shuffle(within, random));
  });
  const placed = containers.flatMap((within, index) => {
    const position = String(index + 1);
    return within.map((sowing) => ({ ...sowing, position, tray: sowing.tray === null ? null : `t${position}` }));
  });
  return placed.map((sowing, index) => ({ ...sowing, id: `s${index + 1}`, label: null, sown: null }));
}
