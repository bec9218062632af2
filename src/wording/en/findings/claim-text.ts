import { isWaterLost } from '../../is-water-lost.ts';
import type { Saying } from './saying.ts';
import { survivors } from './survivors.ts';

/** What a shown difference of means says: "Sealed jar seedlings were taller", "probably" before what it claims. */
export function claimText(s: Saying): string {
  const up = s.facts.estimate?.sign === 1;
  switch (s.result.measure) {
    case 't50':
    case 'mgt':
      return `the ${s.b('seeds')} were ${s.probably}up ${up ? 'later' : 'earlier'}`;
    case 'spread':
      return `${s.b('seed')} ${s.probably}came up ${up ? 'less' : 'more'} evenly`;
    case 'maguire':
      return `${s.b('seed')} ${s.probably}had the ${up ? 'higher' : 'lower'} rate`;
    case 'moisture':
      if (isWaterLost(s.result)) return `${s.b('seed')} ${s.probably}lost ${up ? 'more' : 'less'} water`;
      return `${s.b('seed')} was ${s.probably}${up ? 'moister' : 'drier'}`;
    default:
      return `${survivors(s) ? s.b('seedlings') : s.b(s.tray(2))} were ${s.probably}${up ? s.words.up : s.words.down}`;
  }
}
