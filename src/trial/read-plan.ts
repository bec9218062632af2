import { parse } from 'yaml';
import { canonicalJson } from './canonical-json.ts';
import { WHOLE_FILE, type FileProblems } from './file-problems.ts';
import { planDigest } from './plan-digest.ts';
import { planFile } from './schema/plan.ts';
import type { Plan } from './trial.ts';
import { checkYaml } from './yaml/check-yaml.ts';
import { readYaml } from './yaml/read-yaml.ts';

/**
 * plan.yaml: the frozen plan. Its copy is kept as YAML 1.2 reads it, numbers as numbers, because the digest is
 * taken over that. A digest that does not fit is a warning that gives the right one.
 */
export function readPlan(bytes: Uint8Array, report: FileProblems): Plan | null {
  const yaml = readYaml(bytes, report);
  const checked = yaml && checkYaml(yaml, planFile, report);
  if (!yaml || !checked) return null;

  const copy = frozenCopy(yaml.text);
  if (copy === null) {
    report.error(WHOLE_FILE, {
      rule: 'plan-not-json',
      message: 'the plan holds a number or alias that JSON cannot, so it has no digest',
      remedy: 'Write numbers as digits, and every text out in full.',
    });
    return null;
  }
  const computedDigest = planDigest(copy);
  const digest = checked.digest ?? null;
  if (digest !== computedDigest) {
    report.warning(yaml.place(['digest']), {
      rule: 'plan-digest',
      message:
        digest === null
          ? 'the plan has no digest, so no one can see whether it was changed after it was fixed'
          : 'the digest does not fit the plan: it was changed after it was fixed',
      remedy: `The digest of the plan as it stands is ${computedDigest}. Whoever has the old sheet can see that they differ.`,
    });
  }
  return { fixed: checked.fixed, digest, computedDigest, copy };
}

/** Null where the plan cannot be written as JSON. */
function frozenCopy(text: string): Record<string, unknown> | null {
  try {
    const { fixed: _fixed, digest: _digest, ...copy } = parse(text, { logLevel: 'silent', uniqueKeys: false });
    canonicalJson(copy);
    return copy;
  } catch {
    return null;
  }
}
