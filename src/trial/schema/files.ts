import { captionsFile } from './captions.ts';
import { countsRow } from './counts.ts';
import { eventsRow } from './events.ts';
import { fatesRow } from './fates.ts';
import { keyRow } from './key.ts';
import { lotsFile } from './lots.ts';
import { measurementsRow } from './measurements.ts';
import { peopleFile } from './people.ts';
import { planFile } from './plan.ts';
import { questionsFile } from './questions.ts';
import { siteFile } from './site.ts';
import { sowingsRow } from './sowings.ts';
import { trialFile } from './trial.ts';
import { weighingsRow } from './weighings.ts';

/** Every YAML file of the format with its schema, in the order in which the data-format page tells them. */
export const YAML_FILES = {
  'site.yaml': siteFile,
  'people.yaml': peopleFile,
  'lots.yaml': lotsFile,
  'questions.yaml': questionsFile,
  'trial.yaml': trialFile,
  'plan.yaml': planFile,
  'photos/captions.yaml': captionsFile,
} as const;

/** Every table of a trial with the schema of one row. */
export const TABLE_FILES = {
  'sowings.csv': sowingsRow,
  'key.csv': keyRow,
  'counts.csv': countsRow,
  'fates.csv': fatesRow,
  'measurements.csv': measurementsRow,
  'weighings.csv': weighingsRow,
  'events.csv': eventsRow,
} as const;
