import { detectableProportion } from '../statistics/detectable-proportion.ts';
import { shrunkDispersion } from '../statistics/shrunk-dispersion.ts';
import type { PlanRequest } from '../trial/schema/plan-request.ts';
import { treatmentOf } from '../trial/treatment-of.ts';
import { changesBetween } from './caveats/changes-between.ts';
import type { PlanDesign } from './planning/plan-design.ts';

/** Something about a plan that its report would have to say against itself, while it can still be mended. */
export type PlanDoubt =
  | {
      readonly id: 'one-each' | 'at-once' | 'in-batches' | 'treated-unknown' | 'no-margin' | 'two-blocks' | 'not-blind';
    }
  | { readonly id: 'two-changes' | 'unequal-soak'; readonly treatment: string }
  | {
      readonly id: 'many-comparisons';
      readonly comparisons: number;
      readonly detectable: number;
      readonly matters: number;
    }
  | { readonly id: 'sown-before'; readonly sown: string };

/**
 * What is doubtful in a plan, most serious first: the caveats that its layout and treatments will bring whatever is
 * counted, and more comparisons than its seeds can carry (each at the level that Holm's adjustment asks of the first).
 *
 * @param each   sowings of each treatment of each lot
 * @param design germination as planned; null where another measure answers the question or nothing was set
 * @param fixed  ISO date on which the plan is fixed
 */
export function planDoubts(
  request: PlanRequest,
  each: number,
  design: PlanDesign | null,
  fixed: string,
): readonly PlanDoubt[] {
  const { sowing, scoring, sown, outcomes = [] } = request;
  const treated = sowing?.treated ?? 'unknown';
  const primary = outcomes.find((outcome) => outcome.primary) ?? outcomes[0];
  const inBlocks = sowing?.assignment === 'random-in-blocks' || sowing?.block !== undefined;
  return [
    ...(each === 1 ? [{ id: 'one-each' } as const] : []),
    ...treatmentDoubts(request),
    ...(treated === 'each-sowing' ? [] : [{ id: treated === 'unknown' ? 'treated-unknown' : treated } as const]),
    ...(design === null ? [] : comparisonDoubts(request, each, design)),
    ...(sown !== undefined && sown < fixed ? [{ id: 'sown-before', sown } as const] : []),
    ...(primary?.matters === undefined ? [{ id: 'no-margin' } as const] : []),
    ...(inBlocks && each === 2 ? [{ id: 'two-blocks' } as const] : []),
    ...(scoring?.blind === 'yes' ? [] : [{ id: 'not-blind' } as const]),
  ];
}

function treatmentDoubts({ treatments, ...request }: PlanRequest): PlanDoubt[] {
  const varies = request.varies ?? null;
  const all = treatments.map(treatmentOf);
  const control = all.find((treatment) => treatment.control);
  if (control === undefined) return [];
  return all
    .filter(({ id }) => id !== control.id)
    .flatMap((treatment): PlanDoubt[] => {
      const soaks = [treatment, control].map(({ soakHours }) => soakHours ?? 0);
      const [one = 0, other = 0] = soaks;
      // As the caveat has it: within a tenth of each other is alike.
      const isUnequal = varies !== 'soak' && Math.abs(one - other) > 0.1 * Math.max(one, other);
      const isTwo = changesBetween({ varies }, treatment, control).length > 1;
      return [
        ...(isTwo ? [{ id: 'two-changes', treatment: treatment.label } as const] : []),
        ...(isUnequal ? [{ id: 'unequal-soak', treatment: treatment.label } as const] : []),
      ];
    });
}

function comparisonDoubts({ treatments, lots }: PlanRequest, each: number, design: PlanDesign): PlanDoubt[] {
  const comparisons = (treatments.length - 1) * lots.length;
  if (comparisons < 2 || each < 2) return [];
  const df = treatments.length * (each - 1);
  const seeds = each * design.seeds;
  const found = detectableProportion({
    share: design.base / 100,
    control: seeds,
    treated: seeds,
    ...shrunkDispersion(df * design.spread, df),
    level: 0.05 / comparisons,
  });
  const detectable = Math.ceil(100 * (found ?? 1));
  if (detectable <= design.matters) return [];
  return [{ id: 'many-comparisons', comparisons, detectable, matters: design.matters }];
}
