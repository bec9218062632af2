import type { Trial } from '../../trial/trial.ts';
import { counted } from './counted.ts';

/** "Porree", "Porree ‚Hilari‘"; with its id where another lot would read the same; "alle 3 Partien" for `all`. */
export function lotName(trial: Trial, lot: string): string {
  if (lot === 'all') return `alle ${counted(trial.lots.length, 'lot')}`;
  const found = trial.lots.find(({ id }) => id === lot);
  if (!found) return lot;
  const name = nameOf(found);
  return trial.lots.some((other) => other !== found && nameOf(other) === name) ? `${name} (${lot})` : name;
}

const nameOf = ({ crop, cultivar }: Trial['lots'][number]) => {
  const capital = crop.charAt(0).toUpperCase() + crop.slice(1);
  return cultivar === null ? capital : `${capital} ‚${cultivar}‘`;
};
