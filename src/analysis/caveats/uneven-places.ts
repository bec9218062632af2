import type { Trial } from '../../trial/trial.ts';
import { unevenLayout } from '../../statistics/layout/uneven-layout.ts';
import type { Placed } from './places-of.ts';

/** Trays of each treatment at each place, and how uneven that is. */
export interface UnevenPlaces {
  readonly places: readonly { readonly place: string; readonly treatment: number; readonly control: number }[];
  readonly unevenness: number;
  /** Share of random layouts at least as uneven; null where places were not drawn, or too many to count. */
  readonly chance: number | null;
}

/**
 * How unevenly two treatments are spread over places. Where places were drawn at random, how often a draw is
 * as uneven: within blocks where the draw was. Null where a place is not recorded or hardly any is shared
 * (more places than half the trays).
 */
export function unevenPlaces(
  { sowing }: Trial,
  treated: readonly Placed[],
  control: readonly Placed[],
): UnevenPlaces | null {
  const trays = [...treated, ...control];
  const names = [...new Set(trays.map(({ place }) => place))].filter((place) => place !== null).toSorted();
  const isShared = names.length >= 2 && names.length <= trays.length / 2;
  if (!isShared || trays.some(({ place }) => place === null)) return null;

  const inBlocks = sowing.assignment === 'random-in-blocks';
  const blocks = [...new Set(trays.map(({ block }) => (inBlocks ? block : null)))];
  const counts = (side: readonly Placed[], block: string | null) =>
    names.map((name) => side.filter((tray) => tray.place === name && (!inBlocks || tray.block === block)).length);
  const { unevenness, chance } = unevenLayout(
    blocks.map((block) => ({ treated: counts(treated, block), control: counts(control, block) })),
  );

  const count = (side: readonly Placed[], name: string) => side.filter(({ place }) => place === name).length;
  return {
    places: names.map((place) => ({ place, treatment: count(treated, place), control: count(control, place) })),
    unevenness,
    chance: inBlocks || sowing.assignment === 'random' ? chance : null,
  };
}
