import type { Apart } from '../../../analysis/caveats/evidence.ts';
import { date } from '../date.ts';
import { list } from '../list.ts';
import { number } from '../number.ts';
import { sentence } from '../../sentence.ts';
import { storedName } from '../stored-name.ts';
import { wereMore } from '../../were-more.ts';
import type { CaveatTexts, Telling } from './telling.ts';

/** Caveats under which a cause is never claimed. */
export const serious: CaveatTexts<
  | 'one-sowing'
  | 'one-batch'
  | 'confounded-place'
  | 'confounded-block'
  | 'confounded-position'
  | 'confounded-scorer'
  | 'confounded-sowing-day'
  | 'confounded-count-day'
  | 'unequal-soak'
  | 'unequal-handling'
  | 'checked-on-different-days'
> = {
  'one-sowing': (evidence, { label, tray }) => {
    const { treatment, control, units } = evidence;
    const both = units.treatment < 2 && units.control < 2;
    const lone = both ? 'each' : label(units.treatment < 2 ? treatment : control);
    const count = both ? Math.max(units.treatment, units.control) : Math.min(units.treatment, units.control);
    const reason =
      count === 0
        ? `no ${tray()} of ${lone} could be counted`
        : wereMore(evidence)
          ? `only one ${tray()} of ${lone} entered the comparison`
          : `there was only one ${tray()} of ${lone}`;
    return {
      reason,
      sentence: `${sentence(reason)}. ${sentence(tray(2))} differ by luck even when they are treated alike, and with one of a kind that luck cannot be told from the treatment.`,
    };
  },
  'one-batch': ({ treatment, because, batch, sowings, stored }, { trays, label }) => {
    const all = `all ${sowings} ${trays(treatment, sowings)}`;
    if (sowings === 1) {
      const reason = `there was only one ${trays(treatment, 1)}${stored === null ? '' : ` ${storedName(stored)}`}`;
      return { reason, sentence: `${sentence(reason)}. Its luck cannot be told from ${label(treatment)}.` };
    }
    const reason =
      because === 'treated-at-once'
        ? `${all} were treated in one go`
        : `${all} came from one batch${batch === null ? '' : ` (${batch})`}`;
    return {
      reason,
      sentence: `${sentence(reason)}. Whatever befell that one batch befell all of them, so the luck of the batch cannot be told from ${label(treatment)}.`,
    };
  },
  'confounded-place': (e, tell) => apart(e, tell, 'stood', 'only at', quoted),
  'confounded-block': (e, tell) => apart(e, tell, 'stood', `only in ${tell.tray(1, 'block')}`, quoted),
  'confounded-position': (e, tell) => apart(e, tell, 'stood', `only in ${e.by}`, (value) => value),
  'confounded-scorer': (e, tell) => apart(e, tell, 'were counted', 'only by', (scorer) => nameOf(tell, scorer)),
  'confounded-sowing-day': (e, tell) => apart(e, tell, 'were sown', 'only on', date),
  'confounded-count-day': (e, tell) => apart(e, tell, 'were last checked', 'on day', (value) => number(value)),
  'unequal-soak': ({ treatment, control, hours }, { label }) => {
    const reason = `the soaking time also differed (${label(treatment)} ${soak(hours.treatment)}, ${label(control)} ${soak(hours.control)})`;
    return {
      reason,
      sentence: `${sentence(reason)}. Soaking alone changes how fast and how well seed comes up.`,
    };
  },
  'unequal-handling': ({ treatment, control, what, touched, of }, { label, tray }) => {
    const each = `${label(treatment)} ${touched.treatment} of ${of.treatment}, ${label(control)} ${touched.control} of ${of.control}`;
    const reason = `some ${tray(2)} had something done to them that others had not (${each}: “${what}”)`;
    return { reason, sentence: `${sentence(reason)}. That, rather than the treatment, may have made a difference.` };
  },
  'checked-on-different-days': ({ treatment, control, missed }, { label, tray }) => {
    const reason = `the ${tray(2)} of ${label(treatment)} and ${label(control)} were not all checked on the same days`;
    const shown = missed
      .slice(0, 4)
      .map(({ sowing, days }) => `${sowing} missed day ${list(days.map((day) => number(day)))}`);
    const more = missed.length > shown.length ? `, and ${missed.length - shown.length} more missed checks` : '';
    const which = shown.length === 0 ? '' : ` (${list(shown)}${more})`;
    return {
      reason,
      sentence: `${sentence(reason)}${which}. A seedling is seen only when someone looks, so unequal looks can make one kind seem faster.`,
    };
  },
};

/** "the Sealed jar trays stood only at “lower shelf” and the Paper packet trays only at “upper shelf”" */
function apart<T extends string | number>(
  { treatment, control, values }: Apart<T>,
  { trays }: Telling,
  verb: string,
  where: string,
  show: (value: T) => string,
) {
  const of = (each: readonly T[]) => list(each.map(show));
  const reason = `the ${trays(treatment)} ${verb} ${where} ${of(values.treatment)} and the ${trays(control)} ${where} ${of(values.control)}`;
  return {
    reason,
    sentence: `${sentence(reason)}. Whatever else was different there may have made a difference, or hidden one.`,
  };
}

const quoted = (text: string) => `“${text}”`;

/** Who counted: the person's name where the id is an author's, else as it stands in the file. */
const nameOf = ({ trial }: Telling, scorer: string): string =>
  trial.authors.find(({ id }) => id === scorer)?.name ?? quoted(scorer);

function soak(hours: { readonly shortest: number; readonly longest: number } | null): string {
  if (hours === null) return 'not recorded';
  const { shortest, longest } = hours;
  return shortest === longest ? `${number(shortest)} h` : `${number(shortest)} to ${number(longest)} h`;
}
