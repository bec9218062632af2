import type { Analysis } from '../../analysis/analysis.ts';
import type { Trial } from '../../trial/trial.ts';
import { sentence } from '../sentence.ts';
import { trustFacts, type TrustFacts } from '../trust-facts.ts';
import type { TrustAnswer } from '../words.ts';
import { article } from './article.ts';
import { caveatWords } from './caveats/caveat-words.ts';
import { counted } from './counted.ts';
import { date } from './date.ts';
import { formOf } from './form-of.ts';
import { labelled } from './labelled.ts';
import { list } from './list.ts';
import { lotName } from './lot-name.ts';
import { planChangesCounted } from './plan-changes-counted.ts';
import { unitsOfEach } from './findings/units-of-each.ts';
import { unitNoun } from './unit-noun.ts';

type Row = Pick<TrustAnswer, 'id' | 'question' | 'answer' | 'detail'>;

/** The questions of "How far to trust it", the same on every page, answered from the trial's own facts. */
export function trust(trial: Trial, analysis: Analysis, repeatedBy: readonly string[] = []): readonly TrustAnswer[] {
  const facts = trustFacts(trial, analysis);
  const trays = unitNoun(trial, 'sowing').many;
  const rows: readonly Row[] = [
    {
      id: 'separate',
      question: `Eigene ${trays} für jede Behandlung?`,
      answer: facts.separate.answer,
      detail: separate(trial, analysis, facts.separate),
    },
    {
      id: 'random',
      question: 'Durch Los aufgestellt?',
      answer: facts.random.answer,
      detail: random(trial, facts.random),
    },
    {
      id: 'blind',
      question: 'Gezählt, ohne zu wissen, was was ist?',
      answer: facts.blind.answer,
      detail: blind(trial),
    },
    {
      id: 'alike',
      question: 'Gleiche Partie, gleich lang eingeweicht, gleicher Tag?',
      answer: facts.alike.answer,
      detail: alike(trial, analysis, facts.alike),
    },
    {
      id: 'fixed',
      question: 'Frage und Messgröße vorher festgelegt?',
      answer: facts.fixed.answer,
      detail: fixed(facts.fixed),
    },
    {
      id: 'all-shown',
      question: 'Alle Ergebnisse gezeigt?',
      answer: facts.allShown.answer,
      detail: allShown(analysis, facts.allShown),
    },
    {
      id: 'left-out',
      question: 'Etwas weggelassen?',
      answer: facts.leftOut.answer,
      detail: leftOut(trial, facts.leftOut),
    },
    repeated(trial, repeatedBy),
  ];
  return rows.map((row) => ({ ...row, answerWords: ANSWERS[row.answer] }));
}

const ANSWERS: Readonly<Record<TrustAnswer['answer'], string>> = {
  yes: 'ja',
  no: 'nein',
  partly: 'teilweise',
  'not recorded': 'nicht aufgezeichnet',
};

function separate(
  trial: Trial,
  { results }: Analysis,
  { answer, counts, each: ofEach, oneBatch }: TrustFacts['separate'],
): string {
  const noun = unitNoun(trial, 'sowing');
  if (answer === 'not recorded') {
    const sown = trial.sowings.length;
    if (sown === 0) return 'Noch ist keine Aussaat aufgezeichnet.';
    return `${counted(sown, noun)}; was was ist, bleibt bis zur letzten Auszählung getrennt verwahrt.`;
  }
  const each = counts.map(({ lot, sowings }) => {
    const numbers = sowings
      .filter(({ count }) => count > 0)
      .map(({ treatment, count }) => `${count} ${labelled(trial, treatment, formOf(noun, count))}`);
    return `${counts.length > 1 ? `${lotName(trial, lot)}: ` : ''}${list(numbers)}`;
  });
  const batch = oneBatch ? ' Aber eine Behandlung bekam all ihr Saatgut auf einmal, in einer einzigen Charge.' : '';
  const inBatches = results
    .flatMap(({ comparisons }) => comparisons)
    .filter(({ units, lot }) => units.kind === 'batch' && lot !== 'all');
  const units = [...new Set(inBatches.map((comparison) => unitsOfEach(trial, comparison)))];
  const byTest = inBatches.some(({ stored }) => stored !== null) ? ' bei einer Prüfung' : '';
  const batches = units.length === 0 ? '' : ` Für sich behandelt wurden: ${list(units)}${byTest}.`;
  const inLots = counts.length > 1 ? ` in jeder der ${counted(counts.length, 'lot')}` : '';
  const ofAll = `${counted(ofEach ?? 0, noun)} von jeder der ${counted(trial.treatments.length, 'treatment')}${inLots}`;
  return `${sentence(ofEach === null ? each.join('; ') : ofAll)}.${batches}${batch}`;
}

