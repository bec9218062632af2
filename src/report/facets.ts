import { FINDING_KINDS } from '../wording/finding-kind.ts';
import type { Words } from '../wording/words.ts';
import { FACETS, facetValues, type FacetId, type Value } from './facet-values.ts';
import type { Published } from './front-page.ts';

export interface FacetValue extends Value {
  readonly trials: readonly Published[];
}

export interface Facet {
  readonly id: FacetId;
  readonly values: readonly FacetValue[];
}

/** Every facet with the values that occur and the trials under each, trials in the order given. */
export function facets(published: readonly Published[], words: Words): readonly Facet[] {
  return FACETS.map((id) => ({ id, values: sorted(id, valuesOf(id, published, words), words) }));
}

function valuesOf(id: FacetId, published: readonly Published[], words: Words): readonly FacetValue[] {
  const found = new Map<string, { names: string[]; trials: Set<Published> }>();
  for (const entry of published) {
    for (const { address, name } of facetValues(id, entry, words)) {
      const value = found.get(address) ?? { names: [], trials: new Set() };
      value.names.push(name);
      value.trials.add(entry);
      found.set(address, value);
    }
  }
  return [...found].map(([address, { names, trials }]) => ({ address, name: commonest(names), trials: [...trials] }));
}

/** Of names that share an address, such as "Leek" and "leek", the one written most; of equals the first by code. */
function commonest(names: readonly string[]): string {
  const count = (name: string) => names.filter((other) => other === name).length;
  const [first = ''] = [...new Set(names)].sort((a, b) => count(b) - count(a) || (a < b ? -1 : 1));
  return first;
}

const FIXED: Partial<Record<FacetId, readonly string[]>> = {
  verdict: FINDING_KINDS,
  status: ['growing', 'planned', 'finished', 'abandoned'],
};

function sorted(id: FacetId, values: readonly FacetValue[], words: Words): readonly FacetValue[] {
  const order = FIXED[id];
  if (order) return [...values].sort((a, b) => order.indexOf(a.address) - order.indexOf(b.address));
  if (id === 'year') return [...values].sort((a, b) => (a.address < b.address ? 1 : -1));
  const { compare } = new Intl.Collator(words.language);
  return [...values].sort((a, b) => compare(a.name, b.name) || (a.address < b.address ? -1 : 1));
}
