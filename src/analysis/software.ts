import type { Analysis } from './analysis.ts';

/** What made an analysis; the version is that of package.json. */
export const SOFTWARE: Analysis['software'] = { name: 'fairsown', version: '0.1.0' };
