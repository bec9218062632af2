import type { Pooled } from '../../../analysis/pooled.ts';
import type { Ends, PooledFacts } from '../../pooled-facts.ts';
import { counted } from '../counted.ts';
import { differenceText } from '../difference-text.ts';
import { rangeText } from '../range-text.ts';
import { sizeText } from '../size-text.ts';
import { tellingOf } from './telling.ts';

/** What several trials say together; one template a case (wording.md, pooled). */
export function pooledSentence(answer: Pooled, facts: PooledFacts): string {
  const { words } = tellingOf(answer);
  const range = ({ lower, upper }: Ends) => rangeText(lower, upper, words);
  const { interval, estimate, nextResult, results } = facts;
  const asked = `${facts.growersDiffer ? counted(facts.trials, 'grower') : counted(facts.trials, 'trial')} asked this.`;
  const ran = results ? resultsText(results, words) : '';
  if (facts.case === 'none') return 'No trial has answered this yet.';
  if (facts.case === 'one') return `1 grower has asked this so far. ${ran}. One trial is no pooled answer.`;
  if (!estimate || !interval) {
    return `${asked} ${ran}. Fewer than three trials are not put together: they are shown side by side.`;
  }

  const found = differenceText(estimate, words);
  const margin = answer.matters ? sizeText(answer.matters, words) : '';
  const next = nextResult ? ` A next repeat may fall anywhere from ${range(nextResult)}.` : '';
  return `${asked} ${ran}. Together, ${finding()}${next}`;

  function finding(): string {
    const against = againstText(answer);
    const fits = `the data fit with ${range(interval as Ends)}`;
    switch (facts.case) {
      case 'matters':
      case 'different': {
        const beyond = facts.case === 'matters' ? `, all beyond the ${margin} named as mattering` : '';
        return `${against}: ${facts.probably ? 'probably ' : ''}${found} (${fits}${beyond}).${because(facts)}`;
      }
      case 'cause-unclear':
        return `${against}: ${found} (${fits}). Trials with serious doubts of their own carry half of this or more, so what caused it cannot be told.`;
      default: {
        const within = answer.within
          ? ` Had ${margin} been agreed beforehand, this would count as alike.`
          : ' That is not proof of sameness.';
        return `a difference could not be shown (${against}: ${found}; ${fits.replace('with ', 'with anything from ')}).${within}`;
      }
    }
  }
}

/** "Soaked against Dry", as most trials call them. */
export const againstText = ({ treatment, control }: Pooled): string =>
  treatment && control ? `${quoted(treatment.label)} against ${quoted(control.label)}` : 'treatment against control';

const quoted = (label: string): string => (label.trim().split(/\s+/).length > 3 ? `“${label.trim()}”` : label.trim());

function resultsText({ lower, upper }: Ends, words: Parameters<typeof rangeText>[2]): string {
  const [low, high] = [differenceText(lower, words), differenceText(upper, words)];
  return low === high ? `The result was ${low}` : `Results ran from ${rangeText(lower, upper, words)}`;
}

function because({ probably, doubtful, trials }: PooledFacts): string {
  if (!probably) return '';
  const those = doubtful === trials ? `all ${trials} trials` : `${doubtful} of the ${trials} trials`;
  return ` We say “probably” because ${those} ${doubtful === 1 ? 'has a doubt of its' : 'have doubts of their'} own.`;
}
