import { isWaterLost } from '../../is-water-lost.ts';
import { formOf } from '../form-of.ts';
import type { Saying } from './saying.ts';
import { survivors } from './survivors.ts';

/** What a shown difference of means says: "bei „Dichtes Glas“ waren die Keimlinge höher"; "wahrscheinlich" before the claim. */
export function claimText(s: Saying): string {
  const up = s.facts.estimate?.sign === 1;
  switch (s.result.measure) {
    case 't50':
    case 'mgt':
      return `${s.atB} ging die Saat ${s.probably}${up ? 'später' : 'früher'} auf`;
    case 'spread':
      return `${s.atB} ging die Saat ${s.probably}${up ? 'weniger gleichmäßig' : 'gleichmäßiger'} auf`;
    case 'maguire':
      return `${s.atB} war die Keimrate ${s.probably}${up ? 'höher' : 'niedriger'}`;
    case 'moisture':
      if (isWaterLost(s.result)) return `${s.atB} verlor das Saatgut ${s.probably}${up ? 'mehr' : 'weniger'} Wasser`;
      return `${s.atB} war das Saatgut ${s.probably}${up ? 'feuchter' : 'trockener'}`;
    default: {
      const noun = survivors(s) ? 'Keimlinge' : formOf(s.tray, 2);
      return `${s.atB} waren die ${noun} ${s.probably}${up ? s.words.up : s.words.down}`;
    }
  }
}
