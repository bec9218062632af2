import { inputsDigest } from '../../trial/inputs-digest.ts';
import type { Site, Trial } from '../../trial/trial.ts';
import type { Words } from '../words.ts';

/**
 * Who, year, title, version, where: "Mara Holt and Jon Reed (2026). Jar or packet. Version 1, digest 3f2a…. Seed
 * Bench. https://… CC-BY-4.0." The version is 1 as first published, one more for every entry under `changes`; the
 * digest is the first 12 characters of the SHA-256 of `inputs` in analysis.json as canonical JSON (RFC 8785).
 *
 * @param trial as it may be told, so that its inputs are those of the published analysis.json
 */
export function citeLine(words: Words, trial: Trial, site: Site, address: string): string {
  const year = (trial.finished ?? trial.sown)?.slice(0, 4);
  const who = words.list(trial.authors.map(({ name }) => name));
  const where = trial.doi ? `https://doi.org/${trial.doi}` : address;
  const version = words.say('cite.version', {
    version: String(1 + trial.changes.length),
    digest: inputsDigest(trial).slice(0, 12),
  });
  return `${who}${year ? ` (${year})` : ''}. ${trial.title}. ${version}. ${site.name}. ${where}. ${trial.licence ?? site.licence}.`;
}
