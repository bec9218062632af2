import type { Caveat } from '../../analysis/analysis.ts';
import type { Trial } from '../../trial/trial.ts';
import type { Words } from '../words.ts';

/**
 * The sentences of caveats of one kind, lot by lot in the trial's order; what several lots have alike is said
 * once and names them: "Dill, Chives and Sage: There was only one tray of each."
 */
export function caveatLines(words: Words, trial: Trial, caveats: readonly Caveat[]): readonly string[] {
  const lots = trial.lots.map(({ id }) => ({ id, opening: `${words.lotName(trial, id)}: ` }));
  const told = caveats.map(({ lot, text }) => {
    const place = lots.findIndex(({ id, opening }) => id === lot && text.startsWith(opening));
    return { place, sentence: text.slice(lots[place]?.opening.length ?? 0) };
  });
  const alike = Map.groupBy(
    told.toSorted((a, b) => a.place - b.place),
    ({ sentence }) => sentence,
  );
  return [...alike].map(([sentence, of]) => {
    const named = lots.filter((_, index) => of.some(({ place }) => place === index));
    const names = named.map(({ id }) => words.lotName(trial, id));
    return names.length === 0 ? sentence : `${words.list(names)}: ${sentence}`;
  });
}
