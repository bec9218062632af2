import type { LeftOutTrial } from '../../../analysis/pooled.ts';

/** Why a trial of a question does not count. */
export function pooledLeftOut({ reason, found }: LeftOutTrial): string {
  switch (reason) {
    case 'data-fail':
      return 'Its files have errors or do not pass the re-check, so it does not count.';
    case 'other-measure':
      return 'It compares nothing of what is asked here.';
    case 'outcome-not-named':
      return 'It has several outcomes of this kind, and the question does not say which is meant.';
    case 'treatments-differ':
      return `It compares other treatments${found === null ? '' : `: ${found}`}.`;
    case 'other-unit':
      return `It measured something else, or in another unit${found === null ? '' : `: ${found}`}.`;
    case 'several-times':
      return 'It compares stored seed at several times, so there is no one difference to take.';
    case 'no-interval':
      return 'How sure its difference is cannot be worked out: there was one unit of a kind, or all read alike.';
    case 'same-records':
      return 'Its records stand in another trial of this question already, or it is named twice.';
  }
}
