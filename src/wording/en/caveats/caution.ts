import { amount } from '../../amount.ts';
import { counted } from '../counted.ts';
import { date } from '../date.ts';
import { list } from '../list.ts';
import { number } from '../number.ts';
import { planChangeText } from '../plan-change-text.ts';
import { planChangesCounted } from '../plan-changes-counted.ts';
import { sentence } from '../../sentence.ts';
import { leftOutText } from './left-out-text.ts';
import type { CaveatTexts } from './telling.ts';

/** Caveats under which "probably" is said. */
export const caution: CaveatTexts<
  | 'not-randomised'
  | 'positions-unbalanced'
  | 'batch-unknown'
  | 'outcomes-not-fixed'
  | 'plan-changed'
  | 'still-germinating'
  | 'sowings-left-out'
  | 'many-comparisons'
  | 'unequal-spread'
  | 'unequal-trays'
  | 'incomplete-blocks'
  | 'seeds-by-mass'
  | 'no-seed-number'
> = {
  'not-randomised': ({ assignment }, { tray }) => {
    const trays = tray(2);
    const reason =
      assignment === 'by-hand'
        ? `the ${trays} were placed by hand, not by lot`
        : assignment === 'alternating'
          ? `the ${trays} were placed in turn, not by lot`
          : `it is not recorded whether the ${trays} were placed by lot`;
    return { reason, sentence: `${sentence(reason)}. A better place may then have gone to one kind more often.` };
  },
  'positions-unbalanced': ({ treatment, control, by, places, chance }, { label, trays }) => {
    const reason = `${label(treatment)} and ${label(control)} were not spread evenly over the ${by}s`;
    const where = list(places.slice(0, 6).map((at) => `“${at.place}” ${at.treatment} and ${at.control}`));
    const luck = chance === null ? '' : ` Of 100 random layouts about ${shareOf100(chance)} would be as uneven.`;
    return { reason, sentence: `${sentence(reason)} (${trays(treatment)} and ${trays(control)}: ${where}).${luck}` };
  },
  'batch-unknown': ({ treated }, { tray }) =>
    treated === 'in-batches'
      ? {
          reason: `it is not recorded which ${tray(2)} were treated together`,
          sentence: `Seed was treated in batches, but it is not recorded which ${tray(2)} share one. What befell one batch may then look like an effect of the treatment.`,
        }
      : {
          reason: `it is not recorded whether the seed of each ${tray()} was treated by itself`,
          sentence: `It is not recorded whether the seed of each ${tray()} was treated by itself or all in one go. If all in one go, the luck of that one batch cannot be told from the treatment.`,
        },
  'outcomes-not-fixed': ({ reason, fixed, firstCount }) => {
    const clause = {
      'none-listed': 'what was to be compared was not listed beforehand',
      'nothing-fixed': 'nothing shows that what was to be compared was fixed before the first count',
      'fixed-too-late': `what was to be compared was fixed${fixed === null ? '' : ` on ${date(fixed)}`}, not before the first count${firstCount === null ? '' : ` on ${date(firstCount)}`}`,
      'plan-edited': 'the plan was changed after it had been fixed',
      'not-in-plan': 'this was not in the plan',
    }[reason];
    return {
      reason: clause,
      sentence: `${sentence(clause)}. With many days and measures to choose from, one that looks good by luck is easily found.`,
    };
  },
  'plan-changed': ({ changes }) => ({
    reason: planChangesCounted(changes),
    sentence: `${changes.slice(0, 3).map(planChangeText).join(' ')}${changes.length > 3 ? ` And ${counted(changes.length - 3, 'more change')}.` : ''}`,
  }),
  'still-germinating': ({ added, seeds, percent, from, to }, { caveat, label }) => ({
    reason: `seeds were still coming up when counting stopped`,
    sentence: `Seeds${caveat.treatment === null ? '' : ` of ${label(caveat.treatment)}`} were still coming up when counting stopped: ${added} of ${number(seeds)}${seeds === 100 ? '' : ` (${number(Math.round(percent))} of 100)`} between day ${number(from)} and day ${number(to)}. A later count might read otherwise.`,
  }),
  'sowings-left-out': (evidence, tell) => leftOutText(evidence, tell),
  'many-comparisons': ({ comparisons }) => ({
    reason: `${comparisons} comparisons were made, and with that many one such gap by luck is not surprising`,
    sentence: `${counted(comparisons, 'comparison')} were made. With that many, one such gap by luck is not surprising.`,
  }),
  'unequal-spread': ({ wider, narrower }, { trays }) => {
    const reason = `the ${trays(wider)} vary more than the ${trays(narrower)}`;
    return { reason, sentence: `${sentence(reason)}. The range given takes one spread for both.` };
  },
  'unequal-trays': ({ largest, smallest, unit }, { tray }) => ({
    reason: `the ${tray(2, unit)} held very unequal numbers of seeds (${number(smallest)} to ${number(largest)})`,
    sentence: `The ${tray(2, unit)} held very unequal numbers of seeds, from ${number(smallest)} to ${number(largest)}. The largest then weigh most.`,
  }),
  'incomplete-blocks': ({ reason, incomplete, without }, { tray }) => {
    const blocks = tray(2, 'block');
    const clause = {
      'two-blocks': `there were only two ${blocks}, too few to compare within them`,
      incomplete: `not every ${tray(1, 'block')} held both kinds${incomplete.length === 0 ? '' : ` (${list(incomplete)} did not)`}`,
      'some-without-block': `for ${counted(without.length, tray())} no ${tray(1, 'block')} is named`,
    }[reason];
    return {
      reason: clause,
      sentence: `${sentence(clause)}. So the ${blocks} were set aside, and differences between them count as ordinary spread.`,
    };
  },
  'seeds-by-mass': ({ sowings, seedsPerGram }, { tray }) => ({
    reason: 'seeds were weighed, not counted',
    sentence: `In ${counted(sowings.length, tray())} seeds were weighed, not counted${seedsPerGram === null ? '' : ` (${number(seedsPerGram)} seeds to the gram)`}. The number sown is then only about right.`,
  }),
  'no-seed-number': ({ sowings }) => ({
    reason: `it is not known how many seeds were sown in ${list(sowings.slice(0, 6))}`,
    sentence: `It is not known how many seeds were sown in ${list(sowings.slice(0, 6))}${sowings.length > 6 ? ' and others' : ''}. Counts are shown; nothing is compared with them.`,
  }),
};

function shareOf100(chance: number): string {
  const { near, size } = amount(chance * 100, 0);
  return near === 'less-than' ? 'less than 1' : number(size);
}
