import type { Analysis } from '../../analysis/analysis.ts';
import type { Trial } from '../../trial/trial.ts';
import { moistureFacts, type MoistureFacts, type Span } from '../moisture-facts.ts';
import { roundedSpan } from '../rounded-span.ts';
import { counted } from './counted.ts';
import { labelled } from './labelled.ts';
import { lotName } from './lot-name.ts';
import { number } from './number.ts';
import { sentence } from '../sentence.ts';

/** Water lost and moisture, one paragraph a lot and treatment. Ranges are rounded outwards. */
export const moisture = (trial: Trial, analysis: Analysis): readonly string[] =>
  moistureFacts(trial, analysis).map((facts) => {
    const where = trial.lots.length > 1 ? `${lotName(trial, facts.lot)}: ` : '';
    const seed = facts.treatment === null ? 'the seed as received' : labelled(trial, facts.treatment, 'seed');
    return `${where}${sentence(lostText(seed, facts))}${moistureText(seed, facts)}`;
  });

function lostText(seed: string, { lost, lostAllowed, scaleStep, weighings }: MoistureFacts): string {
  if (lost === null) return '';
  const several = weighings > 1 ? ` in ${counted(weighings, 'weighing')}` : '';
  const allowed =
    lostAllowed === null
      ? ' The step of the scale was not given, so how exact that is is not known.'
      : ` Scale steps${scaleStep === null ? '' : ` of ${number(scaleStep)} g`} allow ${change(outward(lostAllowed))}.`;
  return `${seed} ${change(nearest(lost), true)} of its mass${several}.${allowed}`;
}

function moistureText(seed: string, { lost, before, after, afterAllowed }: MoistureFacts): string {
  const it = lost === null ? sentence(seed) : ' Its moisture';
  if (after === null) {
    if (before === null) return ' Moisture at the start was not measured, so how dry it is now is not known.';
    return lost === null ? `${it} had ${percent(nearest(before))} moisture.` : '';
  }
  const allowed = afterAllowed === null ? '' : `; the scale allows ${percent(outward(afterAllowed))}`;
  const verb = lost === null ? ' had a moisture of' : ' afterwards was';
  const was = before === null ? '' : `, from ${percent(nearest(before))} at the start`;
  return `${it}${verb} ${percent(nearest(after))}${was} (of its whole mass${allowed}).`;
}

const nearest = (span: Span): Span => roundedSpan(span, 'nearest');
const outward = (span: Span): Span => roundedSpan(span, 'outward');

const percent = ({ lower, upper }: Span): string =>
  lower === upper ? `${number(lower, 1)} %` : `${number(lower, 1)} to ${number(upper, 1)} %`;

/** "lost 2.7 to 5.4 %", "gained 0.2 %", "anything from 0.2 % gained to 1.1 % lost"; the verb only where asked or needed. */
function change({ lower, upper }: Span, verb = false): string {
  if (lower >= 0) return `${verb ? 'lost ' : ''}${percent({ lower, upper })}`;
  if (upper <= 0) return `${verb ? 'gained ' : 'a gain of '}${percent({ lower: -upper, upper: -lower })}`;
  const either = `${number(-lower, 1)} % gained to ${number(upper, 1)} % lost`;
  return `${verb ? 'showed ' : ''}anything from ${either}`;
}
