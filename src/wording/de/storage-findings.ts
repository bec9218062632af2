import type { Analysis, Group, Result } from '../../analysis/analysis.ts';
import type { SurvivalLine } from '../../analysis/survival-line.ts';
import type { Trial } from '../../trial/trial.ts';
import { jarsOpened } from '../jars-opened.ts';
import { sentence } from '../sentence.ts';
import { storageCase, storageCaveats, type StorageCase } from '../storage-case.ts';
import { storageTime } from '../storage-time.ts';
import type { StorageFinding, VerdictMark } from '../words.ts';
import { counted } from './counted.ts';
import { reasonsText } from './findings/reasons-text.ts';
import { shareText } from './findings/share-text.ts';
import { inUnit } from './in-unit.ts';
import { list } from './list.ts';
import { lotName } from './lot-name.ts';
import { noHalfLifeText } from './no-half-life-text.ts';
import { noun } from './noun.ts';
import { number } from './number.ts';
import { quotedLabel } from './quoted-label.ts';
import { storedText } from './stored-text.ts';
import { unitNoun } from './unit-noun.ts';

/** A storage series: how its survival lines compare, then the half-life of each treatment or why there is none. */
export function storageFindings(trial: Trial, analysis: Analysis, result: Result): readonly StorageFinding[] {
  const lots = [...new Set((result.storage ?? []).map(({ lot }) => lot))];
  const soFar = trial.status === 'growing' ? 'Bisher: ' : '';
  return lots.flatMap((lot) => {
    const where = lots.length > 1 ? `${lotName(trial, lot)}: ` : '';
    const open = (text: string) => `${soFar}${where}${sentence(text)}`;
    const found = storageCase(result, lot);
    const own = (result.storage ?? []).filter((line) => line.lot === lot);
    return [
      ...(found === null
        ? []
        : [{ lot, treatment: null, ...comparedLines(trial, analysis, result, lot, found, open) }]),
      ...own.map((line) => ({
        lot,
        treatment: line.treatment,
        sentence: `${where}${where === '' ? sentence(lineText(trial, result, line)) : lineText(trial, result, line)}`,
        mark: null,
      })),
    ];
  });
}

function lineText(trial: Trial, result: Result, line: SurvivalLine): string {
  const seed = quotedLabel(trial, line.treatment);
  if (line.halfLife === null) return noHalfLifeText(seed, line);
  const { kind, count, tests } = jarsOpened(result, line);
  const times = line.tests.map(({ stored }) => stored);
  const [first, last] = [Math.min(...times), Math.max(...times)];
  const { perYear, unit, digits } = storageTime(last);
  const say = (years: number) => number(years * perYear, digits);
  const { estimate, lower, upper } = line.halfLife;
  const from =
    lower === null || lower < first ? 'einer Zeit vor der ersten Prüfung' : inUnit(say(lower), unit, 'dative');
  const to =
    upper === null || upper > last ? 'einer Zeit nach der letzten Prüfung' : inUnit(say(upper), unit, 'dative');
  const opened = `${counted(count, unitNoun(trial, kind))} in ${counted(tests, TEST, 'dative')}${first === 0 ? ' nach dem Anfang' : ''}`;
  return `Nach der Linie durch die Prüfungen ging bei ${seed} nach ${inUnit(say(estimate), unit, 'dative')} Lagerung noch die Hälfte auf (die Daten passen zu ${from} bis ${to}; ${opened}).${count <= tests ? ` Mit nur ${ONE[unitNoun(trial, kind).gender]} ${unitNoun(trial, kind).one} je Prüfung ist das ein erster Blick.` : ''}`;
}

/** Dative. */
const ONE = { m: 'einem', f: 'einer', n: 'einem' } as const;
const TEST = noun('f', 'Prüfung', 'Prüfungen');

