import type { FileProblems } from './file-problems.ts';
import type { TrialYaml } from './read-trial-yaml.ts';
import { shown } from './text/shown.ts';
import { unknownName } from './text/unknown-name.ts';

/** Treatments have ids of their own, and exactly one of them is the control. */
export function checkTreatments({ yaml, given }: TrialYaml, report: FileProblems): void {
  const { treatments } = given;
  if (!treatments) return;
  const ids = treatments.map(({ id }) => id);
  ids.forEach((id, index) => {
    if (ids.indexOf(id) === index) return;
    report.error(yaml.place(['treatments', index, 'id']), {
      rule: 'given-twice',
      message: `two treatments have the id ${shown(id)}`,
      remedy: 'Give each treatment its own id.',
    });
  });

  const controls = treatments.flatMap(({ control }, index) => (control ? [index] : []));
  const [, second] = controls;
  if (controls.length === 0) {
    report.error(yaml.place(['treatments']), {
      rule: 'no-control',
      message: 'no treatment is the control, so there is nothing to compare with',
      remedy: 'Write "control: true" below the treatment that the others are compared with.',
    });
  } else if (second !== undefined) {
    const named = controls.map((index) => shown(ids[index] ?? '')).join(' and ');
    report.error(yaml.place(['treatments', second, 'control']), {
      rule: 'two-controls',
      message: `${named} are both the control; every treatment is compared with one control`,
      remedy: 'Keep "control: true" at one of them.',
    });
  }

  for (const id of Object.keys(given.storage?.left ?? {})) {
    if (!ids.includes(id)) {
      report.error(yaml.place(['storage', 'left', id]), unknownName('treatment', id, 'trial.yaml', ids));
    }
  }
}
