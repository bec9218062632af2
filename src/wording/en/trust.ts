import type { Analysis } from '../../analysis/analysis.ts';
import type { Trial } from '../../trial/trial.ts';
import { trustFacts, type TrustFacts } from '../trust-facts.ts';
import type { TrustAnswer } from '../words.ts';
import { caveatWords } from './caveats/caveat-words.ts';
import { counted } from './counted.ts';
import { date } from './date.ts';
import { list } from './list.ts';
import { lotName } from './lot-name.ts';
import { labelled } from './labelled.ts';
import { planChangesCounted } from './plan-changes-counted.ts';
import { sentence } from '../sentence.ts';
import { unitsOfEach } from './findings/units-of-each.ts';
import { unitWord } from './unit-word.ts';

/** The questions of "How far to trust it", the same on every page, answered from the trial's own facts. */
export function trust(trial: Trial, analysis: Analysis, repeatedBy: readonly string[] = []): readonly TrustAnswer[] {
  const facts = trustFacts(trial, analysis);
  const tray = (count = 1) => unitWord(trial, 'sowing', count);
  const row = (
    id: TrustAnswer['id'],
    question: string,
    answer: TrustAnswer['answer'],
    detail: string,
  ): TrustAnswer => ({
    id,
    question,
    answer,
    answerWords: answer,
    detail,
  });
  return [
    row('separate', `Separate ${tray(2)} of each?`, facts.separate.answer, separate(trial, analysis, facts.separate)),
    row('random', 'Placed at random?', facts.random.answer, random(trial, facts.random)),
    row('blind', 'Counted without knowing which is which?', facts.blind.answer, blind(trial)),
    row('alike', 'Same lot, same soak, same day?', facts.alike.answer, alike(trial, analysis, facts.alike)),
    row('fixed', 'Question and measure fixed beforehand?', facts.fixed.answer, fixed(facts.fixed)),
    row('all-shown', 'All results shown?', facts.allShown.answer, allShown(analysis, facts.allShown)),
    row('left-out', 'Anything left out?', facts.leftOut.answer, leftOut(trial, facts.leftOut)),
    repeated(trial, repeatedBy, row),
  ];
}

function separate(
  trial: Trial,
  { results }: Analysis,
  { answer, counts, each: ofEach, oneBatch }: TrustFacts['separate'],
): string {
  if (answer === 'not recorded') {
    const sown = trial.sowings.length;
    if (sown === 0) return 'No sowing is recorded yet.';
    return `${counted(sown, unitWord(trial, 'sowing'))}; which is which is kept apart until the last count.`;
  }
  const each = counts.map(({ lot, sowings }) => {
    const numbers = sowings
      .filter(({ count }) => count > 0)
      .map(({ treatment, count }) => `${count} ${labelled(trial, treatment, unitWord(trial, 'sowing', count))}`);
    return `${counts.length > 1 ? `${lotName(trial, lot)}: ` : ''}${list(numbers)}`;
  });
  const batch = oneBatch ? ' But one treatment was given to all its seed in one batch.' : '';
  const inBatches = results
    .flatMap(({ comparisons }) => comparisons)
    .filter(({ units, lot }) => units.kind === 'batch' && lot !== 'all');
  const units = [...new Set(inBatches.map((comparison) => unitsOfEach(trial, comparison)))];
  const byTest = inBatches.some(({ stored }) => stored !== null) ? ' at a test' : '';
  const batches = units.length === 0 ? '' : ` What was treated separately: ${list(units)}${byTest}.`;
  const inLots = counts.length > 1 ? ` in each of ${counted(counts.length, 'lot')}` : '';
  const ofAll = `${counted(ofEach ?? 0, unitWord(trial, 'sowing'))} of each of ${counted(trial.treatments.length, 'treatment')}${inLots}`;
  return `${sentence(ofEach === null ? each.join('; ') : ofAll)}.${batches}${batch}`;
}