function comparedLines(
  trial: Trial,
  analysis: Analysis,
  result: Result,
  lot: string,
  found: StorageCase,
  open: (text: string) => string,
): { readonly sentence: string; readonly mark: VerdictMark } {
  const cannot: VerdictMark = { words: 'lässt sich nicht sagen', shape: 'question' };
  const ends = atTheEnd(trial, result, lot, found);
  const reasons = reasonsText(trial, analysis, storageCaveats(analysis.caveats, found, lot));
  const probably = found.ceiling === 'probably';
  const because = probably ? ` Wir sagen „wahrscheinlich“, denn ${reasons}.` : '';
  switch (found.case) {
    case 'no-line':
      return {
        sentence: open('Welche Keimung langsamer fällt, wird nicht verglichen: Nicht jede Behandlung hat eine Linie.'),
        mark: cannot,
      };
    case 'one-jar':
      return {
        sentence: open(
          `Was sich länger hält, lässt sich nicht sagen. Nicht jede Behandlung hatte in jeder Prüfung zwei Gläser oder Tüten, die bekanntermaßen getrennt gelagert wurden; also lässt sich die Art der Lagerung nicht vom Zufall eines Glases trennen. ${ends} Ein erster Blick, der eine Wiederholung mit zwei oder mehr davon in jeder Prüfung verdient.`,
        ),
        mark: cannot,
      };
    case 'not-shown':
      return {
        sentence: open(
          `Dass sich eines länger hält als das andere, ließ sich nicht zeigen; das heißt nicht, dass sie sich gleich halten. ${ends}`,
        ),
        mark: { words: 'offen', shape: 'open' },
      };
    case 'apart':
    case 'slopes': {
      if (found.ceiling === 'cause-unclear') {
        const what = found.case === 'slopes' ? 'fiel verschieden schnell' : 'verlief nicht auf einer Linie';
        return {
          sentence: open(`Die Keimung ${what}. Aber ${reasons}. Woran es lag, lässt sich nicht sagen. ${ends}`),
          mark: { words: 'Ursache unklar', shape: 'question' },
        };
      }
      const perhaps = probably ? 'wahrscheinlich ' : '';
      if (found.case === 'apart') {
        return {
          sentence: open(
            `Die Keimung verläuft ${perhaps}nicht auf einer Linie. Dass die eine schneller fällt als die andere, ließ sich nicht zeigen.${because} ${ends}`,
          ),
          mark: { words: `${perhaps}getrennt, Tempo offen`, shape: 'open' },
        };
      }
      const { slower, faster } = found;
      if (slower === null || faster === null) {
        return {
          sentence: open(`Die Keimung fiel ${perhaps}nicht überall gleich schnell.${because} ${ends}`),
          mark: { words: `${perhaps}verschieden schnell`, shape: 'open' },
        };
      }
      const isControl = trial.treatments.find(({ id }) => id === slower.treatment)?.control ?? false;
      return {
        sentence: open(
          `Bei ${quotedLabel(trial, slower.treatment)} fiel die Keimung ${perhaps}langsamer als bei ${quotedLabel(trial, faster.treatment)}.${because} ${ends}`,
        ),
        mark: {
          words: `${perhaps}fiel ${isControl ? 'schneller' : 'langsamer'}`,
          shape: isControl ? 'below' : 'above',
        },
      };
    }
  }
}

/** "Nach 5 Jahren gingen auf: bei „Schuppen“ 41 von 100 (33 bis 50) und …": the last test of each. */
function atTheEnd(trial: Trial, result: Result, lot: string, { lines }: StorageCase): string {
  const last = lines.flatMap(({ treatment, tests }) => {
    const stored = tests.findLast(({ estimate }) => estimate !== null)?.stored;
    return result.groups.filter(
      (group) => group.lot === lot && group.treatment === treatment && group.stored === stored,
    );
  });
  const times = [...new Set(last.map(({ stored }) => stored ?? 0))];
  const one = (group: Group) => {
    const limits =
      group.interval === null ? '' : ` (${limit(group.interval.lower)} bis ${limit(group.interval.upper)})`;
    const when = times.length === 1 ? '' : ` nach ${storedText(group.stored ?? 0, 'dative')}`;
    return `bei ${quotedLabel(trial, group.treatment)} ${shareText({ estimate: group.estimate ?? 0 })}${limits}${when}`;
  };
  const after =
    times.length === 1 ? `Nach ${storedText(times[0] ?? 0, 'dative')} gingen auf` : 'In der letzten Prüfung gingen auf';
  return `${after}: ${list(last.map(one))}.`;
}

const limit = (value: number | null): string => shareText({ estimate: value ?? 0 }).replace(' von 100', '');
