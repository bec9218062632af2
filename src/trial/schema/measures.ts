/** What an outcome compares, per sowing. */
export const MEASURES = ['germination', 't50', 'mgt', 'maguire', 'spread', 'trait', 'moisture', 'storage'] as const;
