import type { FindingCase } from '../../finding-case.ts';
import { formOf } from '../form-of.ts';
import { beyondText } from './beyond-text.ts';
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
  const { facts, probably, because, estimate, bareRange, fits, fitting, units, threshold, thresholdSet } = s;
  const came = `${s.atB} gingen ${probably}${facts.estimate?.sign === -1 ? 'weniger' : 'mehr'} Samen auf`;
  const small = `Es gab ${probably}einen kleinen Unterschied (${ofTreatment(s)}; ${fitting}${units})`;
  switch (facts.case) {
    case 'matters':
      return `${came}: ${shares(s)}. Die Daten passen ${fits}, alles ${beyondText(s)}.${because}`;
    case 'different':
      return `${came} (${estimate}; ${fitting}${units}).${marginTail(s)}${because}`;
    case 'small':
      return `${small}, weniger als die ${thresholdSet}.${because}`;
    case 'small-not-agreed':
      return `${small}. Wäre die ${threshold} vorher vereinbart gewesen, gälte das als zu klein, um zu zählen.${because}`;
    case 'unclear':
      return `Ein Unterschied ließ sich nicht zeigen (${ofTreatment(s)}; ${units}). ${
        bareRange === null
          ? `Alle ${formOf(s.tray, 2)} derselben Behandlung ergaben denselben Wert, also ist ihre gewöhnliche Streuung nicht bekannt.`
          : `Das heißt nicht, dass beide gleich sind: Die Daten passen ${fits}.`
      }${settleText(s)}`;
    case 'hardly-any':
      return `So wenige Samen gingen auf (${bothCounts(s)}; ${units}), dass nur eines feststeht: Beide keimten schlecht.`;
    default:
      return findingRest(s);
  }
}

/** "88 von 100 gegenüber 62 von 100 (264 von 300 Samen und 186 von 300; 6 und 6 Schalen)"; pooled: the difference alone. */
function shares({ facts, estimate, units }: Saying): string {
  const { treatment, control } = facts.groups;
  if (treatment?.estimate == null || control?.estimate == null) return `${estimate} (${units})`;
  const [b, a] = [shareText({ estimate: treatment.estimate }), shareText({ estimate: control.estimate })];
  return `${b} gegenüber ${a} (${rawCounts(facts)}${units})`;
}

function bothCounts({ facts: { groups } }: Saying): string {
  const of = (group: typeof groups.treatment) => `${group?.count ?? 0} von ${group?.seeds ?? 0}`;
  return `${of(groups.treatment)} und ${of(groups.control)}`;
}

/** Said where no gain was shown, because none could have been. */
const NO_GAIN: readonly FindingCase[] = ['same', 'unclear', 'likeness-not-agreed', 'same-cause-unclear', 'untestable'];

const noRoom = ({ facts }: Saying): string =>
  facts.noRoom && NO_GAIN.includes(facts.case)
    ? ' Bei beiden ging fast alles auf, also hatte dieses Saatgut keinen Raum, einen Gewinn zu zeigen. Bei älterem Saatgut oder in kälterem Boden könnte sich noch einer zeigen.'
    : '';
