import type { FindingCase } from '../../finding-case.ts';
import { findingRest } from './finding-rest.ts';
import { marginTail } from './margin-tail.ts';
import { ofTreatment } from './of-treatment.ts';
import { rawCounts } from './raw-counts.ts';
import type { Saying } from './saying.ts';
import { settleText } from './settle-text.ts';
import { shareText } from './share-text.ts';

/** Result of a comparison of how many came up; one template a case (wording.md). */
export const germination = (s: Saying): string => `${finding(s)}${noRoom(s)}`;

function finding(s: Saying): string {
  const { facts, probably, because, estimate, range, bareRange, units, margin, bareMargin } = s;
  const came = `${s.b('seed')} ${probably}came up ${facts.estimate?.sign === -1 ? 'less' : 'more'}`;
  const small = `There was ${probably}a small difference (${ofTreatment(s)}; ${s.judged}${bareRange}; ${units})`;
  switch (facts.case) {
    case 'matters':
      return `${came}: ${shares(s)}. The data fit with ${range}, all beyond the ${bareMargin} ${
        facts.marginFixed ? 'that was to matter' : 'named as mattering, though that was not fixed before counting'
      }.${because}`;
    case 'different':
      return `${came} (${estimate}; the data fit with ${bareRange}; ${units}).${marginTail(s)}${because}`;
    case 'small':
      return `${small}, less than the ${bareMargin} that was to matter.${because}`;
    case 'small-not-agreed':
      return `${small}. Had ${margin} been agreed beforehand, this would count as too small to matter.${because}`;
    case 'unclear':
      return `A difference could not be shown (${ofTreatment(s)}; ${units}). ${
        bareRange === null
          ? `All ${s.tray(2)} of a kind gave the same figure, so their ordinary spread is not known.`
          : `That is not proof of sameness: the data fit with anything from ${range}.`
      }${settleText(s)}`;
    case 'hardly-any':
      return `So few seeds came up (${bothCounts(s)}; ${units}) that the finding is low germination in both.`;
    default:
      return findingRest(s);
  }
}

/** "88 of 100 against 62 of 100 (264 of 300 seeds and 186 of 300; 6 and 6 trays)"; pooled: the difference alone. */
function shares({ facts, estimate, units }: Saying): string {
  const { treatment, control } = facts.groups;
  if (treatment?.estimate == null || control?.estimate == null) return `${estimate} (${units})`;
  const [b, a] = [shareText({ estimate: treatment.estimate }), shareText({ estimate: control.estimate })];
  return `${b} against ${a} (${rawCounts(facts)}${units})`;
}

function bothCounts({ facts: { groups } }: Saying): string {
  const of = (group: typeof groups.treatment) => `${group?.count ?? 0} of ${group?.seeds ?? 0}`;
  return `${of(groups.treatment)} and ${of(groups.control)}`;
}

/** Said where no gain was shown, because none could have been. */
const NO_GAIN: readonly FindingCase[] = ['same', 'unclear', 'likeness-not-agreed', 'same-cause-unclear', 'untestable'];

const noRoom = ({ facts }: Saying): string =>
  facts.noRoom && NO_GAIN.includes(facts.case)
    ? ' Nearly everything came up in both, so this seed had no room to show a gain. One might still show in older seed or colder soil.'
    : '';
