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
  readonly table: { readonly head: readonly string[]; readonly rows: readonly (readonly string[])[] };
  readonly spec: TopLevelSpec;
}
