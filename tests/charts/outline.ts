import type { Chart } from '../../src/charts/chart.ts';

/** A specification for review in a snapshot: a line for each layer and for each row of data. */
export function outline({ spec }: Chart): string[] {
  const { layer, datasets, params = [], ...frame } = spec as typeof spec & { readonly layer: readonly object[] };
  return [
    JSON.stringify(frame),
    ...params.map((param) => JSON.stringify(param)),
    ...layer.map((part) => JSON.stringify(part)),
    ...Object.entries(datasets ?? {}).flatMap(([name, rows]) =>
      (rows as readonly object[]).map((row) => `${name} ${JSON.stringify(row, rounded)}`),
    ),
  ];
}

const rounded = (_: string, value: unknown) => (typeof value === 'number' ? Number(value.toFixed(3)) : value);
