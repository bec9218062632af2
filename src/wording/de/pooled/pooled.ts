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
      units: `${trial.units.treatment} und ${trial.units.control}`,
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
  if (which === 'one') return `${againstText(answer)}: bisher 1 Versuch`;
  if (!estimate || !interval) return `${againstText(answer)}: ${counted(trials, 'trial')} nebeneinander`;
  const who = `${againstText(answer)}, ${counted(trials, 'trial')} zusammen`;
  const range = rangeText(interval.lower, interval.upper, words);
  const found = `${differenceText(estimate, words)} (${range})`;
  if (which === 'unclear') return `${who}: offen (${range})`;
  return which === 'cause-unclear'
    ? `${who}: ${found}, Ursache unklar`
    : `${who}: ${probably ? 'wahrscheinlich ' : ''}${found}`;
}

function markOf(answer: Pooled, { case: which, probably }: ReturnType<typeof pooledFacts>): VerdictMark {
  const up = (answer.estimate ?? 0) > 0;
  switch (which) {
    case 'matters':
    case 'different':
      return {
        words: `${probably ? 'wahrscheinlich ' : ''}${direction({ ...answer, unit: answer.valueUnit }, up)}`,
        shape: up ? 'above' : 'below',
      };
    case 'unclear':
      return { words: 'offen', shape: 'open' };
    case 'cause-unclear':
      return { words: 'Ursache unklar', shape: 'question' };
    default:
      return { words: 'nicht zusammengefasst', shape: 'question' };
  }
}

function findingOf({ verdict, ceiling }: PooledTrial): string {
  if (verdict === 'untestable' || verdict === 'unclear') return verdictPhrase(verdict);
  if (ceiling === 'cause-unclear') return 'Ursache unklar';
  return `${ceiling === 'probably' ? 'wahrscheinlich ' : ''}${verdictPhrase(verdict)}`;
}
