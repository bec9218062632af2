import type { Analysis } from '../../analysis/analysis.ts';
import type { Trial } from '../../trial/trial.ts';
import { moistureFacts, type MoistureFacts, type Span } from '../moisture-facts.ts';
import { roundedSpan } from '../rounded-span.ts';
import { lotName } from './lot-name.ts';
import { number } from './number.ts';
import { quotedLabel } from './quoted-label.ts';

/** Water lost and moisture, one paragraph a lot and treatment. What the scale allows is rounded outwards. */
export const moisture = (trial: Trial, analysis: Analysis): readonly string[] =>
  moistureFacts(trial, analysis).map((facts) => {
    const where = trial.lots.length > 1 ? `${lotName(trial, facts.lot)}: ` : '';
    const seed =
      facts.treatment === null ? 'Das Saatgut, wie es kam,' : `Das Saatgut ${quotedLabel(trial, facts.treatment)}`;
    return `${where}${lostText(seed, facts)}${moistureText(seed, facts)}`;
  });

function lostText(seed: string, { lost, lostAllowed, scaleStep, weighings }: MoistureFacts): string {
  if (lost === null) return '';
  const several = weighings > 1 ? ` (${number(weighings)} Wägungen)` : '';
  const step = scaleStep === null ? 'Die Schritte der Waage' : `Schritte der Waage von ${number(scaleStep)}\u00A0g`;
  const allowed =
    lostAllowed === null
      ? 'Der Schritt der Waage ist nicht angegeben; wie genau das ist, ist also nicht bekannt.'
      : `${step} lassen ${allowedChange(roundedSpan(lostAllowed, 'outward'))} zu.`;
  return `${seed} ${change(roundedSpan(lost, 'nearest'))}${several}. ${allowed}`;
}

function moistureText(seed: string, { lost, before, after, afterAllowed }: MoistureFacts): string {
  if (after === null) {
    if (before === null)
      return ' Der Feuchtegehalt am Anfang wurde nicht gemessen; wie trocken es jetzt ist, ist also nicht bekannt.';
    return lost === null ? `${seed} hatte ${percent(roundedSpan(before, 'nearest'))} Feuchtegehalt.` : '';
  }
  const allowed = afterAllowed === null ? '' : `; die Waage lässt ${percent(roundedSpan(afterAllowed, 'outward'))} zu`;
  const it = lost === null ? `${seed} hatte einen Feuchtegehalt von` : ' Danach war der Feuchtegehalt';
  const was = before === null ? '' : `, am Anfang ${percent(roundedSpan(before, 'nearest'))}`;
  return `${it} ${percent(roundedSpan(after, 'nearest'))}${was} (bezogen auf die ganze Masse${allowed}).`;
}

const percent = ({ lower, upper }: Span): string =>
  lower === upper ? `${number(lower, 1)}\u00A0%` : `${number(lower, 1)} bis ${number(upper, 1)}\u00A0%`;

/** "verlor 2,7 bis 5,4 % seiner Masse", "nahm um 0,2 % seiner Masse zu". */
function change({ lower, upper }: Span): string {
  if (lower >= 0) return `verlor ${percent({ lower, upper })} seiner Masse`;
  if (upper <= 0) return `nahm um ${percent({ lower: -upper, upper: -lower })} seiner Masse zu`;
  return `zeigte ${between(lower, upper)} seiner Masse`;
}

function allowedChange({ lower, upper }: Span): string {
  if (lower >= 0) return percent({ lower, upper });
  if (upper <= 0) return `eine Zunahme von ${percent({ lower: -upper, upper: -lower })}`;
  return between(lower, upper);
}

/** A treatment may have lost or gained. */
const between = (lower: number, upper: number) =>
  `alles zwischen ${number(-lower, 1)}\u00A0% Zunahme und ${number(upper, 1)}\u00A0% Verlust`;
