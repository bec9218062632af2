/** Lists of trials: what they can be narrowed down by, and the pages of each choice. */
export const lists = {
  'list.filterMeasure': 'Measured',
  'list.equal':
    'A trial that showed no difference, or cannot tell, stands here like any other: newest first, whatever was found.',

  'by.crop': 'Trials by crop',
  'by.treatment': 'Trials by treatment',
  'by.measure': 'Trials by what was measured',
  'by.year': 'Trials by year',
  'by.verdict': 'Trials by finding',
  'by.status': 'Trials by state',
  'by.crop.one': 'Trials with {value}',
  'by.treatment.one': 'What was compared: {value}',
  'by.measure.one': 'What was measured: {value}',
  'by.year.one': 'Trials by year of sowing: {value}',
  'by.verdict.one': 'What was found: {value}',
  'by.status.one': 'Trials by state: {value}',
  'by.verdict.note':
    'A trial with several comparisons stands under each of their findings. The kind of a finding says nothing about its worth.',
  'by.treatment.done': 'What was done',

  'varies.soak': 'soaking',
  'varies.drying': 'drying',
  'varies.storage': 'storage',
  'varies.light': 'light or cover',
  'varies.temperature': 'temperature',
  'varies.medium': 'compost or covering',
  'varies.dressing': 'dressing or coating',
  'varies.age': 'age of the seed',
  'varies.other': 'something else',
  'varies.none': 'not stated',
  'year.notSown': 'not sown yet',

  'finding.matters': 'a difference that matters',
  'finding.different': 'a difference',
  'finding.probably-different': 'probably a difference',
  'finding.alike': 'alike enough',
  'finding.probably-alike': 'probably alike',
  'finding.not-settled': 'not settled',
  'finding.hardly-any': 'hardly any came up',
  'finding.cause-unclear': 'cause unclear',
  'finding.cannot-tell': 'cannot tell',
} as const;
