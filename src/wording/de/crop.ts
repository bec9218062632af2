/** Crops are named in trial.yaml in the site's own language; nouns begin large in German. */
export const crop = (name: string): string => name.charAt(0).toUpperCase() + name.slice(1);
