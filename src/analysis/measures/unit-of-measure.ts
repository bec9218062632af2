import type { Outcome, Trial } from '../../trial/trial.ts';

/** Unit of an outcome's estimates; that of differences is `unitOfDifference`. Empty for a trait without one. */
export function unitOfMeasure(trial: Trial, { measure, column }: Outcome): string {
  switch (measure) {
    case 'germination':
    case 'storage':
      return '%';
    case 'maguire':
      return 'seeds per day per 100 sown';
    case 'trait':
      return trial.traits.find((trait) => trait.column === column)?.unit ?? '';
    default:
      return 'days';
  }
}
