import { findingKind } from '../wording/finding-kind.ts';
import type { UiKey, Words } from '../wording/words.ts';
import { addressName } from './address-name.ts';
import { findingsOf } from './findings-of.ts';
import type { Published } from './front-page.ts';

/** What the list of trials can be narrowed down by. */
export const FACETS = ['crop', 'treatment', 'measure', 'year', 'verdict', 'status'] as const;
export type FacetId = (typeof FACETS)[number];

export const FACET_NAMES: Readonly<Record<FacetId, UiKey>> = {
  crop: 'list.filterCrop',
  treatment: 'list.filterTreatment',
  measure: 'list.filterMeasure',
  year: 'list.filterYear',
  verdict: 'list.filterVerdict',
  status: 'list.filterStatus',
};

/** One value of a facet: as a step of an address, and as it is read. */
export interface Value {
  readonly address: string;
  readonly name: string;
}

/** The values of a facet that one trial falls under, several for a trial of several crops, say. */
export function facetValues(facet: FacetId, { trial, analysis }: Published, words: Words): readonly Value[] {
  const { ui } = words;
  switch (facet) {
    case 'crop':
      return trial.lots.map(({ crop }) => ({ address: addressName(crop), name: words.crop(crop) }));
    case 'treatment':
      return [{ address: trial.varies ?? 'not-stated', name: ui[`varies.${trial.varies ?? 'none'}`] }];
    case 'measure':
      return [...analysis.results, ...trial.outcomes].map(({ measure }) => ({
        address: measure,
        name: words.measureName(measure),
      }));
    case 'year':
      return [
        trial.sown === null
          ? { address: 'not-sown', name: ui['year.notSown'] }
          : { address: trial.sown.slice(0, 4), name: trial.sown.slice(0, 4) },
      ];
    case 'verdict':
      return findingsOf(words, { trial, analysis })
        .map(({ result, comparison }) => findingKind(result, comparison))
        .map((kind) => ({ address: kind, name: ui[`finding.${kind}`] }));
    case 'status':
      return [{ address: trial.status, name: ui[`status.${trial.status}`] }];
  }
}