function random(trial: Trial, { uneven }: TrustFacts['random']): string {
  const trays = unitWord(trial, 'sowing', 2);
  const how = {
    random: `The places of the ${trays} were drawn by lot.`,
    'random-in-blocks': `Within each ${unitWord(trial, 'block')} the places were drawn by lot.`,
    alternating: `The ${trays} were placed in turn.`,
    'by-hand': `The ${trays} were placed by hand.`,
    unknown: `How the ${trays} were placed is not recorded.`,
  }[trial.sowing.assignment];
  return uneven ? `${how} The kinds were not spread evenly over the places.` : how;
}

function blind({ scoring, keyKeptApart }: Trial): string {
  if (scoring.blind === 'unknown') return 'It is not recorded.';
  if (scoring.blind === 'no') return 'Whoever counted knew which was which.';
  return keyKeptApart ? 'The key was kept apart until the last count.' : 'As the authors state.';
}

function alike(trial: Trial, analysis: Analysis, { answer, unlike, dates }: TrustFacts['alike']): string {
  if (answer === 'not recorded') return 'The sowing days are not all recorded.';
  const differences = [...new Set(unlike.map((caveat) => caveatWords(trial, analysis, caveat).reason))];
  if (differences.length > 0) return `${sentence(list(differences))}.`;
  const soaks = trial.sowings.map(({ soakHours }) => soakHours);
  const soak =
    trial.varies === 'soak'
      ? ' Soaking is what the question is about.'
      : soaks.every((hours) => hours === null)
        ? ' No soak is recorded.'
        : '';
  const [first = ''] = dates;
  const days = dates.length === 1 ? `on ${date(first)}` : `on ${counted(dates.length, 'day')}, both kinds each time`;
  return `All were sown ${days}.${soak}`;
}

function fixed({ answer, fixing, firstCount, changes }: TrustFacts['fixed']): string {
  if (answer === 'not recorded') return 'No plan was frozen, and no date is stated.';
  if (fixing === null) {
    return `A plan is given, but it was fixed too late or changed afterwards${firstCount === null ? '' : `; the first count was on ${date(firstCount)}`}.`;
  }
  const when = `On ${date(fixing.date)}${fixing.how === 'stated' ? ', as the authors state' : ', in a frozen plan'}.`;
  return changes.length === 0 ? when : `${when} But ${planChangesCounted(changes)}.`;
}

function allShown({ results }: Analysis, { dropped, unlisted }: TrustFacts['allShown']): string {
  if (results.length === 0) return 'Nothing has been compared yet.';
  if (dropped.length > 0) return `The plan also had ${list(dropped)}.`;
  if (unlisted.length > 0) return `Also measured, in the raw files, but not compared: ${list(unlisted)}.`;
  return 'Every measure in the files is shown, and the raw counts can be fetched.';
}

function leftOut(trial: Trial, { sowings }: TrustFacts['leftOut']): string {
  if (sowings.length === 0) return `Every ${unitWord(trial, 'sowing')} in the files counts.`;
  const shown = sowings.slice(0, 6);
  const more = sowings.length > shown.length ? [`${sowings.length - shown.length} more`] : [];
  return `${list([...shown, ...more])}; the result with ${sowings.length === 1 ? 'it' : 'them'} in is given where it could be worked out.`;
}

function repeated(
  { repeats }: Trial,
  by: readonly string[],
  row: (id: 'repeated', question: string, answer: TrustAnswer['answer'], detail: string) => TrustAnswer,
): TrustAnswer {
  const question = 'Repeated by others?';
  if (by.length > 0) return row('repeated', question, 'yes', `Also asked by ${list(by)}.`);
  if (repeats !== null) return row('repeated', question, 'partly', `This trial repeats ${repeats}.`);
  return row('repeated', question, 'not recorded', 'No repeat by others is known here. Yours would be the first.');
}
