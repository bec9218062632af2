import type { Trial } from '../../trial/trial.ts';

/** The season to which a trial belongs: the year in which it was first sown; null before sowing. */
export const seasonOf = ({ sown }: Trial): string | null => sown?.slice(0, 4) ?? null;
