import type { TopLevelSpec } from 'vega-lite';

/** Types of Vega-Lite for the parts that charts are made of. */
export type Layers = Extract<TopLevelSpec, { layer: unknown }>['layer'];
export type Encoding = NonNullable<Extract<TopLevelSpec, { mark: unknown }>['encoding']>;

/** Encodings that take a row's field as it stands: a colour, dash or shape; a place in the unit of the drawing. */
export const raw = <Field extends string>(field: Field) =>
  ({ field, type: 'nominal', scale: null, legend: null }) as const;
export const place = <Field extends string>(field: Field) =>
  ({ field, type: 'quantitative', scale: null, axis: null }) as const;
