import type { Sowing } from '../../trial/trial.ts';

export type PlaceKind = 'place' | 'row' | 'column';

/** One tray, or one sowing that stands alone, and where it stood. */
export interface Placed {
  readonly block: string | null;
  readonly place: string | null;
}

/**
 * Where the trays of some sowings stood: rows and columns where every position reads like `2-3`, else
 * places by their text, written alike whatever their capitals. Sowings in one tray stand in one place.
 */
export function placesOf(
  treated: readonly Sowing[],
  control: readonly Sowing[],
): readonly { readonly kind: PlaceKind; readonly treated: readonly Placed[]; readonly control: readonly Placed[] }[] {
  const grid = [...treated, ...control].every(({ position }) => position !== null && GRID.test(position));
  const spelling = new Map<string, string>();
  const text = (position: string) => {
    const key = position.trim().toLowerCase();
    if (!spelling.has(key)) spelling.set(key, position.trim());
    return spelling.get(key) ?? key;
  };
  const part = (index: number) => (position: string) => GRID.exec(position)?.[index] ?? position;
  const kinds = grid
    ? ([
        ['row', part(1)],
        ['column', part(2)],
      ] as const)
    : ([['place', text]] as const);

  return kinds.map(([kind, placeOf]) => {
    const placed = (sowings: readonly Sowing[]) =>
      onePerTray(sowings).map(({ block, position }) => ({
        block,
        place: position === null ? null : placeOf(position),
      }));
    return { kind, treated: placed(treated), control: placed(control) };
  });
}

const GRID = /^\s*(\d+)\s*[-–]\s*(\d+)\s*$/;

function onePerTray(sowings: readonly Sowing[]): readonly Sowing[] {
  const seen = new Set<string>();
  return sowings.filter(({ tray }) => {
    if (tray === null) return true;
    const isNew = !seen.has(tray);
    seen.add(tray);
    return isNew;
  });
}
