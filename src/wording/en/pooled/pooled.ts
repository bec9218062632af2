import type { Pooled, PooledTrial } from '../../../analysis/pooled.ts';
import { pooledFacts } from '../../pooled-facts.ts';
import type { PooledText } from '../../pooled-text.ts';
import type { VerdictMark } from '../../words.ts';
import { counted } from '../counted.ts';
import { differenceText } from '../difference-text.ts';
import { direction } from '../direction.ts';
import { rangeText } from '../range-text.ts';
import { verdictPhrase } from '../verdict-phrase.ts';
import { pooledLeftOut } from './left-out.ts';
import { pooledLimits } from './limits.ts';
import { againstText, pooledSentence } from './sentence.ts';
import { tellingOf } from './telling.ts';

/** Everything that is said of a question that several trials answer. */
export function pooled(answer: Pooled): PooledText {
  const facts = pooledFacts(answer);
  const { told, say } = tellingOf(answer);
  const { estimate, interval, nextResult } = facts;
  return {
    sentence: pooledSentence(answer, facts),
    mark: markOf(answer, facts),
    headline: headlineOf(answer, facts),
    limits: pooledLimits(answer, facts),
    trials: answer.trials.map((trial) => ({
      ...say(told(trial.estimate), told(trial.lower), told(trial.upper)),
      finding: findingOf(trial),
      units: `${trial.units.treatment} and ${trial.units.control}`,
    })),
    together: estimate && interval && say(estimate, interval.lower, interval.upper),
    nextResult: nextResult && say(nextResult.lower, nextResult.lower, nextResult.upper),
    without: answer.leaveOneOut.map(({ estimate: left, lower, upper }) => {
      const { difference, range } = say(told(left), told(lower ?? left), told(upper ?? left));
      return `${difference} (${range})`;
    }),
    leftOut: answer.leftOut.map(pooledLeftOut),
  };
}

function headlineOf(
  answer: Pooled,
  { case: which, estimate, interval, trials, probably }: ReturnType<typeof pooledFacts>,
) {
  const { words } = tellingOf(answer);
  if (which === 'none') return pooledSentence(answer, pooledFacts(answer));
  if (which === 'one') return `${againstText(answer)}: 1 trial so far`;
  if (!estimate || !interval) return `${againstText(answer)}: ${counted(trials, 'trial')} side by side`;
  const who = `${againstText(answer)}, ${counted(trials, 'trial')} together`;
  const range = rangeText(interval.lower, interval.upper, words);
  const found = `${differenceText(estimate, words)} (${range})`;
  if (which === 'unclear') return `${who}: not settled (${range})`;
  return which === 'cause-unclear'
    ? `${who}: ${found}, cause unclear`
    : `${who}: ${probably ? 'probably ' : ''}${found}`;
}

function markOf(answer: Pooled, { case: which, probably }: ReturnType<typeof pooledFacts>): VerdictMark {
  const up = (answer.estimate ?? 0) > 0;
  switch (which) {
    case 'matters':
    case 'different': {
      const plain = direction({ ...answer, unit: answer.valueUnit }, up);
      return { words: probably ? `probably ${plain.replace('came up ', '')}` : plain, shape: up ? 'above' : 'below' };
    }
    case 'unclear':
      return { words: 'not settled', shape: 'open' };
    case 'cause-unclear':
      return { words: 'cause unclear', shape: 'question' };
    default:
      return { words: 'not put together', shape: 'question' };
  }
}

function findingOf({ verdict, ceiling }: PooledTrial): string {
  if (verdict === 'untestable' || verdict === 'unclear') return verdictPhrase(verdict);
  if (ceiling === 'cause-unclear') return 'cause unclear';
  return `${ceiling === 'probably' ? 'probably ' : ''}${verdictPhrase(verdict)}`;
}
