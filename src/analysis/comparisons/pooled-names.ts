import type { Comparison } from '../analysis.ts';
import type { Pair } from '../units/lot-units.ts';
import type { Context } from './context.ts';
import { pairNames, type Names } from './pair-names.ts';

/** Names of a comparison pooled over these lots; units are those of all of them. */
export function pooledNames(pairs: readonly Pair[], context: Context): Names & Pick<Comparison, 'lots'> {
  const names = pairs.map((pair) => pairNames(pair, context));
  const kinds = names.map(({ units }) => units.kind);
  const add = (side: 'treatment' | 'control') => names.reduce((sum, { units }) => sum + units[side], 0);
  return {
    lot: 'all',
    treatment: pairs[0]?.treated.treatment ?? '',
    control: pairs[0]?.control.treatment ?? '',
    stored: pairs[0]?.stored ?? null,
    unit: context.unit,
    lots: pairs.map(({ lot }) => lot),
    units: {
      treatment: add('treatment'),
      control: add('control'),
      kind: kinds.includes('batch') ? 'batch' : kinds.includes('tray') ? 'tray' : 'sowing',
    },
  };
}
