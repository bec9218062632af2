/** Words of questions that several trials answer: id, term, meaning. */
export const pooling: readonly (readonly [id: string, term: string, meaning: string])[] = [
  [
    'leave-one-out',
    'Leaving one out',
    'The trials put together without each of them in turn, to see whether one carries the answer.',
  ],
  ['next-result', 'Next repeat', 'The range in which the result of one more trial of ordinary size may fall.'],
  [
    'random-effects',
    'Random effects',
    'Putting trials together without supposing that the true difference is the same in all gardens.',
  ],
  ['reml', 'REML', 'Restricted maximum likelihood: the way in which the spread between trials is estimated.'],
];
