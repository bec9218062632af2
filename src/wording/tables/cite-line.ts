import type { Site, Trial } from '../../trial/trial.ts';
import type { Words } from '../words.ts';

/** Who, year, title, where: "Mara Holt and Jon Reed (2026). Jar or packet. Seed Bench. https://… CC-BY-4.0." */
export function citeLine(words: Words, trial: Trial, site: Site, address: string): string {
  const year = (trial.finished ?? trial.sown)?.slice(0, 4);
  const who = words.list(trial.authors.map(({ name }) => name));
  const where = trial.doi ? `https://doi.org/${trial.doi}` : address;
  return `${who}${year ? ` (${year})` : ''}. ${trial.title}. ${site.name}. ${where}. ${trial.licence ?? site.licence}.`;
}
