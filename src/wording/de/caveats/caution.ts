import { sentence } from '../../sentence.ts';
import { article } from '../article.ts';
import { counted } from '../counted.ts';
import { date } from '../date.ts';
import { list } from '../list.ts';
import { number } from '../number.ts';
import { planChangeText } from '../plan-change-text.ts';
import { planChangesCounted } from '../plan-changes-counted.ts';
import { quoted } from '../quoted.ts';
import { leftOutText } from './left-out-text.ts';
import { luckOf100 } from './luck-of-100.ts';
import type { CaveatTexts } from './telling.ts';

/** Caveats under which "wahrscheinlich" is said. */
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
        ? `die ${trays} wurden von Hand aufgestellt, nicht durch Los`
        : assignment === 'alternating'
          ? `die ${trays} wurden abwechselnd aufgestellt, nicht durch Los`
          : `es ist nicht aufgezeichnet, ob die ${trays} durch Los aufgestellt wurden`;
    return {
      reason,
      sentence: `${sentence(reason)}. Der bessere Platz kann dann öfter an dieselbe Behandlung gegangen sein.`,
    };
  },
  'positions-unbalanced': ({ treatment, control, by, places, chance }, { label, trays }) => {
    const over = { place: 'Plätze', row: 'Reihen', column: 'Spalten' }[by];
    const reason = `${label(treatment)} und ${label(control)} waren nicht gleichmäßig über die ${over} verteilt`;
    const where = list(places.slice(0, 6).map((at) => `${quoted(at.place)} ${at.treatment} und ${at.control}`));
    const luck =
      chance === null ? '' : ` Von 100 ausgelosten Aufstellungen wären etwa ${luckOf100(chance)} so ungleich.`;
    return { reason, sentence: `${sentence(reason)} (${trays(treatment)} und ${trays(control)}: ${where}).${luck}` };
  },
  'batch-unknown': ({ treated }, { tray, noun }) => {
    const { gender, one } = noun();
    if (treated === 'in-batches') {
      const clause = `welche ${tray(2)} zusammen behandelt wurden`;
      return {
        reason: `es ist nicht aufgezeichnet, ${clause}`,
        sentence: `Das Saatgut wurde in Chargen behandelt, aber es ist nicht aufgezeichnet, ${clause}. Was einer Charge zustieß, kann dann wie eine Wirkung der Behandlung aussehen.`,
      };
    }
    const clause = `ob das Saatgut für ${article('jeder', gender, 'accusative')} ${one} einzeln behandelt wurde`;
    return {
      reason: `es ist nicht aufgezeichnet, ${clause}`,
      sentence: `Es ist nicht aufgezeichnet, ${clause} oder alles auf einmal. Wenn alles auf einmal, lässt sich der Zufall dieser einen Charge nicht von der Behandlung trennen.`,
    };
  },
  'outcomes-not-fixed': ({ reason, fixed, firstCount }) => {
    const clause = {
      'none-listed': 'was verglichen werden sollte, war vorher nicht aufgeschrieben',
      'nothing-fixed': 'nichts zeigt, dass vor der ersten Auszählung festgelegt war, was verglichen werden sollte',
      'fixed-too-late': `was verglichen werden sollte, wurde${fixed === null ? '' : ` am ${date(fixed)}`} festgelegt, nicht vor der ersten Auszählung${firstCount === null ? '' : ` am ${date(firstCount)}`}`,
      'plan-edited': 'der Plan wurde geändert, nachdem er festgelegt war',
      'not-in-plan': 'dies stand nicht im Plan',
    }[reason];
    return {
      reason: clause,
      sentence: `${sentence(clause)}. Wer unter vielen Tagen und Messgrößen wählen kann, findet leicht etwas, das durch Zufall gut aussieht.`,
    };
  },
  'plan-changed': ({ changes }) => {
    const more = changes.length - 3;
    const rest = more === 1 ? ' Dazu 1 weitere Abweichung.' : ` Dazu ${more} weitere Abweichungen.`;
    return {
      reason: planChangesCounted(changes),
      sentence: `${changes.slice(0, 3).map(planChangeText).join(' ')}${more > 0 ? rest : ''}`,
    };
  },
  'still-germinating': ({ added, seeds, percent, from, to }, { caveat, label }) => ({
    reason: 'es gingen noch Samen auf, als das Zählen endete',
    sentence: `${caveat.treatment === null ? 'Es' : `Bei ${label(caveat.treatment)}`} gingen noch Samen auf, als das Zählen endete: ${added} von ${number(seeds)}${seeds === 100 ? '' : ` (${number(Math.round(percent))} von 100)`} zwischen Tag ${number(from)} und Tag ${number(to)}. Eine spätere Auszählung könnte anders ausfallen.`,
  }),
  'sowings-left-out': (evidence, tell) => leftOutText(evidence, tell),
  'many-comparisons': ({ comparisons }) => ({
    reason: `es wurden ${comparisons} Vergleiche gemacht, und bei so vielen überrascht ein solcher Abstand durch Zufall nicht`,
    sentence: `Es wurden ${counted(comparisons, 'comparison')} gemacht. Bei so vielen überrascht ein solcher Abstand durch Zufall nicht.`,
  }),
  'unequal-spread': ({ wider, narrower }, { trays }) => {
    const reason = `die ${trays(wider)} streuen stärker als die ${trays(narrower)}`;
    return { reason, sentence: `${sentence(reason)}. Der angegebene Bereich nimmt für beide dieselbe Streuung an.` };
  },
  'unequal-trays': ({ largest, smallest, unit }, { tray }) => ({
    reason: `die ${tray(2, unit)} enthielten sehr ungleich viele Samen (${number(smallest)} bis ${number(largest)})`,
    sentence: `Die ${tray(2, unit)} enthielten sehr ungleich viele Samen, von ${number(smallest)} bis ${number(largest)}. Am meisten wiegt dann, was am meisten enthielt.`,
  }),
  'incomplete-blocks': ({ reason, incomplete, without }, { tray, noun }) => {
    const block = noun('block');
    const blocks = block.many;
    const clause = {
      'two-blocks': `es gab nur zwei ${blocks}, zu wenige, um innerhalb davon zu vergleichen`,
      incomplete: `nicht ${article('jeder', block.gender)} ${block.one} enthielt beide Behandlungen${incomplete.length === 0 ? '' : ` (${list(incomplete)} nicht)`}`,
      'some-without-block': `bei ${counted(without.length, noun(), 'dative')} ist ${article('kein', block.gender)} ${block.one} genannt`,
    }[reason];
    return {
      reason: clause,
      sentence: `${sentence(clause)}. Darum bleiben die ${tray(2, 'block')} außer Betracht, und Unterschiede zwischen ihnen zählen als gewöhnliche Streuung.`,
    };
  },
  'seeds-by-mass': ({ sowings, seedsPerGram }, { noun }) => ({
    reason: 'die Samen wurden gewogen, nicht gezählt',
    sentence: `Bei ${counted(sowings.length, noun(), 'dative')} wurden die Samen gewogen, nicht gezählt${seedsPerGram === null ? '' : ` (${number(seedsPerGram)} Samen je Gramm)`}. Die Zahl der gesäten Samen stimmt dann nur ungefähr.`,
  }),
  'no-seed-number': ({ sowings }) => {
    const which = `wie viele Samen in ${list(sowings.slice(0, 6))}`;
    return {
      reason: `es ist nicht bekannt, ${which} gesät wurden`,
      sentence: `Es ist nicht bekannt, ${which}${sowings.length > 6 ? ' und anderen' : ''} gesät wurden. Die Zählungen werden gezeigt, aber mit nichts verglichen.`,
    };
  },
};
