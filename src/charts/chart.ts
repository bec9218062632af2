import type { TopLevelSpec } from 'vega-lite';

/** Picture, sentence and numbers of one chart in one value. */
export interface Chart {
  /** Stable kind in kebab-case: `germination`, `differences`, `units`, `trait`, `survival`, `masses`. */
  readonly kind: string;
  /** The finding, as title. */
  readonly title: string;
  /** What is plotted. */
  readonly subtitle: string;
  /** Text alternative with the values. */
  readonly description: string;
  readonly table: {
    readonly head: readonly string[];
    readonly rows: readonly (readonly string[])[];
    /** How many columns from the first on name a row; 1 where it is not given. */
    readonly names?: number;
  };
  /** What is drawn and left to another table: the counts of each sowing. */
  readonly further?: 'counts';
  readonly spec: TopLevelSpec;
}
