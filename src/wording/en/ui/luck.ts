/** Words that show what luck does, and what would settle a question. */
export const luck = {
  'luck.none': 'None of {deals} random relabellings differs as much as the real labels',
  'luck.one': '1 of {deals} random relabellings differs as much as the real labels, or more',
  'luck.some': '{count} of {deals} random relabellings differ as much as the real labels, or more',
  'luck.subtitle':
    'Large mark: the labels as they were. Small dots: the same {unit} with their labels dealt anew at random. Had the treatment done nothing and the labels been dealt by lot, the real difference would be one more such deal, and the largest of all {all}, up or down, about one time in {all}. This shows luck; the finding rests on the range.',
  'luck.subtitleBlocks':
    'Large mark: the labels as they were. Small dots: the same {unit} with their labels dealt anew at random within each block. Had the treatment done nothing and the labels been dealt by lot, the real difference would be one more such deal, and the largest of all {all}, up or down, about one time in {all}. This shows luck; the finding rests on the range.',
  'luck.subtitleLots':
    'Large mark: the labels as they were. Small dots: the same {unit} with their labels dealt anew at random within each lot of seed. Had the treatment done nothing and the labels been drawn at random, the real difference would be one more such deal, and the largest of all {all}, up or down, about one time in {all}. This shows luck; the finding rests on the range.',
  'luck.description': 'Strip of differences. As it was: {real}. Dealt anew: {values}.',
  'luck.real': 'As it was',
  'luck.dealt': 'Dealt anew',
  'luck.times': '{deals} times',
  'luck.labels': 'Labels',
  'luck.several': 'Of {deals} random relabellings, so many differ as much as the real labels, or more: {counts}',
  'luck.countIn': '{name} {count}',
  'luck.asLarge': '{count} of {deals} as large',
  'luck.asLargeOf': 'As large, of {deals}',
  'luck.dealtNumber': 'Dealt anew, {number}',
  'luck.descriptionSeveral': 'Strips of differences. {values}',
  'luck.row':
    '{name}: as it was {real}; the {deals} dealt anew run from {lower} to {upper}, {count} of them as large or larger.',

  'luck.table.caption':
    'Luck alone: by how much two {unit} that were treated alike commonly differ ({one} and {other} seeds)',
  'luck.table.share': 'Where so many come up',
  'luck.table.half': 'half of such pairs differ by',
  'luck.table.most': '19 of 20 such pairs differ by',
  'luck.table.note':
    'Assumed: {unit} vary twice as much as the luck of single seeds would make them (φ = 2, variance; no source, common practice for planning). Worked out with the normal curve, so these are rough.',
  'luck.upTo': 'up to {points} per 100',
  'luck.ofHundred': '{points} of 100',

  'luck.settle.title': 'About {units} of each would settle a difference of {size}',
  'luck.settle.titleOf': '{comparison}: about {units} of each would settle a difference of {size}',
  'luck.settle.asSeen':
    'Mark: the smallest difference that so many of each would show 4 times in 5, at the spread seen in this trial. Line: {size}.',
  'luck.settle.assumed':
    'Mark: the smallest difference that so many of each would show 4 times in 5. Assumed, as this trial tells nothing about it: they vary twice as much as the luck of single seeds (φ = 2). Line: {size}.',
  'luck.settle.description': 'Smallest difference shown, by number of each. {values}',
  'luck.settle.each': '{units} of each',
  'luck.settle.here': 'this trial',
  'luck.settle.asMany': 'as many as here, by themselves',
  'luck.settle.from': '{size} or more',
  'luck.settle.tableSeen':
    'The smallest difference that so many of each would show 4 times in 5, at the spread seen in this trial',
  'luck.settle.tableAssumed':
    'The smallest difference that so many of each would show 4 times in 5. Assumed, as this trial tells nothing about it: they vary twice as much as the luck of single seeds (φ = 2)',
  'luck.settle.settled': '{size} settled by about',
  'luck.settle.axis': 'Smallest difference shown, per 100 seeds',
  'luck.settle.axisIn': 'Smallest difference shown ({unit})',
};
