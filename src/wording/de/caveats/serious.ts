import type { Apart } from '../../../analysis/caveats/evidence.ts';
import { sentence } from '../../sentence.ts';
import { article } from '../article.ts';
import { date } from '../date.ts';
import { list } from '../list.ts';
import { number } from '../number.ts';
import { quoted } from '../quoted.ts';
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
  'one-sowing': (evidence, { label, tray, noun }) => {
    const { treatment, control, units } = evidence;
    const both = units.treatment < 2 && units.control < 2;
    const lone = both ? 'je Behandlung' : `bei ${label(units.treatment < 2 ? treatment : control)}`;
    const count = both ? Math.max(units.treatment, units.control) : Math.min(units.treatment, units.control);
    const { gender, one } = noun();
    const reason =
      count === 0
        ? `${both ? 'bei keiner Behandlung' : lone} konnte ${article(both ? 'ein' : 'kein', gender)} ${one} gezählt werden`
        : wereMore(evidence)
          ? `nur ${article('ein', gender)} ${one} ${lone} ging in den Vergleich ein`
          : `es gab nur ${article('ein', gender, 'accusative')} ${one} ${lone}`;
    return {
      reason,
      sentence: `${sentence(reason)}. ${tray(2)} unterscheiden sich durch Zufall, auch wenn sie gleich behandelt werden. Gibt es nur ${article('ein', gender, 'accusative')}, lässt sich dieser Zufall nicht von der Behandlung trennen.`,
    };
  },
  'one-batch': ({ treatment, because, batch, sowings, stored }, { trays, label, noun }) => {
    const all = `alle ${sowings} ${trays(treatment, sowings)}`;
    if (sowings === 1) {
      const one = `nur ${article('ein', noun().gender, 'accusative')} ${trays(treatment, 1)}`;
      const reason = stored === null ? `es gab ${one}` : `${storedName(stored)} gab es ${one}`;
      return {
        reason,
        sentence: `${sentence(reason)}. Der Zufall, der daran hängt, lässt sich nicht von ${label(treatment)} trennen.`,
      };
    }
    const reason =
      because === 'treated-at-once'
        ? `${all} wurden auf einmal behandelt`
        : `${all} kamen aus einer einzigen Charge${batch === null ? '' : ` (${batch})`}`;
    return {
      reason,
      sentence: `${sentence(reason)}. Was dieser einen Charge zustieß, traf sie alle; ihr Zufall lässt sich also nicht von ${label(treatment)} trennen.`,
    };
  },
  'confounded-place': (e, tell) => apart(e, tell, ['standen', ''], 'nur bei', quoted),
  'confounded-block': (e, tell) => apart(e, tell, ['standen', ''], blockPlace(tell), quoted),
  'confounded-position': (e, tell) =>
    apart(e, tell, ['standen', ''], `nur in ${e.by === 'row' ? 'Reihe' : 'Spalte'}`, (value) => value),
  'confounded-scorer': (e, tell) => apart(e, tell, ['wurden', ' gezählt'], 'nur von', (scorer) => nameOf(tell, scorer)),
  'confounded-sowing-day': (e, tell) => apart(e, tell, ['wurden', ' gesät'], 'nur am', date),
  'confounded-count-day': (e, tell) =>
    apart(e, tell, ['wurden zuletzt', ' ausgezählt'], 'am Tag', (value) => number(value)),
  'unequal-soak': ({ treatment, control, hours }, { label }) => {
    const reason = `auch die Dauer des Einweichens war verschieden (${label(treatment)} ${soak(hours.treatment)}, ${label(control)} ${soak(hours.control)})`;
    return {
      reason,
      sentence: `${sentence(reason)}. Schon das Einweichen ändert, wie schnell und wie gut Saatgut aufgeht.`,
    };
  },
  'unequal-handling': ({ treatment, control, what, touched, of }, { label, tray }) => {
    const each = `${label(treatment)} ${touched.treatment} von ${of.treatment}, ${label(control)} ${touched.control} von ${of.control}`;
    const reason = `mit manchen ${tray(2, 'sowing', 'dative')} geschah etwas, das mit anderen nicht geschah (${each}: ${quoted(what)})`;
    return {
      reason,
      sentence: `${sentence(reason)}. Das kann den Unterschied gemacht haben, nicht die Behandlung.`,
    };
  },
  'checked-on-different-days': ({ treatment, control, missed }, { trays, label }) => {
    const reason = `die ${trays(treatment)} und ${label(control)} wurden nicht alle an denselben Tagen ausgezählt`;
    const shown = missed
      .slice(0, 4)
      .map(({ sowing, days }) => `bei ${sowing} fehlt Tag ${list(days.map((day) => number(day)))}`);
    const more =
      missed.length > shown.length ? `; bei ${missed.length - shown.length} weiteren fehlen Auszählungen` : '';
    const which = shown.length === 0 ? '' : ` (${list(shown)}${more})`;
    return {
      reason,
      sentence: `${sentence(reason)}${which}. Einen Keimling sieht man erst, wenn jemand hinschaut; wer öfter hinschaut, hält eine Behandlung leicht für schneller.`,
    };
  },
};

/** "die Schalen „Dichtes Glas“ standen nur bei „unten“ und die Schalen „Papiertüte“ nur bei „oben“" */
function apart<T extends string | number>(
  { treatment, control, values }: Apart<T>,
  { trays }: Telling,
  [verb, end]: readonly [verb: string, end: string],
  where: string,
  show: (value: T) => string,
) {
  const of = (each: readonly T[]) => list(each.map(show));
  const reason = `die ${trays(treatment)} ${verb} ${where} ${of(values.treatment)}${end} und die ${trays(control)} ${where} ${of(values.control)}`;
  return {
    reason,
    sentence: `${sentence(reason)}. Was sonst noch verschieden war, kann einen Unterschied gemacht oder einen verdeckt haben.`,
  };
}

/** "nur bei Regalbrett": the name of the block stands beside its noun. */
const blockPlace = ({ tray }: Telling): string => `nur bei ${tray(1, 'block')}`;

/** Who counted: the person's name where the id is an author's, else as it stands in the file. */
const nameOf = ({ trial }: Telling, scorer: string): string =>
  trial.authors.find(({ id }) => id === scorer)?.name ?? quoted(scorer);

function soak(hours: { readonly shortest: number; readonly longest: number } | null): string {
  if (hours === null) return 'nicht aufgezeichnet';
  const { shortest, longest } = hours;
  return shortest === longest ? `${number(shortest)}\u00A0h` : `${number(shortest)} bis ${number(longest)}\u00A0h`;
}