function random(trial: Trial, { uneven }: TrustFacts['random']): string {
  const trays = unitNoun(trial, 'sowing').many;
  const block = unitNoun(trial, 'block');
  const how = {
    random: `Die Plätze der ${trays} wurden ausgelost.`,
    'random-in-blocks': `Die Plätze der ${trays} wurden ausgelost, für ${article('jeder', block.gender, 'accusative')} ${block.one} einzeln.`,
    alternating: `Die ${trays} wurden abwechselnd aufgestellt.`,
    'by-hand': `Die ${trays} wurden von Hand aufgestellt.`,
    unknown: `Wie die ${trays} aufgestellt wurden, ist nicht aufgezeichnet.`,
  }[trial.sowing.assignment];
  return uneven ? `${how} Die Behandlungen waren nicht gleichmäßig über die Plätze verteilt.` : how;
}

function blind({ scoring, keyKeptApart }: Trial): string {
  if (scoring.blind === 'unknown') return 'Das ist nicht aufgezeichnet.';
  if (scoring.blind === 'no') return 'Beim Zählen war bekannt, was was ist.';
  return keyKeptApart
    ? 'Der Schlüssel wurde bis zur letzten Auszählung getrennt verwahrt.'
    : 'So geben es die Beteiligten an.';
}

function alike(trial: Trial, analysis: Analysis, { answer, unlike, dates }: TrustFacts['alike']): string {
  if (answer === 'not recorded') return 'Die Tage der Aussaat sind nicht alle aufgezeichnet.';
  const differences = [...new Set(unlike.map((caveat) => caveatWords(trial, analysis, caveat).reason))];
  if (differences.length > 0) return `${sentence(list(differences))}.`;
  const soaks = trial.sowings.map(({ soakHours }) => soakHours);
  const soak =
    trial.varies === 'soak'
      ? ' Um das Einweichen geht die Frage.'
      : soaks.every((hours) => hours === null)
        ? ' Ein Einweichen ist nicht aufgezeichnet.'
        : '';
  const [first = ''] = dates;
  const days =
    dates.length === 1
      ? `am ${date(first)}`
      : `an ${counted(dates.length, 'day', 'dative')}, jedes Mal beide Behandlungen`;
  return `Alles wurde ${days} gesät.${soak}`;
}

function fixed({ answer, fixing, firstCount, changes }: TrustFacts['fixed']): string {
  if (answer === 'not recorded') return 'Es wurde kein Plan eingefroren und kein Datum angegeben.';
  if (fixing === null) {
    return `Es gibt einen Plan, aber er wurde zu spät festgelegt oder danach geändert${firstCount === null ? '' : `; die erste Auszählung war am ${date(firstCount)}`}.`;
  }
  const how = fixing.how === 'stated' ? ', wie die Beteiligten angeben' : ', in einem eingefrorenen Plan';
  const when = `Am ${date(fixing.date)}${how}.`;
  return changes.length === 0 ? when : `${when} Aber ${planChangesCounted(changes)}.`;
}

function allShown({ results }: Analysis, { dropped, unlisted }: TrustFacts['allShown']): string {
  if (results.length === 0) return 'Noch ist nichts verglichen.';
  if (dropped.length > 0) return `Im Plan stand außerdem: ${list(dropped)}.`;
  if (unlisted.length > 0) return `Außerdem gemessen, in den Rohdaten, aber nicht verglichen: ${list(unlisted)}.`;
  return 'Jede Messgröße in den Dateien ist gezeigt, und die Zählungen selbst kann man herunterladen.';
}

function leftOut(trial: Trial, { sowings }: TrustFacts['leftOut']): string {
  const noun = unitNoun(trial, 'sowing');
  if (sowings.length === 0) return `Alle ${noun.many} in den Dateien zählen mit.`;
  const shown = sowings.slice(0, 6);
  const more = sowings.length > shown.length ? [`${sowings.length - shown.length} weitere`] : [];
  return `${list([...shown, ...more])}; das Ergebnis mit allen ${formOf(noun, 2, 'dative')} steht dabei, wo es sich berechnen ließ.`;
}

function repeated({ repeats }: Trial, by: readonly string[]): Row {
  const row = { id: 'repeated', question: 'Von anderen wiederholt?' } as const;
  if (by.length > 0) return { ...row, answer: 'yes', detail: `Dasselbe fragte auch: ${list(by)}.` };
  if (repeats !== null) return { ...row, answer: 'partly', detail: `Dieser Versuch wiederholt ${repeats}.` };
  return {
    ...row,
    answer: 'not recorded',
    detail: 'Hier ist keine Wiederholung durch andere bekannt. Ihre wäre die erste.',
  };
}
