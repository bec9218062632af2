import type { FileProblems } from './file-problems.ts';
import type { TrialYaml } from './read-trial-yaml.ts';
import { eventOf } from './tables/event-of.ts';
import type { SowingNames } from './tables/sowing-names.ts';
import { unknownName } from './text/unknown-name.ts';
import type { Event } from './trial.ts';

/** Deviations, then events, of trial.yaml, their sowings by id. */
export function readYamlEvents({ yaml, given }: TrialYaml, report: FileProblems, names: SowingNames | null): Event[] {
  const deviations = given.deviations ?? [];
  const events = (given.events ?? []).map((event) => ({ ...event, action: 'care' as const }));
  return [
    ...deviations.map((event, index) => read(event, ['deviations', index])),
    ...events.map((event, index) => read(event, ['events', index])),
  ];

  function read(event: (typeof deviations)[number] | (typeof events)[number], path: readonly PropertyKey[]): Event {
    const { day = null, date = null, sowings = [], what, action } = event;
    const ids = sowings.flatMap((name, index) => {
      const id = names === null ? name : names.idOf(name);
      if (id !== undefined) return [id];
      const place = yaml.place([...path, 'sowings', index]);
      report.error(place, unknownName('sowing', name, 'sowings.csv', names?.names ?? []));
      return [];
    });
    const place = (field: string) => yaml.place([...path, field]);
    if (ids.length < sowings.length) return { day, date, sowings: ids, what, action };
    return eventOf({ day, date, sowings: ids, what, action }, names, given.sown ?? null, report, place);
  }
}
