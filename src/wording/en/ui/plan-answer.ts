/** What a planned trial could and could not show: sentences, warnings, what is wrong with a design, its table. */
export const planAnswer = {
  'answer.trays': '{count} trays',
  'answer.traysOfSeeds': '{count} trays of {seeds} seeds',
  'answer.seeds': '{count} seeds',
  'answer.size.germination': '{number} per 100',
  'answer.size.t50': '{number} days',
  'answer.size.t50One': '{number} day',
  'answer.size.trait': '{number} {unit}',
  'answer.ofSize.germination': '{number} per 100',
  'answer.ofSize.t50': '{number} days',
  'answer.ofSize.t50One': '{number} day',
  'answer.ofSize.trait': '{number} {unit}',
  'answer.change.germination': '{treated} of 100 come up instead of {base}',
  'answer.change.t50': 'half are up by day {treated} instead of day {base}',
  'answer.change.trait': 'a mean of {treated} {unit} instead of {base} {unit}',
  'answer.rate': 'about {number} of 100',
  'answer.rateMost': 'more than 99 of 100',
  'answer.rateLeast': 'fewer than 1 of 100',

  'answer.shown':
    'With {trays} for each treatment, a difference of {size} ({change}) would be shown in {rate} such trials.',
  'answer.shownCrops':
    'With {trays} for each treatment and crop, a difference of {size} ({change}) would be shown in any one crop in {rate} such trials.',
  'answer.oneTray':
    'With one tray of each, such a trial cannot tell: the treatment cannot be told from ordinary tray-to-tray luck, however many seeds are in the tray.',
  'answer.oneTrayCrops':
    'With one tray of each, no crop by itself can tell: the treatment cannot be told from ordinary tray-to-tray luck, however many seeds are in the tray.',
  'answer.range': 'The range would reach about {size} to either side of what was found.',
  'answer.alarm': 'Were there no difference at all, one would be shown all the same in {rate} such trials.',
  'answer.alarmCrops': 'Were there no difference in a crop, it would show one all the same in {rate} such trials.',
  'answer.alike': 'It could then be said in {rate} that any difference is smaller than {size}.',
  'answer.together':
    'All {crops} crops taken together would show a difference of {matters}, if it is the same in each, in {rate} such trials, with a range of about {size} to either side; without any difference they would show one in {alarm}.',
  'answer.togetherFormula':
    'All {crops} crops taken together would show a difference of {matters}, if it is the same in each, in {rate} such trials, with a range of about {size} to either side.',
  'answer.anyAlarm':
    'Were there no difference in any crop, at least one crop would seem to show one in {rate} such trials; with the number of crops allowed for, in {firm}.',
  'answer.needed': 'By formula, 4 trials in 5 with {trays} of each would show a difference of {size}.',
  'answer.neededTooMany':
    'By formula, even with {trays} of each fewer than 4 trials in 5 would show a difference of {size}.',
  'answer.shuffle': 'The smallest p that shuffling the trays of a crop can reach is {p}.',
  'answer.formula': 'Worked out by formula only; simulation is the better answer.',
  'answer.simulated':
    '{trials} such trials were simulated with random numbers and put through the analysis that a report uses; the shares are good to about {error} of 100.',

  'answer.assumed.germination':
    'Assumed: trays vary {phi} times as much as the luck of single seeds would make them (φ = {phi}, variance). Two trays of {seeds} treated alike would then differ by up to {most} per 100 in 19 of 20 pairs.',
  'answer.assumed.even':
    'Assumed: trays vary no more than the luck of single seeds makes them (φ = 1), which is rare. Two trays of {seeds} treated alike would then differ by up to {most} per 100 in 19 of 20 pairs.',
  'answer.assumed.t50':
    'Assumed: the true time to half varies between trays with a standard deviation of {spread}, that of single seeds in a tray with one of {seedSpread}; {germination} of 100 seeds come up; checks at gaps of {every} from sowing on.',
  'answer.assumed.trait':
    'Assumed: means of trays treated alike vary with a standard deviation of {spread} {unit}. Plants measured in a tray enter only through it: more of them make tray means steadier.',

  'answer.warn.one-tray':
    'One tray of each makes a first look, not a trial. Several small trays tell more than one large one.',
  'answer.warn.seldom-shown':
    'This difference would be missed more often than shown. A trial that shows nothing would then say little: sow more trays, or ask for a larger difference.',
  'answer.warn.often-missed':
    'This difference would be missed more often than 1 time in 5. More trays help more than larger ones.',
  'answer.warn.many-crops':
    'Every crop is one more comparison, and one more chance to be fooled by luck. Say beforehand whether you ask about each crop or about all together.',
  'answer.warn.too-few-for-alike':
    'With fewer than 3 trays of each, two treatments are never called alike, however close they come.',
  'answer.warn.shuffle-cannot':
    'With so few trays even the most extreme result could come from shuffling them: no shuffle reaches 0.05. From 4 trays of each on it can.',
  'answer.warn.no-room-for-more':
    'So much comes up already that there is no room for as many more: such seed can only show a loss. Older seed, or harder conditions, leave room for a gain.',
  'answer.warn.few-seeds': 'Fewer than 50 seeds of each: percentages will be coarse.',
  'answer.warn.coarse-checks':
    'The checks are too far apart: most seeds come up within one gap, and then how much earlier cannot be said. Check more often around the time to half.',
  'answer.warn.half-before-first-check':
    'In some trays half may be up before the first check, and then they have no time. Check earlier.',

  'answer.fault.base.germination':
    'How many usually come up must lie between 0 and 100, such as 80; 0 and 100 leave nothing to see.',
  'answer.fault.base.t50': 'The usual time to half must be above 0 days, such as 6.',
  'answer.fault.base.trait': 'The usual mean must be above 0, such as 40.',
  'answer.fault.matters': 'The difference that matters must be above 0, such as 10.',
  'answer.fault.no-room': 'There is no room for such a difference, up or down. Take a smaller one.',
  'answer.fault.units': 'Trays of each must be a whole number from 1 to 50.',
  'answer.fault.seeds': 'Seeds in a tray must be a whole number from 1 to 1000.',
  'answer.fault.spread.germination': 'φ must be 1 or more, such as 2: 1 is the luck of single seeds alone.',
  'answer.fault.spread.t50': 'The spread between trays must be above 0 days, such as 0.5.',
  'answer.fault.spread.trait': 'The spread between trays must be above 0, such as a tenth of the mean.',
  'answer.fault.spread-above-seeds':
    'φ must be below the number of seeds in a tray: trays cannot vary more than from nothing to everything. Sow more seeds in each, or take a smaller φ.',
  'answer.fault.crops': 'Crops must be a whole number from 1 to 20.',
  'answer.fault.every':
    'Days between checks must be above 0, such as 1, and not so few that there are more than 100 checks.',
  'answer.fault.every-late': 'The first check must come before the usual time to half. Check more often.',
  'answer.fault.germination': 'How many come up at all must be above 0 and at most 100, such as 80.',

  'answer.table.caption': 'By simulation of {trials} trials (± standard error of the simulation) and by formula',
  'answer.table.captionFormula': 'By formula',
  'answer.table.what': 'What',
  'answer.table.simulated': 'Simulated',
  'answer.table.formula': 'Formula',
  'answer.table.shown': 'Chance to show the difference',
  'answer.table.shownOne': 'Chance to show the difference, in any one crop',
  'answer.table.shownFirmly': 'The same, with the number of crops allowed for',
  'answer.table.alarm': 'Chance of a false alarm',
  'answer.table.alike': 'Chance to call it smaller than what matters, where there is none',
  'answer.table.falselyAlike': 'Chance to call it smaller than what matters, though it is that large',
  'answer.table.range': 'Range, to either side',
  'answer.table.covered': 'Ranges that hold the truth',
  'answer.table.detectable': 'Smallest difference shown 4 times in 5',
  'answer.table.smallestP': 'Smallest p that a shuffle can reach',
  'answer.table.togetherShown': 'All crops together: chance to show the difference',
  'answer.table.togetherAlarm': 'All crops together: chance of a false alarm',
  'answer.table.togetherRange': 'All crops together: range, to either side',
  'answer.table.anyAlarm': 'False alarm in at least one crop',
  'answer.table.anyFirmAlarm': 'The same, with the number of crops allowed for',
  'answer.table.rate': '{number} of 100',
  'answer.table.rateError': '{number} ± {error} of 100',
  'answer.table.sizeError': '{size} ± {error}',
  'answer.table.byDesign': '{number} of 100 by design',
  'answer.table.none': 'none',
} as const;
