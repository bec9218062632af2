import { counted } from '../counted.ts';
import { noHalfLifeText } from '../no-half-life-text.ts';
import { labelled } from '../labelled.ts';
import { list } from '../list.ts';
import { number } from '../number.ts';
import { quantity } from '../quantity.ts';
import { storedName } from '../stored-name.ts';
import { isOfAll } from '../../is-of-all.ts';
import { sentence } from '../../sentence.ts';
import { changesText } from './changes-text.ts';
import { lotsDiffer } from './lots-differ.ts';
import { moreVaried } from './more-varied.ts';
import type { CaveatTexts } from './telling.ts';

/** Caveats that limit nothing by themselves but belong beside the result. */
export const note: CaveatTexts<
  | 'few-units'
  | 'few-seeds'
  | 'not-blind'
  | 'no-margin'
  | 'more-varied-than-luck'
  | 'more-alike-than-luck'
  | 'near-limit'
  | 'hardly-any'
  | 'no-room'
  | 'coarse-checks'
  | 'coarse-readings'
  | 'lots-differ'
  | 'ungerminated-not-sorted'
  | 'tested-straight-away'
  | 'start-moisture-unknown'
  | 'two-changes'
  | 'survivors-only'
  | 'one-lot'
  | 'batches-span-blocks'
  | 'half-before-first-check'
  | 'nothing-came-up'
  | 'no-half-life'
