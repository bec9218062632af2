import { isOfAll } from '../../is-of-all.ts';
import { sentence } from '../../sentence.ts';
import { article } from '../article.ts';
import { counted } from '../counted.ts';
import { crop as cropName } from '../crop.ts';
import { noHalfLifeText } from '../no-half-life-text.ts';
import { quotedLabel } from '../quoted-label.ts';
import { list } from '../list.ts';
import { number } from '../number.ts';
import { quantity } from '../quantity.ts';
import { storedName } from '../stored-name.ts';
import { changesText } from './changes-text.ts';
import { lotsDiffer } from './lots-differ.ts';
import { moreVaried } from './more-varied.ts';
import type { CaveatTexts, Telling } from './telling.ts';

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
  'few-units': ({ unit, units }, { noun, tray }) => {
    const { treatment, control } = units;
    const reason =
      treatment === control
        ? `es gab nur ${counted(treatment, noun(unit))} je Behandlung`
        : `es gab nur ${treatment} und ${control} ${tray(2, unit)}`;
    return { reason, sentence: `${sentence(reason)}. So wenige zeigen einen Unterschied nur, wenn er groß ist.` };
  },
  'few-seeds': ({ seeds }, { caveat, label }) => {
    const of = caveat.treatment === null ? '' : ` bei ${label(caveat.treatment)}`;
    const reason = `${seeds === 1 ? 'es wurde' : 'es wurden'} nur ${counted(seeds, 'seed')}${of} gesät`;
    return {
      reason,
      sentence: `${sentence(reason)}. Ein Samen mehr oder weniger verschiebt den Anteil dann um ${number(100 / seeds, 0)} von 100.`,
    };
  },
  'not-blind': ({ blind }, { noun }) => {
    const { gender, one } = noun();
    const which = `zu welcher Behandlung ${article('jeder', gender)} ${one} gehörte`;
    const reason =
      blind === 'no'
        ? `beim Zählen war bekannt, ${which}`
        : `es ist nicht aufgezeichnet, ob beim Zählen bekannt war, ${which}`;
    return { reason, sentence: `${sentence(reason)}. Dann kann die Hoffnung mitzählen.` };
  },
  'no-margin': () => ({
    reason: 'ein kleinster Unterschied, der zählt, war nicht festgelegt',
    sentence:
      'Ein kleinster Unterschied, der zählt, war nicht festgelegt. Darum kann hier nichts gleich genug genannt werden.',
  }),
  'more-varied-than-luck': moreVaried,
  'more-alike-than-luck': ({ phi }, { tray }) => ({
    reason: `die ${tray(2)} stimmen besser überein, als der Zufall der Samen zulässt`,
    sentence: `Die ${tray(2)} derselben Behandlung stimmen besser überein, als der Zufall der Samen es sonst zulässt (φ ${number(phi, 2)}). Gibt es einen Grund, etwa nach Größe ausgelesene Samen, oder wurde bei einer Zählung die vorige nachgesehen?`,
  }),
  'near-limit': ({ stored, limit, germinated, seeds }, { analysis, caveat, label }) => {
    const named = caveat.treatment === null ? 'bei einer Behandlung' : `bei ${label(caveat.treatment)}`;
    const where = isOfAll(analysis, caveat, stored) ? 'vor der Lagerung' : named;
    const came =
      germinated === 0
        ? 'ging kein Samen auf'
        : germinated === seeds
          ? 'gingen alle Samen auf'
          : limit === 100
            ? 'gingen fast alle Samen auf'
            : 'gingen kaum Samen auf';
    const counts = germinated === seeds ? `alle ${number(seeds)}` : `${number(germinated)} von ${number(seeds)}`;
    const when = stored === null ? '' : `${storedName(stored)}: `;
    const reason = `${where} ${came}`;
    return {
      reason,
      sentence: `${sentence(reason)} (${when}${counts}). So nahe an ${limit}\u00A0% stimmt ein Bereich nur ungefähr.`,
    };
  },
  'hardly-any': ({ germinated, seeds }) => {
    const counts = `${germinated.treatment} von ${number(seeds.treatment)} und ${germinated.control} von ${number(seeds.control)}`;
    return {
      reason: `es gingen kaum Samen auf (${counts})`,
      sentence: `Es gingen kaum Samen auf: ${counts}. Das ist zu wenig zum Vergleichen.`,
    };
  },
  'no-room': ({ lowest }, { noun }) => {
    const { gender, one } = noun();
    const reason = lowest === 100 ? 'bei beiden ging alles auf' : 'bei beiden ging fast alles auf';
    const each = `${article('jeder', gender, 'dative')} ${one}`;
    const least = lowest === 100 ? '' : `: mindestens ${number(Math.floor(lowest))} von 100 in ${each}`;
    return {
      reason,
      sentence: `${sentence(reason)}${least}. Also hatte dieses Saatgut keinen Raum, einen Gewinn zu zeigen.`,
    };
  },
  'coarse-checks': ({ from, to, percent }, { caveat, label }) => {
    const of = caveat.treatment === null ? '' : ` bei ${label(caveat.treatment)}`;
    return {
      reason: 'die Auszählungen lagen zu weit auseinander',
      sentence: `Die Auszählungen lagen weit auseinander: ${number(Math.round(percent))} von 100 Keimlingen gingen${of} zwischen denen von Tag ${number(from)} und Tag ${number(to)} auf. An welchem dieser Tage, hat niemand gesehen.`,
    };
  },
  'coarse-readings': ({ treatment, control, values, difference, unit }, tell) => {
    const { label, tray } = tell;
    if (difference !== null) {
      const reason = `der Unterschied ist in ${everyBlock(tell)} gleich groß`;
      return { reason, sentence: `${sentence(reason)}. Die Ablesung ist zu grob, um zu zeigen, wie sehr er schwankt.` };
    }
    return {
      reason: `alle ${tray(2)} derselben Behandlung haben denselben Messwert`,
      sentence: `Alle ${tray(2)} derselben Behandlung haben denselben Messwert (${label(treatment)} ${quantity(values.treatment, unit)}, ${label(control)} ${quantity(values.control, unit)}). Die Ablesung ist zu grob, um zu zeigen, wie sich ${tray(2)} unterscheiden.`,
    };
  },
  'lots-differ': lotsDiffer,
  'ungerminated-not-sorted': ({ ungerminated, seeds }) => ({
    reason: 'was nicht aufging, wurde nicht angesehen',
    sentence: `${number(ungerminated)} von ${number(seeds)} Samen gingen nicht auf. Ob sie tot waren oder nur ruhten, wurde nicht angesehen.`,
  }),
  'tested-straight-away': () => ({
    reason: 'das Saatgut wurde gleich nach der Behandlung gesät',
    sentence:
      'Die Frage handelt vom Aufbewahren, aber das Saatgut wurde gleich nach der Behandlung gesät. Wie gut es sich hält, kann erst eine spätere Aussaat zeigen.',
  }),
  'start-moisture-unknown': () => ({
    reason: 'der Feuchtegehalt am Anfang wurde nicht gemessen',
    sentence:
      'Der Feuchtegehalt am Anfang wurde nicht gemessen. Wie trocken das Saatgut jetzt ist, ist also nicht bekannt.',
  }),
  'two-changes': ({ changes }, { trial }) => {
    const reason = `die Behandlungen unterscheiden sich in mehr als einer Sache (${changesText(trial, changes)})`;
    return {
      reason,
      sentence: `${sentence(reason)}. Welche davon einen Unterschied machte, lässt sich nicht sagen.`,
    };
  },
  'survivors-only': ({ groups }, { label }) => {
    const each = groups.map(
      ({ treatment, plants, seeds }) => `${label(treatment)} ${plants} aus ${number(seeds)} Samen`,
    );
    return {
      reason: 'nur was aufging, konnte gemessen werden',
      sentence: `Nur was aufging, konnte gemessen werden (${list(each)}). Samen, die unten blieben, haben keine Größe.`,
    };
  },
  'one-lot': ({ crop }) => ({
    reason: `es wurde nur eine Partie gesät (${cropName(crop)})`,
    sentence: `Es wurde nur eine Partie gesät (${cropName(crop)}). Eine andere Ernte, ein anderes Alter oder eine andere Kultur kann sich anders verhalten.`,
  }),
  'batches-span-blocks': ({ batches }, { noun, tray }) => ({
    reason: `Chargen waren über mehrere ${tray(2, 'block')} verteilt`,
    sentence: `${counted(batches.length, noun('batch'))} ${batches.length === 1 ? 'stand' : 'standen'} bei mehreren ${tray(2, 'block', 'dative')}. Behandelt wurde die Charge, also wird sie verglichen, und die ${tray(2, 'block')} bleiben außer Betracht.`,
  }),
  'half-before-first-check': ({ day, portion, units }, { noun }) => {
    const part = portion === 0.5 ? 'die Hälfte' : 'ein Viertel';
    return {
      reason: `${part} war schon aufgegangen, bevor jemand nachsah`,
      sentence: `In ${counted(units.length, noun(), 'dative')} war ${part} dessen, was aufging, schon bei der ersten Auszählung am Tag ${number(day)} aufgegangen. Wann, hat niemand gesehen; darum wird keine Zeit angegeben.`,
    };
  },
  'nothing-came-up': ({ seeds, sowings }, { caveat, label, noun }) => {
    const of = caveat.treatment === null ? '' : ` bei ${label(caveat.treatment)}`;
    const sown = seeds === null ? '' : ` (${counted(seeds, 'seed')} in ${counted(sowings, noun(), 'dative')})`;
    return {
      reason: `${of === '' ? 'es' : of.trim()} ging nichts auf`,
      sentence: `${of === '' ? 'Es' : sentence(of.trim())} ging nichts auf${sown}. Das Saatgut kann tot sein oder ruhen, oder es war zu kalt oder zu nass; eine Prüfung desselben Saatguts unter besseren Bedingungen würde es zeigen.`,
    };
  },
  'no-half-life': ({ reason, tests }, { caveat, trial }) => {
    const seed = quotedLabel(trial, caveat.treatment ?? '');
    return {
      reason: `bei ${seed} ließ sich keine Halbwertszeit angeben`,
      sentence: noHalfLifeText(seed, { reason, tests }),
    };
  },
};

/** "jedem Regalbrett", "jeder Partie": within what a difference was taken. */
function everyBlock({ caveat, noun }: Telling): string {
  if (caveat.lot === 'all') return 'jeder Partie';
  const block = noun('block');
  return `${article('jeder', block.gender, 'dative')} ${block.one}`;
}
