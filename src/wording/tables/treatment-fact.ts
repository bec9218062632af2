import type { Treatment } from '../../trial/trial.ts';
import type { Words } from '../words.ts';

/** "Soaked; soaked for 24 h; in its own cup with 40 ml of water", "Dry (control)": what one treatment was. */
export function treatmentFact(words: Words, { label, control, soakHours, handling }: Treatment): string {
  const soak = soakHours === null ? null : words.say('repeat.soak', { hours: words.number(soakHours) });
  const named = control ? `${label} (${words.ui['report.control']})` : label;
  return [named, soak, handling].filter(Boolean).join('; ');
}
