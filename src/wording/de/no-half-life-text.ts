import type { SurvivalLine } from '../../analysis/survival-line.ts';
import { shareText } from './findings/share-text.ts';
import { number } from './number.ts';
import { storedText } from './stored-text.ts';

/**
 * Why a storage series gives no half-life of one treatment, with what came up at its first and last test.
 *
 * @param seed "„Schuppen“": the treatment's label, quoted
 */
export function noHalfLifeText(seed: string, { reason, tests }: Pick<SurvivalLine, 'reason' | 'tests'>): string {
  const known = tests.flatMap(({ stored, estimate }) => (estimate === null ? [] : [{ stored, estimate }]));
  const [first, last] = [known[0], known.at(-1)];
  if (first === undefined || last === undefined) return `Bei ${seed} ergibt keine Prüfung einen Anteil.`;
  const at = ({ stored, estimate }: typeof first) =>
    `${shareText({ estimate })} ${stored === 0 ? 'am Anfang' : `nach ${storedText(stored, 'dative')}`}`;
  const ends = known.length === 1 ? at(first) : `${at(first)}, ${at(last)}`;
  switch (reason) {
    case 'too-few-tests':
      return `Bei ${seed}: ${ends}. Das sind zu wenige Prüftermine für eine Linie (${number(known.length)}; nötig sind drei).`;
    case 'nothing-came-up':
      return `Bei ${seed} ging in keiner Prüfung etwas auf; wie lange es sich hält, lässt sich also nicht sagen.`;
    case 'no-fall':
      return `Bei ${seed} zeigt sich kein Rückgang (${ends}). Das heißt nicht, dass es sich hält.`;
    case 'hardly-a-fall':
      return `Bei ${seed} ist die Keimung kaum gefallen (${ends}): In allen Prüfungen bis auf eine ging alles auf, das ist zu wenig für eine Linie.`;
    case 'too-steep':
      return `Bei ${seed} fiel die Keimung zu steil für eine Linie (${ends}): In allen Prüfungen bis auf eine ging alles auf oder nichts; wann sie bei der Hälfte war, ist also nicht bekannt.`;
    case 'not-yet':
      return `Nach der Linie durch die Prüfungen ist die Keimung bei ${seed} noch nicht auf die Hälfte gefallen (${ends}). Eine Halbwertszeit wird nicht angegeben, denn es wird nichts vorausgesagt.`;
    case 'before-first':
      return `Nach der Linie durch die Prüfungen lag die Keimung bei ${seed} schon in der ersten Prüfung unter der Hälfte (${ends}); wann sie bei der Hälfte war, ist also nicht bekannt.`;
    case 'unbounded':
      return `Bei ${seed} fiel die Keimung auf etwa die Hälfte (${ends}), aber die Prüfungen streuen so sehr, dass der Rückgang sich nicht von keinem trennen lässt. Eine Halbwertszeit wird nicht angegeben.`;
    default:
      return `Durch die Prüfungen bei ${seed} ließ sich keine Linie legen (${ends}).`;
  }
}
