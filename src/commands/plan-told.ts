import { planDoubts, type PlanDoubt } from '../analysis/plan-doubts.ts';
import type { Sowable } from '../analysis/plan/planned-design.ts';
import { planAnswer } from '../analysis/planning/plan-answer.ts';
import type { PlanRequest } from '../trial/schema/plan-request.ts';
import { planSentences } from '../wording/plan/plan-sentences.ts';
import { planWarning } from '../wording/plan/plan-warning.ts';
import type { Words } from '../wording/words.ts';
import { wrapped } from './wrapped.ts';

/** Warned of by doubts of the same sense, which say more. */
const SAID_BY_DOUBTS = ['one-tray', 'many-crops'];

/** What the plan can show, and what to mend before sowing, as text for a terminal. */
export function planTold(
  request: PlanRequest,
  { each, seeds, design, isProposed }: Sowable,
  fixed: string,
  words: Words,
  onProgress: (done: number, all: number) => void,
): string {
  const answer = design && planAnswer(design, { onProgress });
  const warnings = (answer?.warnings ?? []).filter((warning) => !SAID_BY_DOUBTS.includes(warning));
  const doubts = planDoubts(request, each, design, fixed).map((doubt) => doubtText(doubt, words));
  const heed = [...doubts, ...warnings.map((warning) => planWarning(warning, words))];
  const proposed = words.say('planning.proposed', { each: words.counted(each, 'sowing'), seeds: words.number(seeds) });
  return [
    ...(isProposed ? [proposed] : []),
    ...(answer === null ? [] : [planSentences(answer, '', words).join(' ')]),
    ...(heed.length === 0 ? [] : [`${words.ui['planning.heed']}:`, ...heed.map((text) => `- ${text}`)]),
  ]
    .map((text) => `${wrapped(text, 100)}\n`)
    .join('');
}

function doubtText(doubt: PlanDoubt, { say, date }: Words): string {
  const values = 'sown' in doubt ? { ...doubt, sown: date(doubt.sown) } : doubt;
  return say(`planning.doubt.${doubt.id}`, values as unknown as Readonly<Record<string, string | number>>);
}