> = {
  'few-units': ({ unit, units }, { tray }) => {
    const { treatment, control } = units;
    const reason =
      treatment === control
        ? `there were only ${treatment} ${tray(2, unit)} of each`
        : `there were only ${treatment} and ${control} ${tray(2, unit)}`;
    return { reason, sentence: `${sentence(reason)}. So few show a difference only where it is large.` };
  },
  'few-seeds': ({ seeds }, { caveat, label }) => {
    const of = caveat.treatment === null ? '' : ` of ${label(caveat.treatment)}`;
    const reason = `only ${counted(seeds, 'seed')}${of} were sown`;
    return {
      reason,
      sentence: `${sentence(reason)}. One seed more or less then moves the share by ${number(100 / seeds, 0)} of 100.`,
    };
  },
  'not-blind': ({ blind }, { tray }) => {
    const reason =
      blind === 'no'
        ? `whoever counted knew which ${tray()} was which`
        : `it is not recorded whether whoever counted knew which ${tray()} was which`;
    return { reason, sentence: `${sentence(reason)}. Hope can then lean on the count.` };
  },
  'no-margin': () => ({
    reason: 'no smallest difference that matters was set',
    sentence: 'No smallest difference that matters was set. So nothing here can be called alike.',
  }),
  'more-varied-than-luck': moreVaried,
  'more-alike-than-luck': ({ phi }, { tray }) => ({
    reason: `the ${tray(2)} agree more closely than seed luck allows`,
    sentence: `The ${tray(2)} of a kind agree more closely than seed luck usually allows (φ ${number(phi, 2)}). Is there a reason, such as seeds picked by size, or one count looked up while making the next?`,
  }),
  'near-limit': ({ stored, limit, germinated, seeds }, { analysis, caveat, label }) => {
    const named = caveat.treatment === null ? ' of one treatment' : ` of ${label(caveat.treatment)}`;
    const of = isOfAll(analysis, caveat, stored) ? '' : named;
    const whole = germinated === seeds || germinated === 0;
    const end = limit === 100 ? (whole ? 'all' : 'nearly all') : whole ? 'none of the' : 'hardly any';
    const reason = `${end} seeds${of} came up`;
    const counts = germinated === seeds ? `all ${number(seeds)}` : `${number(germinated)} of ${number(seeds)}`;
    const when = stored === null ? '' : `${storedName(stored)}: `;
    return {
      reason,
      sentence: `${sentence(reason)} (${when}${counts}). So close to ${limit} %, a range is only roughly right.`,
    };
  },
  'hardly-any': ({ germinated, seeds }) => ({
    reason: `hardly any seeds came up (${germinated.treatment} of ${number(seeds.treatment)} and ${germinated.control} of ${number(seeds.control)})`,
    sentence: `Hardly any seeds came up: ${germinated.treatment} of ${number(seeds.treatment)} and ${germinated.control} of ${number(seeds.control)}. That is too few to compare.`,
  }),
  'no-room': ({ lowest }, { tray }) => {
    const reason = lowest === 100 ? 'everything came up in both' : 'nearly everything came up in both';
    const least = lowest === 100 ? '' : `: at least ${number(Math.floor(lowest))} of 100 in every ${tray()}`;
    return { reason, sentence: `${sentence(reason)}${least}. So this seed had no room to show a gain.` };
  },
  'coarse-checks': ({ from, to, percent }, { caveat, label }) => {
    const of = caveat.treatment === null ? '' : ` of ${label(caveat.treatment)}`;
    return {
      reason: 'the checks were too far apart',
      sentence: `The checks were far apart: ${number(Math.round(percent))} of 100 seedlings${of} came up between those of day ${number(from)} and day ${number(to)}. On which of those days, nobody saw.`,
    };
  },
  'coarse-readings': ({ treatment, control, values, difference, unit }, { caveat, label, tray }) => {
    if (difference !== null) {
      const reason = `the difference is the same in every ${caveat.lot === 'all' ? 'lot' : tray(1, 'block')}`;
      return { reason, sentence: `${sentence(reason)}. Readings are too coarse to show how much it varies.` };
    }
    return {
      reason: `every ${tray()} of a kind has the same reading`,
      sentence: `Every ${tray()} of a kind has the same reading (${label(treatment)} ${quantity(values.treatment, unit)}, ${label(control)} ${quantity(values.control, unit)}). Readings are too coarse to show how ${tray(2)} differ.`,
    };
  },
  'lots-differ': lotsDiffer,
  'ungerminated-not-sorted': ({ ungerminated, seeds }) => ({
    reason: 'seeds that did not come up were not looked at',
    sentence: `${sentence(number(ungerminated))} of ${number(seeds)} seeds did not come up. Whether they were dead or only resting was not looked at.`,
  }),
  'tested-straight-away': () => ({
    reason: 'the seed was sown straight after the treatment',
    sentence:
      'The question is about keeping seed, but it was sown straight after the treatment. How well it keeps, only a later sowing can show.',
  }),
  'start-moisture-unknown': () => ({
    reason: 'moisture at the start was not measured',
    sentence: 'Moisture at the start was not measured, so how dry the seed is now is not known.',
  }),
  'two-changes': ({ changes }, { trial }) => {
    const reason = `the treatments differ in more than one thing (${changesText(trial, changes)})`;
    return { reason, sentence: `${sentence(reason)}. Which of them made a difference cannot be told.` };
  },
  'survivors-only': ({ groups }, { label }) => {
    const each = groups.map(
      ({ treatment, plants, seeds }) => `${label(treatment)} ${plants} from ${number(seeds)} seeds`,
    );
    return {
      reason: 'only seedlings that came up could be measured',
      sentence: `Only seedlings that came up could be measured (${list(each)}). Seeds that stayed below have no size.`,
    };
  },
  'one-lot': ({ crop }) => ({
    reason: `only one lot of ${crop} was sown`,
    sentence: `Only one lot of ${crop} was sown. Another harvest, another age or another crop may behave otherwise.`,
  }),
  'batches-span-blocks': ({ batches }, { tray }) => ({
    reason: `batches were spread over several ${tray(2, 'block')}`,
    sentence: `${sentence(counted(batches.length, 'batch'))} stood in several ${tray(2, 'block')}. The batch is what was treated, so it is what is compared, and the ${tray(2, 'block')} are set aside.`,
  }),
  'half-before-first-check': ({ day, portion, units }, { tray }) => ({
    reason: `${portion === 0.5 ? 'half' : 'a quarter'} were up before anyone looked`,
    sentence: `In ${counted(units.length, tray())} ${portion === 0.5 ? 'half' : 'a quarter'} of what came up was up at the first check, on day ${number(day)}. When, nobody saw, so the time is not given.`,
  }),
  'nothing-came-up': ({ seeds, sowings }, { caveat, label, tray }) => {
    const of = caveat.treatment === null ? '' : ` of ${label(caveat.treatment)}`;
    const sown = seeds === null ? '' : ` (${counted(seeds, 'seed')} in ${counted(sowings, tray())})`;
    return {
      reason: `nothing${of} came up`,
      sentence: `Nothing${of} came up${sown}. The seed may be dead, resting, or too cold or wet; a test of the same seed in better conditions would tell.`,
    };
  },
  'no-half-life': ({ reason, tests }, { caveat, trial, label }) => ({
    reason: `no half-life of ${label(caveat.treatment ?? '')} could be given`,
    sentence: sentence(noHalfLifeText(labelled(trial, caveat.treatment ?? '', 'seed'), { reason, tests })),
  }),
};
