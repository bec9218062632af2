import type { Person, Site, Trial } from '../trial/trial.ts';

/** What a citation of a trial is made of. */
export interface Citation {
  readonly id: string;
  readonly title: string;
  readonly question: string;
  readonly authors: readonly Person[];
  readonly publisher: string;
  readonly address: string;
  readonly doi: string | null;
  readonly licence: string;
  readonly crops: readonly string[];
  /** Of the last change, else of the end or the sowing: the day from which the report stands as it is; null while planned. */
  readonly date: string | null;
  /** 1 as first published, one more for every entry under `changes`. */
  readonly version: string;
}

/** @param address of the report */
export function citation(trial: Trial, site: Site, address: string): Citation {
  const dates = trial.changes.map(({ date }) => date).toSorted();
  return {
    id: trial.id,
    title: trial.title,
    question: trial.question,
    authors: trial.authors,
    publisher: site.name,
    address,
    doi: trial.doi,
    licence: trial.licence ?? site.licence,
    crops: [...new Set(trial.lots.flatMap(({ crop, species }) => [crop, species]))],
    date: dates.at(-1) ?? trial.finished ?? trial.sown,
    version: String(1 + dates.length),
  };
}
