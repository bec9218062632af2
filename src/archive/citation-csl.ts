import type { Citation } from './citation.ts';
import { cited } from './cited.ts';

/** The citation as CSL-JSON (Citation Style Language 1.0.2), which reference managers read. */
export const citationCsl = (citation: Citation): string =>
  `${JSON.stringify(cited(citation).format('data', { format: 'object' }), null, 2)}\n`;
