import type { FileProblems } from '../file-problems.ts';
import { checkTrialYaml } from '../check-trial-yaml.ts';
import { planRequest, type PlanRequest } from '../schema/plan-request.ts';
import type { Lot, Person, Site } from '../trial.ts';
import { checkYaml } from '../yaml/check-yaml.ts';
import type { YamlFile } from '../yaml/read-yaml.ts';
import { checkPlanRequest } from './check-plan-request.ts';

/**
 * What is to be planned, from a YAML file or from options put together like one, checked as trial.yaml will be and
 * for what a plan needs besides. Null where it was refused; every reason stands in the report.
 */
export function readPlanRequest(
  yaml: Pick<YamlFile, 'value' | 'place'>,
  report: FileProblems,
  site: Pick<Site, 'lots' | 'people'>,
): PlanRequest | null {
  const file: YamlFile = { ...yaml, text: '', encoding: 'UTF-8' };
  const request = checkYaml(file, planRequest, report);
  if (request === null) return null;
  const known = <Entry>(own: object | undefined, ofSite: Readonly<Record<string, Entry>>) =>
    new Map<string, Entry>(Object.entries({ ...own, ...ofSite }));
  checkTrialYaml({ yaml: file, whole: null, given: { ...request, status: 'planned' } }, report, {
    lots: known<Lot>(request.new_lots, site.lots),
    people: known<Person>(request.new_people, site.people),
    unsure: new Set(),
    files: [],
  });
  checkPlanRequest(request, yaml.place, report);
  return report.hasErrors ? null : request;
}
